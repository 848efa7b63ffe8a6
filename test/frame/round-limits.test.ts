import { describe, expect, test } from "vitest";
import type { Hazard } from "miterwright/errors";
import { planFrame, type FrameBrief, type FramePlan } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { tableSaw } from "miterwright/saw";

type Unit = "mm" | "cm" | "m" | "in" | "ft";
/** Millimeters in each unit; a foot is 12 inches of 25.4 mm (international yard and pound agreement, 1959). */
const SIZES: Readonly<Record<Unit, number>> = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 };
const UNITS = Object.keys(SIZES) as Unit[];
const isInches = (unit: Unit): boolean => unit === "in" || unit === "ft";

/** A length that is round in the unit's own system: so many millimeters, or so many inches. */
function round(unit: Unit, millimeters: number, inches: number): number {
  if (unit === "ft") return inches / 12;
  return unit === "in" ? inches : millimeters / SIZES[unit];
}

/** A plain square frame whose pieces have a given longest line, of stock of 40 x 20 mm. */
function planOf(unit: Unit, longest: number, changes: Partial<FrameBrief> = {}): FramePlan {
  const size = SIZES[unit];
  const profile = molding({ width: 40 / size, thickness: 20 / size });
  const brief = { sides: 4, unit, profile, at: "outerBack", opening: { side: longest }, ...changes };
  return planFrame(brief as FrameBrief);
}
function raised(plan: FramePlan, code: string): Hazard[] {
  return plan.hazards.filter((hazard) => hazard.code === code);
}

describe.each(UNITS)("in %s", (unit) => {
  const hair = 1e-6;
  const byHand = round(unit, 300, 12);
  const heldDown = round(unit, 150, 6);

  test("a piece is short under 300 mm or 12 in, a warning, and a danger only under 150 mm or 6 in", () => {
    expect(raised(planOf(unit, byHand), "short-piece")).toEqual([]);
    for (const [longest, signal, limit] of [
      [byHand * (1 - hair), "warning", byHand],
      [heldDown, "warning", byHand],
      [heldDown * (1 - hair), "danger", heldDown],
    ] as const) {
      const [hazard] = raised(planOf(unit, longest), "short-piece");
      expect(hazard!.signal).toBe(signal);
      expect(hazard!.numbers["limit"]).toBeCloseTo(limit, 12);
    }
  });

  test("a stick is long from 3 m or 10 ft", () => {
    const limit = round(unit, 3000, 120);
    const sticks = (length: number): Partial<FrameBrief> => ({ sticks: [{ id: "pine", length }] });
    const [hazard] = raised(planOf(unit, byHand, sticks(limit)), "long-stick");
    expect(hazard!.numbers["limit"]).toBeCloseTo(limit, 12);
    expect(raised(planOf(unit, byHand, sticks(limit * (1 - hair))), "long-stick")).toEqual([]);
  });

  test("kerf, accepted gap and room for fasteners are usual ones there", () => {
    const { kerf, acceptedGap, fastenerRoom } = planOf(unit, byHand).brief;
    expect(kerf).toBeCloseTo(round(unit, 3.2, 1 / 8), 12);
    expect(acceptedGap).toBeCloseTo(round(unit, 0.25, 0.01), 12);
    expect(fastenerRoom).toBeCloseTo(round(unit, 3, 1 / 8), 12);
  });

  test("the blade of a table saw stands 6 mm or 1/4 in above the work", () => {
    const { size, bladeHeight } = planOf(unit, byHand).sawing.operations[0]!;
    expect(bladeHeight! - size!.height).toBeCloseTo(round(unit, 6, 1 / 4), 12);
  });

  test("an offcut is small under 50 mm or 2 in", () => {
    const size = SIZES[unit];
    // Between two pieces of a square frame a wedge falls off whose base is twice the width.
    const wedge = (base: number): Hazard[] =>
      raised(planOf(unit, byHand, { profile: molding({ width: base / 2, thickness: 20 / size }) }), "thrown-offcut");
    const limit = round(unit, 50, 2);
    expect(wedge(limit * (1 + hair))).toEqual([]);
    expect(wedge(limit * (1 - hair))[0]!.numbers["limit"]).toBeCloseTo(limit, 12);
  });

  test("a panel is deep, short or narrow at round lengths, and the lip laps little of it under 3 mm or 1/8 in", () => {
    const size = SIZES[unit];
    const profile = molding({ width: 40 / size, thickness: 20 / size, rabbet: { width: 2 / size, depth: 10 / size } });
    const board = [{ name: "board", thickness: 3 / size }];
    const numbersOf = (plan: FramePlan, code: string): number[] =>
      raised(plan, code).flatMap(({ numbers }) => (numbers["limit"] === undefined ? [] : [numbers["limit"]]));
    const large = planOf(unit, 700 / size, { sides: 6, profile, contents: board });
    expect(numbersOf(large, "deep-panel")[0]).toBeCloseTo(byHand, 12);
    const small = planOf(unit, 120 / size, { sides: 6, profile, contents: board });
    expect(numbersOf(small, "short-panel-edge")[0]).toBeCloseTo(heldDown, 12);
    const narrow = planOf(unit, 190 / size, { profile, contents: board });
    expect(numbersOf(narrow, "narrow-rip")[0]).toBeCloseTo(heldDown, 12);
    const { lastStretch, pushStick } = raised(narrow, "narrow-rip")[0]!.numbers;
    expect(lastStretch).toBeCloseTo(byHand, 12);
    expect(pushStick).toBeCloseTo(round(unit, 450, 18), 12);
    expect(numbersOf(large, "narrow-lip")[0]).toBeCloseTo(round(unit, 3, 1 / 8), 12);
  });

  test("hangers want 10 mm or 3/8 in of surface, and 3 mm or 1/8 in of wood before their screws", () => {
    const size = SIZES[unit];
    const thin = molding({ width: 8 / size, thickness: 20 / size });
    const plan = planOf(unit, byHand, { profile: thin, hanging: { by: "wire" } });
    expect(raised(plan, "narrow-hanger-seat")[0]!.numbers["limit"]).toBeCloseTo(round(unit, 10, 3 / 8), 12);
    const { hanging } = plan;
    const seat = hanging?.possible === true ? hanging.seat : null;
    expect(seat!.wood - seat!.deepest).toBeCloseTo(round(unit, 3, 1 / 8), 12);
  });

  test("a frame is heavy from 10 kg or 20 lb, and a danger from 25 kg or 50 lb", () => {
    const pound = 0.45359237;
    const [one, many] = isInches(unit) ? [20 * pound, 50 * pound] : [10, 25];
    const at = (extraMass: number): Hazard | undefined =>
      raised(planOf(unit, byHand, { hanging: { by: "two-hooks", extraMass } }), "heavy")[0];
    expect(at(one * (1 - hair))).toBeUndefined();
    expect(at(one)).toMatchObject({ signal: "warning", numbers: { limit: one } });
    expect(at(many * (1 - hair))).toMatchObject({ signal: "warning" });
    expect(at(many)).toMatchObject({ signal: "danger", numbers: { limit: many } });
  });
});

test("rails of 11 in are a warning, and sticks of 8 ft are not long", () => {
  expect(raised(planOf("in", 11), "short-piece")).toMatchObject([
    { signal: "warning", numbers: { length: 11, limit: 12 } },
  ]);
  expect(raised(planOf("in", 20, { sticks: [{ id: "pine", length: 96 }] }), "long-stick")).toEqual([]);
});

describe("a thin edge at the stop", () => {
  const feather = (changes: Partial<FrameBrief>): Hazard[] => raised(planOf("mm", 400, changes), "feather");

  test("does not creep where it stands upright, away from the fence", () => {
    // On a table saw the sight edge is at the fence at the second cut, and the long point a molding's width away from it.
    const { stop, stopRule } = planOf("mm", 400).sawing.operations[1]!;
    expect([stop!.from, stop!.to, stopRule.fromFence]).toEqual([0, 20, 40]);
    expect(feather({})).toEqual([]);
    expect(feather({ sides: 3 })).toEqual([]);
  });

  test("creeps behind a stop that is not tight to the fence where it is at the fence", () => {
    // Face down the outer edge is at the fence at the second cut, and the long point with it.
    const [hazard] = feather({ lay: "face-down" });
    expect(planOf("mm", 400, { lay: "face-down" }).sawing.operations[1]!.stopRule.fromFence).toBe(0);
    expect(hazard).toMatchObject({ signal: "notice", numbers: { limit: 60 } });
    expect(hazard!.numbers["angle"]).toBeCloseTo(45, 12);
    expect(hazard!.facts).toEqual({ at: "fence" });
    expect(feather({ lay: "face-down", sides: 5 })[0]!.numbers["angle"]).toBeCloseTo(54, 12);
    // A hexagon's is 60 degrees, which is not sharper than the limit.
    expect(feather({ lay: "face-down", sides: 6 })).toEqual([]);
  });

  test("creeps under a stop that does not reach the table where it lies on the table", () => {
    // A box's side lies with its long side down: the blade leans 45 degrees, and the finished end is as sharp there.
    const box = { slope: 90, saw: tableSaw(), lay: "flat" } as const;
    const { stop } = planOf("mm", 400, box).sawing.operations[1]!;
    const found = feather(box);
    expect(stop!.to).toBe(0);
    expect(found[0]!.numbers["angle"]).toBeCloseTo(45, 12);
    expect(found[0]!.facts).toEqual({ at: "table" });
    // Face down the long side is on top.
    expect(planOf("mm", 400, { ...box, lay: "face-down" }).sawing.operations[1]!.stop!.from).toBe(20);
    expect(feather({ ...box, lay: "face-down" })).toEqual([]);
  });

  test("is not spoken of where no section is known", () => {
    const measured = {
      profile: undefined,
      at: "outer",
      measured: { levelWidth: 40 },
    } as unknown as Partial<FrameBrief>;
    expect(feather({ ...measured, slope: 90 })).toEqual([]);
  });
});
