import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Hazard, HazardCode } from "miterwright/errors";
import { planFrame, type FrameBrief } from "miterwright/frame";
import { hazardText } from "miterwright/words";
import { issuesOf } from "./briefs.js";
import { anyBrief } from "../drawing/frames.js";
import { formatsWith, loose } from "../formats.js";
import { codesOf, codesRead } from "../laws/codes.js";
import { HAZARD_CASES } from "./hazard-cases.js";

const CODES = Object.keys(HAZARD_CASES) as HazardCode[];

const hazardsOf = (brief: FrameBrief): readonly Hazard[] => planFrame(brief).hazards;

describe.each(CODES)("the hazard %s", (code) => {
  const { signals, raises, quiet } = HAZARD_CASES[code];

  test("is raised by sound briefs, with a kind for every number and a source", () => {
    expect(raises).toHaveLength(signals.length);
    for (const [index, brief] of raises.entries()) {
      expect(issuesOf(brief)).toEqual([]);
      const raised = hazardsOf(brief).filter((hazard) => hazard.code === code);
      expect(raised).not.toEqual([]);
      for (const hazard of raised) {
        expect(hazard.signal).toBe(signals[index]);
        expect(Object.keys(hazard.kinds)).toEqual(Object.keys(hazard.numbers));
        expect(hazard.source).not.toBe("");
      }
    }
  });

  test("is not raised by the brief beside these", () => {
    if (quiet === null) {
      for (const other of Object.values(HAZARD_CASES).flatMap((one) => one.raises))
        expect(hazardsOf(other).map((one) => one.code)).toContain(code);
      return;
    }
    expect(issuesOf(quiet)).toEqual([]);
    expect(hazardsOf(quiet).map((hazard) => hazard.code)).not.toContain(code);
  });
});

test("the steps name only hazards that the plan carries, each of which is there once", () => {
  for (const brief of Object.values(HAZARD_CASES).flatMap(({ raises }) => raises)) {
    const { sawing, hazards: all } = planFrame(brief);
    const carried = sawing.hazards.map(({ code }) => code);
    for (const code of sawing.operations.flatMap(({ hazards }) => hazards)) {
      expect(carried).toContain(code);
      expect(all.filter((hazard) => hazard.code === code)).toHaveLength(1);
    }
  }
});

test("no plan carries a hazard with a signal that its rule does not have", () => {
  const carried = fc.oneof(anyBrief, fc.constantFrom(...Object.values(HAZARD_CASES).flatMap(({ raises }) => raises)));
  fc.assert(
    fc.property(carried, (brief) => {
      for (const { code, signal } of hazardsOf(brief)) expect(HAZARD_CASES[code].signals).toContain(signal);
    }),
  );
});

describe.each(Object.entries(HAZARD_CASES))("the hazard %s", (code, { raises }) => {
  test("is written in sentences, without a code of its data", () => {
    for (const brief of raises) {
      for (const hazard of hazardsOf(brief).filter((one) => one.code === code)) {
        const { title, sentence, numbers } = hazardText(hazard, { formats: formatsWith() });
        expect(sentence).toMatch(/^[A-Z].*\.$/s);
        expect(codesRead(`${title} ${sentence} ${numbers}`, codesOf(hazard))).toEqual([]);
        expect(numbers).not.toMatch(/graduation|searched/);
      }
    }
  });
});

test("the numbers of a hazard have paper's names: a line of a scale is a mark", () => {
  const [reach] = hazardsOf(HAZARD_CASES["reach"].raises[0]!).filter(({ code }) => code === "reach");
  const { numbers } = reach!;
  const formats = formatsWith({ length: (value) => `${value} mm`, angle: (degrees) => `${degrees}°` });
  const said = loose(hazardText(reach!, { formats }).numbers);
  expect(said).toContain(`miter mark ${numbers["miterGraduation"]!}°, bevel mark ${numbers["bevelGraduation"]!}°`);
  expect(said).toContain(`miter off by ${numbers["miterMiss"]!}°, bevel off by ${numbers["bevelMiss"]!}°`);
});

test("a number of a hazard whose name is not ours keeps its name", () => {
  const [hazard] = hazardsOf(HAZARD_CASES["short-piece"].raises[0]!);
  const own = {
    ...hazard!,
    numbers: { legOfStand: 7, constructor: 2 },
    kinds: { legOfStand: "length", constructor: "length" },
  };
  expect(loose(hazardText(own as never, { formats: formatsWith() }).numbers)).toBe("legOfStand 7 mm, constructor 2 mm");
});

test("a printed source is named where the rule has one", () => {
  const [narrow] = hazardsOf(HAZARD_CASES["narrow-rip"].raises[0]!).filter(({ code }) => code === "narrow-rip");
  // HSE, Woodworking Information Sheet 16, as a contractor's safety standard restates it: a push stick of 450 mm or more feeds the last 300 mm.
  expect(narrow).toMatchObject({
    signal: "danger",
    numbers: { width: 149, limit: 150, lastStretch: 300, pushStick: 450 },
    source:
      "HSE, Woodworking Information Sheet 16, Circular saw benches, as a contractor's safety standard restates it; the narrowest width is common practice",
  });
});
