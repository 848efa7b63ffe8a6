import { describe, expect, expectTypeOf, test } from "vitest";
import type { Hazard, HazardCode, HazardFacts, HazardFence, HazardNames } from "miterwright/errors";
import { hazardText, english, type HazardValues, type HazardWords } from "miterwright/words";
import { formatsWith } from "../formats.js";
import { heed } from "../frame/heed.js";

type FactsByCode = { readonly [C in keyof HazardFacts]: readonly HazardFacts[C][] };

const FENCES = [{ fence: "saw" }, { fence: "gauge" }] as const;
const POSES = [{ pose: "side-down" }, { pose: "corner-down" }] as const;
const OBSTACLES = ["crosscut", "tips-over"] as const;
/** Every case that the facts tell apart: the compiler asks for those of each code that has facts. */
const FACTS: FactsByCode = {
  "trapped-piece": FENCES.flatMap(({ fence }) => (["by-hand", "held-down"] as const).map((hold) => ({ fence, hold }))),
  "piece-under-bevel": FENCES,
  "thrown-offcut": [{ offcut: "wedge" }, { offcut: "blank-end" }],
  "balance-not-known": FENCES,
  tip: FENCES,
  feather: [{ at: "table" }, { at: "fence" }, { at: "table-and-fence" }],
  capacity: (["none-works", "asked-for", "asked-for-others-work"] as const).map((lay) => ({
    lay,
    obstacles: OBSTACLES,
  })),
  "missed-lip": POSES,
  "lip-not-known": POSES,
  "unfilled-opening": POSES,
  "seating-impossible": [{ reason: "past-mouth" }, { reason: "falls-through" }, { reason: "too-steep" }],
  "shallow-rabbet": [{ verdict: "short" }, { verdict: "proud" }],
  "pane-on-arris": [{ bearsOn: "sight-edge" }, { bearsOn: "corner" }],
  "long-screws": [{ points: "near-face" }, { points: "through" }],
  "panel-room": [{ lack: "slight" }, { lack: "large" }],
};

function hazardOf(code: string, parts: Partial<Hazard> = {}): Hazard {
  const names = { layer: "old map" };
  return { code: code as HazardCode, signal: "notice", numbers: {}, kinds: {}, names, source: "a book", ...parts };
}

describe("the words of hazards", () => {
  test("are there for every code, with what it tells", () => {
    expectTypeOf<keyof HazardWords>().toEqualTypeOf<HazardCode>();
    expectTypeOf<keyof HazardFacts | keyof HazardNames>().toExtend<HazardCode>();
    expectTypeOf<HazardValues["tip"]["fence"]>().toEqualTypeOf<HazardFence>();
    expectTypeOf<HazardValues["panel-lap"]["layer"]>().toEqualTypeOf<string>();
    expectTypeOf<HazardValues["dust"]>().not.toHaveProperty("fence");
    const { dust, ...others } = english.hazards;
    // @ts-expect-error a code is missing
    const lacking: HazardWords = others;
    expect([typeof dust, "dust" in lacking]).toEqual(["function", false]);
  });

  test.each(Object.entries(FACTS))("of %s differ with its facts", (code, cases: readonly object[]) => {
    const said = cases.map((facts) => heed(hazardOf(code, { facts: facts as NonNullable<Hazard["facts"]> })));
    for (const sentence of said) {
      expect(sentence).toMatch(/^[A-Z].*\.$/);
      expect(sentence).not.toMatch(/undefined|null/);
    }
    expect(new Set(said).size).toBe(cases.length);
  });

  test.each(["short-piece", "heavy"])("of %s differ with the signal", (code) => {
    const [warning, danger] = (["warning", "danger"] as const).map((signal) => heed(hazardOf(code, { signal })));
    expect(warning).not.toBe(danger);
  });

  test("name the sides at which contents fall short, in either pose", () => {
    const said = (numbers: Record<string, number>, pose: string): string => {
      const kinds = Object.fromEntries(Object.keys(numbers).map((name) => [name, "length"] as const));
      return heed(hazardOf("unfilled-opening", { numbers, kinds, facts: { pose } }));
    };
    expect(said({ leftAndRight: 2 }, "side-down")).toBe(
      "The frame is square, and what it should contain is not. Centered, the contents leave the opening free at the left and the right.",
    );
    expect(said({ aboveAndBelow: 2 }, "side-down")).toMatch(/ free above and below\.$/);
    expect(said({ leftAndRight: 2, aboveAndBelow: 3 }, "corner-down")).toBe(
      "The frame stands on a corner, and what it should contain stands upright. Centered, the contents leave the opening free at the left, at the right, above and below.",
    );
  });

  test("of the reach of the scales say whether slopes were tried", () => {
    const close = (where: string): string =>
      `No marks of the saw's scales close the ring ${where}: even those that cost least open the last joint visibly. Set finer than the marks, and prove the setting on scrap by closing a ring of test pieces.`;
    const tried = hazardOf("reach", { numbers: { slopeSearched: 2 }, kinds: { slopeSearched: "angle" } });
    expect(heed(tried)).toBe(close("while its sides stand near their slope"));
    expect(heed(hazardOf("reach"))).toBe(close("with the angle that has to be 0 left at 0"));
  });

  test("of a thin edge at both places name both remedies", () => {
    expect(heed(hazardOf("feather", { facts: { at: "table-and-fence" } }))).toBe(
      "The finished end meets the stop with a thin edge on the table, where it creeps under the stop and at the fence, where it creeps behind the stop: give the stop a square face that reaches the table and a square face that is tight to the fence, and push gently.",
    );
  });

  test("can be one's own, and get numbers as the reader writes them and names that cannot turn the text round", () => {
    const hazards: HazardWords = {
      ...english.hazards,
      "panel-lap": ({ layer, numbers, signal }) => `${signal}: ${layer} ${numbers["retreat"]!}`,
    };
    const options = { formats: formatsWith(), words: { ...english, hazards } };
    const given = { numbers: { retreat: 2 }, kinds: { retreat: "length" }, names: { layer: "\u202emap" } } as const;
    expect(hazardText(hazardOf("panel-lap", given), options).sentence).toBe("notice: map 2\u00a0mm");
    expect(hazardText(hazardOf("dust"), options).sentence).toBe(heed(hazardOf("dust")));
  });
});
