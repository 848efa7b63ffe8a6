import type { Filling, Knapsack } from "./knapsack.js";

/** Most entries of a table: it is a table of 16-bit counts. */
export const MOST_TABLE_ENTRIES: number = 8e6;

/**
 * Entries that the table of a knapsack would have.
 *
 * @param knapsack - the knapsack
 * @returns their number
 */
export function tableEntries(knapsack: Knapsack): number {
  const { profits, most, sizes, room } = knapsack;
  let items = 0;
  for (let item = 0; item < profits.length; item++) {
    if (profits[item]! > 0 && most[item]! > 0 && sizes[item]! <= room) items++;
  }
  return items * (room + 1);
}

/**
 * Solves a bounded knapsack without share keys by dynamic programming over the room.
 *
 * The fallback for small items, of which branch and bound tries too many. Per item, the rooms of one remainder class are
 * walked up with a queue of the candidates that the item's limit still allows, so the time is that of the table.
 *
 * @param knapsack - the knapsack; its `keys` are all -1 and its sizes positive
 * @returns the best filling
 */
export function fillRoomByTable(knapsack: Knapsack): Filling {
  const { profits, sizes, most, room, above } = knapsack;
  const items: number[] = [];
  for (let item = 0; item < sizes.length; item++) {
    if (profits[item]! > 0 && most[item]! > 0 && sizes[item]! <= room) items.push(item);
  }
  const width = room + 1;
  let values = new Float64Array(width);
  let next = new Float64Array(width);
  const taken = new Uint16Array(width * items.length);
  const queue = new Int32Array(width);
  items.forEach((item, row) => {
    const size = sizes[item]!;
    const profit = profits[item]!;
    const limit = Math.min(most[item]!, 65535);
    for (let rest = 0; rest < size && rest < width; rest++) {
      // Candidates in the queue have falling values of values[c] - profit * (number of the class member).
      let head = 0;
      let tail = 0;
      for (let c = rest, k = 0; c < width; c += size, k++) {
        const own = values[c]! - profit * k;
        while (tail > head && values[rest + queue[tail - 1]! * size]! - profit * queue[tail - 1]! <= own) tail--;
        queue[tail++] = k;
        if (queue[head]! < k - limit) head++;
        const from = queue[head]!;
        next[c] = values[rest + from * size]! + profit * (k - from);
        taken[row * width + c] = k - from;
      }
    }
    [values, next] = [next, values];
  });
  const branches = width * items.length;
  if (!(values[room]! > above)) return { value: above, exact: true, found: [], branches };
  const filling: [number, number][] = [];
  let left = room;
  for (let row = items.length - 1; row >= 0; row--) {
    const count = taken[row * width + left]!;
    if (count === 0) continue;
    filling.push([items[row]!, count]);
    left -= count * sizes[items[row]!]!;
  }
  return { value: values[room]!, exact: true, found: [filling], branches };
}
