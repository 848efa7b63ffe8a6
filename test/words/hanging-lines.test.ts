import { expect, test } from "vitest";
import { planFrame, type FrameBrief, type FramePlan, type HungFrame } from "miterwright/frame";
import { hangingLines, english, type TellOptions, type Words } from "miterwright/words";
import { formatsWith, loose } from "../formats.js";
import { throughJson, plain } from "../frame/briefs.js";

const length = (value: number): string => `${value.toFixed(1)} mm`;
const formats = formatsWith({ length, angle: (degrees) => `${degrees}°` });

/** Its sentences, with spaces that compare easily. */
function told(plan: FramePlan, options: Partial<TellOptions> = {}): readonly string[] {
  return loose(hangingLines(plan, { formats, ...options }));
}

const hung = (changes: Partial<FrameBrief>): readonly string[] =>
  told(throughJson(planFrame({ sides: 6, opening: { side: 200 }, profile: plain, ...changes } as FrameBrief)));

test("nothing is said of a frame that is not to hang, and only why of one that can't", () => {
  expect(hung({})).toEqual([]);
  // Steeper on its outer side than any hanger lies, at a slope that turns the back away from the wall as well.
  const triangle = {
    outline: [
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: 20, y: 4 },
    ],
    arrises: {},
  };
  const plan = planFrame({ sides: 6, slope: 80, opening: { side: 200 }, profile: triangle, hanging: { by: "wire" } });
  expect(plan.hanging).toMatchObject({ possible: false, reason: "no-wall-surface" });
  expect(told(plan)).toEqual([
    "No surface of the molding lies toward the wall at this slope, so a hanger has nothing to lie on: hang the frame by a cleat or a bracket of its own.",
  ]);
});

test("the wire and the load are said with their numbers, and what is not known is not made up", () => {
  const known = hung({ species: "black cherry", hanging: { by: "wire", wireAngle: 20, screwDepth: 8 } });
  const plan = planFrame({
    sides: 6,
    opening: { side: 200 },
    profile: plain,
    species: "black cherry",
    hanging: { by: "wire", wireAngle: 20, screwDepth: 8 },
  });
  const { hanging } = plan;
  if (hanging?.possible !== true) throw new Error("it should hang");
  expect(known).toHaveLength(4);
  expect(known[1]).toContain("these go in 8.0 mm.");
  expect(known[2]).toBe(
    `The wire is ${length(hanging.wire!.length)} from hanger to hanger, knots besides; at 20° its hook is ${length(hanging.wire!.belowTop)} below the frame's top.`,
  );
  expect(known[3]).toContain(`(${Number(hanging.load.weight!.toPrecision(3))} N)`);
  expect(hung({ hanging: { by: "two-hooks" } }).at(-1)).toBe(
    "Each hook and hanger carries 50 % of the weight, which is not known: weigh the frame.",
  );
});

test("masses and forces are written as the reader reads them", () => {
  const plan = planFrame({
    sides: 6,
    opening: { side: 200 },
    profile: plain,
    species: "black cherry",
    hanging: { by: "two-hooks" },
  });
  const { load } = plan.hanging as HungFrame;
  const mass = (kilograms: number): string => `${(1000 * kilograms).toFixed(0)} grams`;
  const force = (newtons: number): string => `${(newtons / 1000).toFixed(4)} kilonewtons`;
  expect(told(plan, { formats: { ...formats, mass, force } }).at(-1)).toBe(
    `It weighs ${mass(load.mass!)} (${force(load.weight!)}). Each hook and hanger carries ${force(load.pull!)}; common practice, which is no advice, takes what holds 4 times that, ${force(load.strength!)}.`,
  );
});

test("other words are taken", () => {
  const hanging: Words["hanging"] = {
    fixings: ({ by, sides }) => `${by} ${sides.join(" ")}`,
    seat: ({ opens, screwDepth }) => `${opens} ${screwDepth}`,
    wire: ({ shows, angle }) => `${shows} ${angle}`,
    load: ({ factor }) => `times ${factor}`,
    unknownLoad: ({ share }) => share,
  };
  const own: Words = { ...english, hanging };
  const brief: FrameBrief = {
    sides: 6,
    opening: { side: 200 },
    profile: plain,
    hanging: { by: "wire", wireAngle: 60, screwDepth: 8 },
  };
  const sides = told(planFrame(brief), { words: own })[0]!;
  expect(sides).toMatch(/^wire \d \d$/);
  expect(told(planFrame(brief), { words: own })).toEqual([sides, "nowhere 8.0 mm", "true 60°", "57.7 %"]);
  const known = planFrame({ ...brief, species: "black cherry" });
  expect(told(known, { words: own }).at(-1)).toBe("times 4");
});

test("malformed input is refused", () => {
  const plan = planFrame({ sides: 6, opening: { side: 200 }, profile: plain, hanging: { by: "wire" } });
  expect(() => told(7 as never)).toThrow("Expected `plan` to be an object, got 7 (number)");
  expect(() => told({ hanging: 7 } as never)).toThrow("Expected `plan.hanging` to be an object, got 7 (number)");
  expect(() => told(plan, { formats: { length } as never })).toThrow(
    "Expected `formats.small` to be a function that writes a small length as text, got undefined",
  );
  expect(() => told(plan, { formats: { ...formats, mass: 2 as never } })).toThrow(
    "Expected `formats.mass` to be a function that writes a mass as text, got 2 (number)",
  );
  expect(() => told(plan, { formats: { ...formats, force: "N" as never } })).toThrow(
    'Expected `formats.force` to be a function that writes a force as text, got "N" (string)',
  );
});
