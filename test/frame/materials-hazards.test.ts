import { describe, expect, test } from "vitest";
import { planFrame, type ContentsLayer, type ProfileBrief } from "miterwright/frame";
import type { Hazard } from "miterwright/errors";
import { molding } from "miterwright/profile";
import { plain, rabbeted } from "./briefs.js";
import { heed } from "./heed.js";

const pane: ContentsLayer = { name: "pane", thickness: 2, material: "glass" };
const acrylic: ContentsLayer = { name: "sheet", thickness: 2, material: "acrylic" };
/** Wood whose density at the moisture of the shop is known: nothing of it moves. */
const still = { radial: 0, tangential: 0, specificGravity: 0.6 };

function hazardsOf(changes: Partial<ProfileBrief>): readonly Hazard[] {
  return planFrame({ sides: 6, profile: rabbeted, opening: { side: 400 }, species: still, ...changes } as ProfileBrief)
    .hazards;
}

/** The hazard of a code whose sentence begins so. */
function find(changes: Partial<ProfileBrief>, code: string, sentence: RegExp): Hazard | undefined {
  return hazardsOf(changes).find((hazard) => hazard.code === code && sentence.test(heed(hazard)));
}

const board = (thickness: number): ContentsLayer => ({ name: "board", thickness, material: { density: 700 } });
const hung = (extra: object): Partial<ProfileBrief> => ({ hanging: { by: "wire", ...extra } });

test.each<[string, string, Partial<ProfileBrief>, Partial<ProfileBrief>]>([
  ["shallow-rabbet", "The contents leave less depth", { contents: [board(8.5)] }, { contents: [board(8)] }],
  [
    "shallow-rabbet",
    "The contents leave less depth",
    { contents: [board(6)], fastenerRoom: 6 },
    { contents: [board(6)], fastenerRoom: 5 },
  ],
  ["shallow-rabbet", "The contents stand proud", { contents: [board(11.5)] }, { contents: [board(10.5)] }],
  [
    "glass-tolerance",
    "Behind the contents there is just room",
    { contents: [pane, board(6)] },
    { contents: [acrylic, board(6)] },
  ],
  ["heavy", "The frame is heavy", hung({ extraMass: 9 }), hung({ extraMass: 5 })],
  ["heavy", "The frame is so heavy", hung({ extraMass: 30 }), hung({ extraMass: 12 })],
  ["heavy", "The frame is heavy", { contents: [{ ...pane, thickness: 10 }] }, { contents: [pane] }],
  ["glass-handling", "Glass cuts", { contents: [pane] }, { contents: [acrylic] }],
  [
    "pane-on-arris",
    "At this slope the pane bears on the sight edge",
    { slope: 10, contents: [pane] },
    { contents: [pane] },
  ],
  [
    "pane-on-arris",
    "At this slope the pane bears on the sight edge",
    { slope: 10, contents: [pane] },
    { slope: 10, contents: [acrylic] },
  ],
  [
    "pane-on-arris",
    "At this slope the pane bears on the ledge",
    { slope: -10, contents: [pane] },
    { slope: 10, contents: [pane] },
  ],
  [
    "large-pane",
    "The pane is large",
    { opening: { acrossCorners: 810 }, contents: [pane] },
    { opening: { acrossCorners: 790 }, contents: [pane] },
  ],
  [
    "large-pane",
    "The pane is large",
    { opening: { acrossCorners: 1100 }, contents: [pane] },
    { opening: { acrossCorners: 1100 }, contents: [{ ...pane, thickness: 3 }] },
  ],
  ["long-screws", "The hangers' screws leave little wood", hung({ screwDepth: 18 }), hung({ screwDepth: 16 })],
  ["long-screws", "The hangers' screws are longer", hung({ screwDepth: 19 }), hung({ screwDepth: 18 })],
  ["narrow-hanger-seat", "The surface that the hangers", { ...hung({}), slope: 90 }, hung({})],
  ["leaning-hanger-seat", "The hangers do not lie flat", { ...hung({}), slope: 11 }, { ...hung({}), slope: 9 }],
  ["leaning-hanger-seat", "The hangers do not lie flat", { ...hung({}), slope: -11 }, { ...hung({}), slope: -9 }],
  ["flat-wire", "The wire is so flat", hung({ wireAngle: 29 }), hung({ wireAngle: 30 })],
  ["hook-shows", "At this angle the hook shows", hung({ wireAngle: 60 }), hung({ wireAngle: 30 })],
  [
    "mass-not-known",
    "Not all that hangs",
    { ...hung({}), contents: [{ name: "print", thickness: 0.3 }] },
    { ...hung({}), contents: [pane] },
  ],
  [
    "mass-not-known",
    "Not all that hangs",
    { ...hung({}), contents: [{ name: "print", thickness: 0.3 }] },
    { contents: [{ name: "print", thickness: 0.3 }] },
  ],
])("%s, %s: raised by %j and not by %j", (code, sentence, raising, quiet) => {
  const start = new RegExp(`^${sentence}`);
  const raised = find(raising, code, start);
  expect(raised).toBeDefined();
  expect(raised!.source).not.toBe("");
  expect(Object.keys(raised!.kinds)).toEqual(Object.keys(raised!.numbers));
  expect(find(quiet, code, start)).toBeUndefined();
});

describe("the numbers", () => {
  test("of a heavy frame whose wood is not known are what is known", () => {
    const plan = planFrame({
      sides: 4,
      profile: plain,
      opening: { side: 400 },
      hanging: { by: "wire", extraMass: 26 },
    });
    const heavy = plan.hazards.find(({ code }) => code === "heavy");
    expect(heavy).toMatchObject({
      signal: "danger",
      numbers: { mass: 26, limit: 25 },
      kinds: { mass: "mass", limit: "mass" },
    });
  });

  test("of glass are the mass of all panes", () => {
    const plan = planFrame({
      sides: 6,
      profile: rabbeted,
      opening: { side: 400 },
      contents: [pane, acrylic, { ...pane, thickness: 3 }],
    });
    const area = plan.contents.panel!.area / 1e6;
    const glass = plan.hazards.find(({ code }) => code === "glass-handling")!;
    expect(glass.numbers["mass"]).toBeCloseTo(2.5 * 5 * area, 12);
  });

  test("of a flat wire are its angle, and its pull in percent of the weight", () => {
    const { numbers, kinds, source } = find(hung({ wireAngle: 10 }), "flat-wire", /so flat/)!;
    expect(numbers["pull"]).toBeCloseTo(100 / (2 * Math.sin(Math.PI / 18)), 9);
    expect(kinds).toEqual({ angle: "angle", limit: "angle", pull: "percent" });
    expect(source).toBe("computed");
  });

  test("of the stack name the tolerance's source where it decides", () => {
    const hazard = find({ contents: [pane, board(6)] }, "glass-tolerance", /just room/)!;
    expect(hazard).toMatchObject({ signal: "notice", source: "EN 572-2 (values from memory)" });
    expect(hazard.numbers["left"]).toBeCloseTo(2.8, 12);
  });
});

test("limits have the same scale in every unit", () => {
  const inch = 25.4;
  const hazards = planFrame({
    sides: 6,
    unit: "in",
    profile: molding({ width: 52 / inch, thickness: 19 / inch, rabbet: { width: 9 / inch, depth: 11 / inch } }),
    opening: { acrossCorners: 810 / inch },
    species: still,
    contents: [{ ...pane, thickness: 2 / inch }],
    hanging: { by: "wire", screwDepth: 18 / inch },
  }).hazards;
  const sentences = hazards.map(heed).join("\n");
  expect(sentences).toMatch(/The pane is large/);
  expect(sentences).toMatch(/leave little wood/);
  expect(sentences).not.toMatch(/narrower/);
});
