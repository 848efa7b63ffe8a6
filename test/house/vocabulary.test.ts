import { describe, expect, test } from "vitest";
import { listFiles, readProjectFile } from "./project.js";
import { namesOf, wordsOf } from "./vocabulary.js";

/** Words that no name has, since another word, or none, stands for the thing. */
const RETIRED_WORDS: Readonly<Record<string, string>> = {
  caution: "hazard",
  cautions: "hazards",
  heel: "long point or short point",
  leans: "toward",
  mark: "arris, graduation",
  marks: "arrises, graduations",
  severity: "signal",
  toe: "thin end, long point or short point",
};

/** Names that no file says any more, and what is said instead. */
const RETIRED_NAMES: Readonly<Record<string, string>> = {
  CuttingPlan: "SawPlan",
  CuttingPlanOptions: "SawPlanOptions",
  EdgeMark: "EdgeArris",
  FitCheck: "FitVerdict",
  LayOption: "LayResult",
  MarkSetting: "GraduationSetting",
  MarksOf: "ArrisesOf",
  MeasuredMark: "MeasuredArris",
  MeasuredStick: "MeasuredPiece",
  PlacedMark: "PlacedArris",
  PolygonMeasures: "OnePolygonMeasure",
  PreciseMeet: "PreciseMeetingAt",
  RabbetFit: "RabbetSeating",
  RabbetFitOptions: "RabbetSeatingOptions",
  RabbetMark: "RabbetArris",
  RingStick: "RingPiece",
  ScaleMarks: "Graduations",
  ShopRun: "ShopRound",
  StockCut: "PlacedPiece",
  checkBrief: "tryParseBrief",
  checkFit: "verifyFit",
  checkProfile: "parseProfile",
  checkSaw: "parseSaw",
  cuttingPlan: "sawPlan",
  describeCaution: "hazardText",
  drawStick: "drawPiece",
  givenMeasure: "onePolygonMeasure",
  markLabel: "arrisLabel",
  preciseStickLength: "precisePieceLength",
  rabbetFit: "rabbetSeating",
  vGap: "jointGap",
  workLimit: "stepLimit",
};

/** Keys that a type had under another name; the name itself may stand elsewhere. */
const RETIRED_KEYS: readonly string[] = [
  "BriefBase.gap",
  "CorrectSettingOptions.gap",
  "Cradle.run",
  "FitProgress.work",
  "FrameContents.fit",
  "FrameGeometry.fit",
  "FrameMaterials.blank",
  "FrameMaterials.stickLength",
  "FrameMovement.accepted",
  "FramePlan.cutting",
  "FramePlan.job",
  "GaugeToleranceOptions.gap",
  "GlueUp.bed",
  "GlueUp.blocks",
  "GraduationSetting.gap",
  "HangerSeat.lean",
  "MeasuredRing.sticks",
  "MiterMovement.levelWidth",
  "OpenMiter.gap",
  "PanelCut.depth",
  "PlacedSection.fit",
  "RingGeometry.sticks",
  "SawFaultEffect.gap",
  "SawPlanOptions.gap",
  "SeasonMovement.levelWidth",
  "SeasonMovement.lip",
  "SeenGap.gap",
  "ShopCut.along",
  "ShopOrder.runs",
  "StockFit.gap",
  "StockFit.kept",
  "StockFit.made",
  "StockFit.used",
  "StockFit.waste",
  "StockLayout.cuts",
  "StockPiece.run",
  "StopContact.lean",
  "TearOut.arris",
];

/** Codes that another one took the place of. */
const RETIRED_CODES: readonly string[] = [
  "care",
  "flip",
  "from-blade",
  "hanging",
  "inner-down",
  "note",
  "outer-down",
  "panel-gauge",
  "run",
  "seat",
  "seat-impossible",
  "seat-not-known",
  "slide",
  "stick-length",
  "trapped-under-bevel",
  "work",
];

/** Files whose types hold names of things, not codes: woods, arrises, and signs of the notations. */
const NAMES_OF_THINGS: RegExp = /^src\/(?:wood\/wood-name|units\/|profile\/(?:molding-options|profile)\.ts)/;
/** A code: words in lower case, or a number. */
const KEBAB: RegExp = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

const SOURCES: readonly string[] = listFiles("src", ".ts");
const ALL = SOURCES.map((file) => ({ file, ...namesOf(readProjectFile(file)) }));

function retiredWord(name: string): string | undefined {
  return wordsOf(name).find((word) => Object.hasOwn(RETIRED_WORDS, word));
}

describe("one word for a thing", () => {
  test("no export and no key has a retired word in its name", () => {
    const found = ALL.flatMap(({ file, exports, keys }) =>
      [...exports, ...keys].filter((name) => retiredWord(name) !== undefined).map((name) => `${file}: ${name}`),
    );
    expect(found).toEqual([]);
    expect(ALL.flatMap(({ exports }) => exports).length).toBeGreaterThan(800);
  });

  test("no type has a key by its retired name", () => {
    expect(ALL.flatMap(({ keys }) => keys.filter((key) => RETIRED_KEYS.includes(key)))).toEqual([]);
    // What is no longer a key of a type is still the type's name.
    const types = new Set(ALL.flatMap(({ exports }) => exports));
    expect(RETIRED_KEYS.map((key) => key.split(".")[0]!).filter((type) => !types.has(type))).toEqual([]);
  });

  test("codes are in kebab-case, and none is a retired one", () => {
    const codes = ALL.filter(({ file }) => !NAMES_OF_THINGS.test(file)).flatMap(({ file, codes: all }) =>
      all.map((code) => ({ file, code })),
    );
    expect(codes.length).toBeGreaterThan(300);
    const fields = new Set(ALL.flatMap(({ keys }) => keys.map((key) => key.split(".")[1]!)));
    const wrong = codes.filter(({ code }) => (!KEBAB.test(code) && !fields.has(code)) || RETIRED_CODES.includes(code));
    expect(wrong).toEqual([]);
  });

  test("no file has a retired word in its name", () => {
    const files = ["src", "test", "docs", "examples"].flatMap((folder) => listFiles(folder, ""));
    expect(files.filter((file) => retiredWord(file.split("/").at(-1)!) !== undefined)).toEqual([]);
  });

  test("no text says a retired name", () => {
    const texts = [
      ...["src", "test", "docs", "examples"].flatMap((folder) => listFiles(folder, "")),
      "README.md",
      "DEVELOPERS.md",
      ".changeset/first-release.md",
    ].filter((file) => /\.(?:ts|md|html|ipynb|css)$/.test(file) && !file.startsWith("test/house/vocabulary"));
    const pattern = new RegExp(`\\b(?:${Object.keys(RETIRED_NAMES).join("|")})\\b`, "g");
    const found = texts.flatMap((file) =>
      [...readProjectFile(file).matchAll(pattern)].map(([name]) => `${file}: ${name}`),
    );
    expect(found).toEqual([]);
    expect(texts.length).toBeGreaterThan(600);
  });
});

test("names, words and codes are seen", () => {
  const text = `export interface Fit { readonly stepsMade: number; readonly lay: "face-down" | "Back down" }
    export const atMark = 1; function hidden(): void {} export type End = { gap: number };`;
  expect(namesOf(text)).toEqual({
    exports: ["Fit", "atMark", "End"],
    keys: ["Fit.stepsMade", "Fit.lay", "End.gap"],
    codes: ["face-down", "Back down"],
  });
  expect(wordsOf("arrisLetters-of SVGText")).toEqual(["arris", "letters", "of", "svg", "text"]);
  expect([retiredWord("atMark"), retiredWord("benchmark"), retiredWord("markup")]).toEqual([
    "mark",
    undefined,
    undefined,
  ]);
  expect(KEBAB.test("Back down")).toBe(false);
});
