import { describe, expect, test } from "vitest";
import { glueUp } from "miterwright/closure";
import { planFrame } from "miterwright/frame";
import { glueUpLines, lastJointText, english } from "miterwright/words";

describe("the order of gluing", () => {
  const ALL = Array.from({ length: 40 }, (_, index) => index + 3);

  test.each([...ALL, 1000])("of %d pieces numbers corners and pieces from 1, in short sentences", (sides) => {
    const order = glueUp({ sides });
    const sentences = glueUpLines(order);
    expect(sentences).toHaveLength(order.stages.length);
    for (const [index, { corners, step }] of order.stages.entries()) {
      // Few corners are named one by one; of many, the first ones and the last.
      const isLong = corners.length > 12;
      const numbers = (isLong ? [...corners.slice(0, 3), corners.at(-1)!] : corners).map((corner) => corner + 1);
      const count = isLong ? [corners.length] : [];
      const piece = step === "closing-piece" ? [sides] : [];
      expect(sentences[index]!.match(/\d+/g)!.map(Number)).toEqual([...piece, ...count, ...numbers]);
      expect(sentences[index]!.length).toBeLessThan(110);
    }
  });

  test("ends in halves of an even ring, and in all but one piece of an odd one", () => {
    expect(glueUpLines(glueUp({ sides: 5 }))).toEqual([
      "Glue the pieces in pairs, at corners 2 and 4.",
      "Glue what lies side by side, at corner 3.",
      "Cut piece 5 to fit the gap between its neighbors and glue it in, at corners 1 and 5.",
    ]);
    expect(glueUpLines(glueUp({ sides: 4 })).at(-1)).toBe(
      "Trim both halves straight and glue them together, at corners 1 and 3.",
    );
  });

  test("is told in other words where such are given, and refused where it is none", () => {
    const words = { ...english, glueStages: { ...english.glueStages, pairs: () => "two by two" } };
    expect(glueUpLines(glueUp({ sides: 8 }), { words })[0]).toBe("two by two");
    const order = glueUp({ sides: 4 });
    const broken = { ...order, stages: [{ ...order.stages[0], corners: [] }] };
    expect(() => glueUpLines(broken as never)).toThrow(
      "Expected `glueUp.stages[0].corners` to be an array of at least 1",
    );
  });
});

describe("the last joint", () => {
  const lastJointOf = (sides: number): Parameters<typeof lastJointText>[0] =>
    planFrame({ sides, opening: { side: 200 }, measured: { levelWidth: 40 } }).assembly.lastJoint;

  test("is told for even and odd numbers of sides", () => {
    expect(lastJointText(lastJointOf(8))).toBe(
      "Lay each half against a straightedge; where its ends do not touch all along, plane or saw both in one line, as little as that takes.",
    );
    expect(lastJointText(lastJointOf(7))).toBe(
      "An odd number of sides has no straight halves: leave the last piece long and cut it to fit between its neighbors, its length and the angle of either end.",
    );
  });

  test("is told in other words where such are given, and refused where it is none", () => {
    const words = { ...english, lastJoints: { ...english.lastJoints, "closing-piece": () => "leave one long" } };
    expect(lastJointText(lastJointOf(7), { words })).toBe("leave one long");
    expect(() => lastJointText({ made: "glue" } as never)).toThrow(
      'Expected `lastJoint.made` to be one of "trimmed-halves", "closing-piece", got "glue" (string)',
    );
  });
});
