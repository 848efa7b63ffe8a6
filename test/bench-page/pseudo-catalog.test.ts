import { describe, expect, test } from "vitest";
import { fitStock } from "miterwright/stock";
import type { ParseFault } from "miterwright/errors";
import { readDryFit } from "../../docs/bench/dry-fit.js";
import { exampleJob } from "../../docs/bench/example-job.js";
import { FIELDS, LISTS } from "../../docs/bench/field-table.js";
import type { FieldName } from "../../docs/bench/fields.js";
import { rowMarkup, wordList } from "../../docs/bench/field-markup.js";
import { fullSizeSection } from "../../docs/bench/full-size-section.js";
import { jobFromFile } from "../../docs/bench/job-file.js";
import { jobFromFragment, leftOutWords } from "../../docs/bench/job-link.js";
import type { JobState } from "../../docs/bench/job-state.js";
import type { Language } from "../../docs/bench/language.js";
import { planJob } from "../../docs/bench/plan-job.js";
import { essenceOf, readyText, type Rack } from "../../docs/bench/ready-text.js";
import { fillTemplate } from "../../docs/bench/template.js";
import { wordsIn } from "../../docs/bench/words.js";
import { penOf } from "../../docs/bench/writers.js";
import { readProjectFile } from "../house/project.js";
import { lettersOutside, outsideOf } from "../words/pseudo-catalog.js";
import { NAMES, strays, straysOf } from "./strays.js";
import { jobOf, TRAY } from "./jobs.js";
import { tellPage } from "./page-cards.js";
import { FORM, LANGUAGE } from "./pseudo-language.js";

const TYPED = {
  layers: [
    { name: "Tide pane", thickness: "2", material: "glass", cost: "8.5" },
    { name: "Chart", thickness: "0.5" },
  ],
  sticks: [
    { length: "2400", name: "LARCH", cost: "12" },
    { length: "1150", count: "1", name: "OAK" },
  ],
};
const WOOD = {
  species: "black walnut",
  cost: "12.5",
  hangs: "wire",
  screwDepth: "9",
  clearance: "1",
  acceptedGap: "0.3",
};
const JOBS: Readonly<Record<string, JobState>> = {
  "the example": exampleJob(LANGUAGE.page.example),
  "a frame with everything": jobOf({ ...TRAY, ...WOOD, slope: "0", title: "Chart", note: "OAK" }, TYPED),
  "a stick in its cradle": jobOf({ ...TRAY, lay: "propped", rough: "square", roughAllowance: "12" }),
  "a miter saw, sides that slope inward": jobOf({ ...TRAY, slope: "-20", saw: "miter", hangs: "two-hooks" }),
  "level measures alone": jobOf({ ...TRAY, known: "level", levelWidth: "48", lap: "6", depth: "9" }, TYPED),
  "no lay that works": jobOf({ ...TRAY, miterReach: "1", bevelLeft: "1" }),
  "a rack that runs short": jobOf(TRAY, { sticks: [{ length: "700", count: "2" }] }),
  "contents that miss the lip": jobOf({ ...TRAY, sides: "4", slope: "", width: "500" }),
  "very many sides": jobOf({ ...TRAY, sides: "60" }),
};
const UNITS = [
  ["mm", "."],
  ["mm", ","],
  ["in", "."],
  ["ft", ","],
] as const;

/** A job in another unit: the numbers stay what they are, in millimeters. */
function inUnit(state: JobState, unit: "mm" | "in" | "ft"): JobState {
  if (unit === "mm") return state;
  const said = (text: string, kind: string): string =>
    (kind === "length" || kind === "room") && text !== "" ? `${text} mm` : text;
  const values = Object.entries(state.values).map(([name, text]) => [name, said(text, FIELDS[name as FieldName].kind)]);
  const rows = (list: "layers" | "sticks"): Record<string, string>[] =>
    state.lists[list].map((row) =>
      Object.fromEntries(Object.entries(row).map(([column, text]) => [column, said(text, LISTS[list][column]!.kind)])),
    );
  return {
    values: { ...(Object.fromEntries(values) as JobState["values"]), unit },
    lists: { layers: rows("layers"), sticks: rows("sticks") },
  };
}

describe.each(UNITS)("in %s, with the decimal mark %s, every letter is of the catalogs", (unit, decimalMarker) => {
  const language: Language = { ...LANGUAGE, decimalMarker };

  test.each(Object.entries(JOBS))("on the cards and in the status of %s", (_, given) => {
    const state = inUnit(given, unit);
    const { plan } = planJob(state, language);
    const pen = penOf(state.values, language);
    const [job] = plan!.stockJobs;
    const fit = job === undefined ? null : fitStock(job);
    const { cards, notReady } = tellPage(plan!, pen, fit);
    for (const [section, markup] of Object.entries(cards))
      expect([section, straysOf(markup ?? "", plan!)]).toEqual([section, []]);
    const racks: Rack[] = [
      { kind: "none" },
      { kind: "pending" },
      ...(fit === null ? [] : [{ kind: "fit", fit } as const]),
    ];
    for (const why of ["tooLong", "numbers", "failed"] as const) racks.push({ kind: "refused", why });
    const told = racks.map((rack) => readyText(plan!, notReady, rack, pen));
    const first = essenceOf(plan!, pen);
    if (first !== null) told.push(pen.page.status.essence(first));
    for (const text of told) expect(strays(text)).toEqual([]);
    // Else nothing would have been told at all.
    expect(told.join("")).toContain("\u27e6");
  });

  test("on the profile at full size, and where it can't be drawn", () => {
    for (const given of [
      exampleJob(LANGUAGE.page.example),
      jobOf({ ...TRAY, moldingWidth: "300" }),
      JOBS["level measures alone"]!,
    ]) {
      const state = inUnit(given, unit);
      const { plan } = planJob(state, language);
      const { page, why } = fullSizeSection(plan!, penOf(state.values, language));
      expect(straysOf(page ?? why, plan!)).toEqual([]);
      expect(outsideOf(page ?? why)).not.toBe(page ?? why);
    }
  });

  test("in what is said of a gap at the dry fit", () => {
    const answers = [
      {},
      { seenGap: "0" },
      { hold: "bevel" },
      { shownMiter: "29", shownBevel: "9" },
      { shownBevel: "90" },
    ];
    const wrong = [{ seenGap: "900" }, { seenSlope: "95" }, { seenSlope: "up" }, { slope: "0", hold: "miter" }];
    for (const answer of [...answers, ...wrong]) {
      const state = inUnit(jobOf({ ...TRAY, seenGap: "1", ...answer }), unit);
      const { lines, issues } = readDryFit(state.values, planJob(state, language).plan!, penOf(state.values, language));
      const told = [...lines, ...issues.map(({ words }) => words)];
      expect(told.length).toBeGreaterThan(0);
      for (const text of told) expect([text, strays(text)]).toEqual([text, []]);
    }
  });

  test("beside the fields", () => {
    const wrong: readonly (readonly [Parameters<typeof jobOf>[0], Parameters<typeof jobOf>[1]?])[] = [
      [{ ...TRAY, width: "wide", slope: "steep", sides: "six", kerf: "1,234", height: "-3", clearance: "-1" }],
      [{ ...TRAY, width: "1 234", height: "5 - 7/16", moldingWidth: "1' 12\"", thickness: "7 ells" }],
      [{ ...TRAY, sides: "2", slope: "95", scaleStep: "60", miterReach: "100", width: "1e300", sawDepth: "1e101" }],
      [
        {
          ...TRAY,
          species: "black walnut",
          hangs: "wire",
          made: "301",
          wireAngle: "2",
          extraMass: "5000",
          frames: "0",
        },
      ],
      [{ ...TRAY, rabbetWidth: "60" }],
      [{ ...TRAY, rabbetDepth: "19" }],
      [{ ...TRAY, milled: "milled", slope: "90" }],
      [{ ...TRAY, holds: "measure", size: "4" }],
      [
        TRAY,
        {
          sticks: [
            { length: "0", cost: "dear", count: "2.5" },
            { length: "9", count: "2000000000" },
          ],
        },
      ],
      [
        TRAY,
        {
          sticks: [
            { length: "900", name: "OAK" },
            { length: "800", name: "OAK" },
          ],
        },
      ],
      [
        TRAY,
        {
          layers: [
            { thickness: "4", material: "molding" },
            { thickness: "4", material: "sheet" },
          ],
        },
      ],
      [TRAY, { layers: [{ thickness: "4", material: "sheet", density: "0", cost: "1e13" }] }],
    ];
    for (const [values, lists] of wrong) {
      const { issues } = planJob(jobOf({ ...values, unit }, lists), language);
      expect(issues.length).toBeGreaterThan(0);
      for (const { field, words } of issues) {
        expect([field, strays(words)]).toEqual([field, []]);
        expect(outsideOf(words)).not.toBe(words);
      }
    }
  });
});

describe("without a plan, every letter is of the catalogs", () => {
  test("on the page as it is built, with its form and its dictionary", () => {
    const template = readProjectFile("docs/bench/index.html");
    expect(strays(fillTemplate(template, "", FORM, LANGUAGE))).toEqual([]);
    const rows = [rowMarkup("sticks", 0, LANGUAGE.page), rowMarkup("layers", 2, LANGUAGE.page)];
    for (const { html } of [...rows, wordList(FORM.dictionary, LANGUAGE.page)!]) expect(strays(html)).toEqual([]);
  });

  test("in the template, which holds none of its own but the name", () => {
    const texts = readProjectFile("docs/bench/index.html")
      .replace(/<!--.*?-->|\{\{\w+\}\}/g, "")
      .replace(/<[^>]*>/g, " ");
    expect(texts.match(/\p{L}+/gu)).toEqual(["Miterwright"]);
  });

  test("in what is said of links, files and the search", () => {
    const { opened, rack, status } = LANGUAGE.page;
    const why = (given: ReturnType<typeof jobFromFile>): string => (given.ok ? "opened" : given.why);
    const told = [
      ...["{", "[]", '{"format":"miterwright-bench-job"}', '{"format":"miterwright-bench-job","version":1}'],
      '{"format":"miterwright-bench-job","version":1,"fields":{},"sticks":3}',
    ].map((text) => why(jobFromFile(text, opened)));
    told.push(why(jobFromFragment("v=9", opened)), why(jobFromFragment("x=9", opened)));
    told.push(leftOutWords(["Chart", "OAK"], opened), leftOutWords(["1", "2", "3", "4", "5", "6"], opened));
    told.push(rack.begun, rack.looking({ pieces: 3 }), rack.found({ proven: "99.5\u00a0%" }));
    told.push(...Object.values(status.done), ...Object.values(status.failed), status.none, status.needed, status.wrong);
    for (const text of told)
      expect([text, lettersOutside(text.replace("miterwright-bench-job", ""), NAMES)]).toEqual([text, []]);
  });

  test("in every reason why a text can't be read", () => {
    const faults: ParseFault[] = [
      { code: "unclear-comma", decimals: "1.2", thousands: "12" },
      { code: "unclear-space", thousands: "1234" },
      { code: "unclear-joint", sign: "comma" },
      { code: "too-many-parts", limit: 12 },
      { code: "too-many-digits", limit: 1000 },
    ];
    const { reasons } = LANGUAGE.page.errors;
    const said = [
      ...Object.keys(reasons)
        .filter((code) => !faults.some((fault) => fault.code === code))
        .map((code) => ({ code }) as ParseFault),
      ...faults,
    ].map((fault) => (reasons[fault.code] as (values: ParseFault) => string)(fault));
    expect(said.length).toBe(Object.keys(reasons).length);
    for (const text of said) expect([text, lettersOutside(text)]).toEqual([text, []]);
  });
});

test("trade words are found in another catalog as well", () => {
  const { word } = FORM.dictionary[0]!;
  expect(wordsIn(`It is ${word}.`, FORM.dictionary)).toContain(FORM.dictionary[0]);
});

test("a text past the catalogs would be seen", () => {
  expect(strays("<p>\u27e6The length is \u27e7191\u00a0mm\u27e6.\u27e7</p>")).toEqual([]);
  expect(strays('<p aria-label="Length">\u27e6It is \u27e7flat\u27e6.\u27e7</p>')).toEqual(["Length", "flat"]);
});
