import type { Problem } from "../model/problem.js";
import { sumOf } from "../sums.js";

/** Quotient of integers rounded up; the divisor is positive. */
export function ceilDivide(a: bigint, b: bigint): bigint {
  const quotient = a / b;
  return a % b > 0n ? quotient + 1n : quotient;
}

/** Room that the demand takes at the very least: the sum of all sizes, and of each set-up once. */
export function totalSize(problem: Problem): bigint {
  let total = 0n;
  problem.sizes.forEach((size, item) => (total += BigInt(size) * BigInt(problem.demand[item]!)));
  // Each share key pays its set-up once at least.
  for (const setup of problem.setups) total += BigInt(setup);
  return total;
}

/**
 * Material bound: the demand's total length, bought as if sticks could be cut to length, the cheapest per length first.
 *
 * With a credit, a stick of cost c and room C that leaves R costs c - credit R at the very least, that is
 * (c - credit C) plus the credit for the room that is taken. Undefined if all sticks together are too short.
 */
export function materialBound(problem: Problem): number | undefined {
  const credit = BigInt(problem.credit);
  const kinds = problem.kinds.map(({ rooms, cost, limit }) => {
    const room = BigInt(sumOf(rooms));
    return { room, cost: BigInt(cost) - credit * room, limit };
  });
  kinds.sort((a, b) => Number(a.cost * b.room - b.cost * a.room));
  const total = totalSize(problem);
  let left = total;
  let cost = credit * total;
  for (const kind of kinds) {
    // Kinds that earn are used up even when there is nothing left to cut: the bound has to hold for any plan.
    if (left <= 0n && kind.cost >= 0n) break;
    const all = kind.limit === Infinity ? undefined : BigInt(kind.limit) * kind.room;
    if (all !== undefined && (all <= left || kind.cost < 0n)) {
      cost += BigInt(kind.limit) * kind.cost;
      left -= all;
    } else {
      return Number(cost + ceilDivide(left * kind.cost, kind.room));
    }
  }
  return left > 0n ? undefined : Number(cost);
}
