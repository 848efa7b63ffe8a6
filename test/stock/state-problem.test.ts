import fc from "fast-check";
import { expect, test } from "vitest";
import type { Kind } from "../../src/stock/model/problem.js";
import { withoutDominated } from "../../src/stock/model/state-problem.js";

test("a kind is dropped only if an endless one is no shorter and no dearer, and then always", () => {
  const kind = fc.record({
    room: fc.integer({ min: 1, max: 6 }),
    cost: fc.integer({ min: 0, max: 6 }),
    limit: fc.constantFrom(Infinity, Infinity, 0, 2),
    cut: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(kind, { minLength: 1, maxLength: 6 }), (given) => {
      const kinds = given.map(({ room, cost, limit, cut }, stick): Kind => ({
        stick,
        rooms: cut ? [room, 1] : [room],
        losses: cut ? [0, 0] : [0],
        cost,
        limit,
      }));
      const left = withoutDominated(kinds);
      const covers = (other: Kind, one: Kind): boolean =>
        other.limit === Infinity &&
        other.rooms.length === 1 &&
        other.cost <= one.cost &&
        other.rooms[0]! >= one.rooms.reduce((sum, room) => sum + room, 0);
      for (const one of kinds) {
        const covered = left.some((other) => other !== one && covers(other, one));
        expect(left.includes(one)).toBe(one.limit > 0 && !covered);
      }
    }),
  );
});
