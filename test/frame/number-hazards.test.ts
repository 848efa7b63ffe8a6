import fc from "fast-check";
import { expect, test } from "vitest";
import { numberHazards, planFrame, type FramePlan } from "miterwright/frame";
import { english } from "miterwright/words";
import { anyBrief } from "../drawing/frames.js";
import { HAZARD_CASES } from "./hazard-cases.js";

const SIGNALS = ["danger", "warning", "caution", "notice"];

test("hazards are numbered from 1, the gravest first, each with the steps that name its code", () => {
  fc.assert(
    fc.property(anyBrief, (brief) => {
      const plan = planFrame(brief);
      const numbered = numberHazards(plan);
      expect(numbered.map(({ number }) => number)).toEqual(plan.hazards.map((_, index) => index + 1));
      const places = numbered.map(
        ({ hazard }) => SIGNALS.indexOf(hazard.signal) * plan.hazards.length + plan.hazards.indexOf(hazard),
      );
      expect(places).toEqual([...new Set(places)].sort((a, b) => a - b));
      for (const { step, hazards } of plan.sawing.operations) {
        const named = numbered.filter(({ steps }) => steps.includes(step)).map(({ hazard }) => hazard.code);
        expect(named.sort()).toEqual([...hazards].sort());
      }
    }),
    { numRuns: 40 },
  );
});

test("a plan that came back from JSON has the same numbers", () => {
  const plan = planFrame(HAZARD_CASES["pane-on-arris"].raises[0]!);
  expect(numberHazards(JSON.parse(JSON.stringify(plan)) as FramePlan)).toEqual(numberHazards(plan));
});

test.each<[readonly number[], string]>([
  [[3], "Heed hazard 3 above."],
  [[2, 5], "Heed hazards 2 and 5 above."],
  [[1, 2, 11], "Heed hazards 1, 2 and 11 above."],
])("a step that hazards %j concern says %j", (hazards, said) => {
  expect(english.steps.heed({ hazards })).toBe(said);
});

test.each<[string, unknown, string]>([
  ["nothing", null, "Expected `plan` to be an object, got null"],
  ["no hazards", { sawing: {} }, "Expected `plan.hazards` to be an array, got undefined"],
  ["no saw plan", { hazards: [] }, "Expected `plan.sawing` to be an object, got undefined"],
])("a plan is refused for %s", (_, plan, message) => {
  expect(() => numberHazards(plan as never)).toThrow(message);
});
