import fc from "fast-check";
import { expect, test } from "vitest";
import { type Box, partBox } from "../../src/stock/count-tree.js";

test("every choice of stick counts in a box is in exactly one of its parts", () => {
  const side = fc.tuple(fc.nat(3), fc.nat(3), fc.integer({ min: 0, max: 24 }));
  fc.assert(
    fc.property(fc.array(side, { minLength: 1, maxLength: 3 }), (sides) => {
      const least = Float64Array.from(sides, ([low]) => low);
      const most = Float64Array.from(sides, ([low, span]) => low + span);
      // Quarters within the box, so that some are whole.
      const counts = Float64Array.from(sides, ([low, span, quarters]) => low + Math.min(span, quarters / 4));
      const box: Box = {
        node: { demand: new Float64Array(0), least, most, fixed: [], fixedCost: 0 },
        bound: 0,
        pinned: false,
      };
      const parts = partBox(box, counts);
      const choices = sides.reduce<number[][]>(
        (all, [low, span]) => all.flatMap((some) => Array.from({ length: span + 1 }, (_, k) => [...some, low + k])),
        [[]],
      );
      for (const choice of choices) {
        const homes = parts.filter(({ node }) => choice.every((n, k) => n >= node.least[k]! && n <= node.most[k]!));
        expect(homes).toHaveLength(1);
      }
      for (const { node, pinned } of parts) {
        if (pinned) expect([...node.least]).toEqual([...node.most]);
      }
    }),
  );
});
