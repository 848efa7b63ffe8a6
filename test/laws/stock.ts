import fc from "fast-check";
import type { StockJob, StockPiece, StockStick } from "miterwright/stock";

/** One piece or sequence of a job, as brute force sees it. */
interface Unit {
  readonly length: number;
  readonly key: string | undefined;
  readonly saving: number;
}

function unitsOf(job: StockJob): Unit[] {
  return job.pieces.flatMap((piece) => {
    const parts = piece.sequence ?? [piece.length];
    const length = parts.reduce((sum, part) => sum + part, (parts.length - 1) * (job.kerf ?? 0));
    const unit = { length, key: piece.share?.key, saving: piece.share?.saving ?? 0 };
    return Array.from({ length: piece.count ?? 1 }, () => unit);
  });
}

/** From the start of the first unit to the end of the last, with the neighbors of one key side by side. */
function lengthOf(units: readonly Unit[], kerf: number): number {
  let length = 0;
  const keys = new Set<string>();
  units.forEach((unit, k) => {
    length += unit.length + (k > 0 ? kerf : 0);
    if (unit.key === undefined) return;
    if (keys.has(unit.key)) length -= unit.saving;
    keys.add(unit.key);
  });
  return length;
}

/** A clear stretch, and where an offcut in it ends: the trim's own cut is not made behind an offcut. */
interface Clear {
  readonly start: number;
  readonly end: number;
  readonly reach: number;
}

function clearOf(stick: StockStick, job: StockJob): Clear[] {
  const trim = job.trim ?? 0;
  const [first, last] = typeof trim === "number" ? [trim, trim] : [trim.start, trim.end];
  const blocked = (at: number): boolean => (stick.defects ?? []).some(({ start, end }) => at > start && at < end);
  // Integer jobs: a stretch is clear if the middles of all its unit steps are.
  const clear: { start: number; end: number }[] = [];
  for (let at = first; at < stick.length - last; at++) {
    if (blocked(at + 0.5)) continue;
    const previous = clear.at(-1);
    if (previous?.end === at && !(stick.defects ?? []).some(({ start, end }) => start === at && end === at))
      previous.end++;
    else clear.push({ start: at, end: at + 1 });
  }
  // A defect counts as one kerf wide at least, from its start.
  const apart: { start: number; end: number }[] = [];
  for (const { start, end } of clear) {
    const previous = apart.at(-1);
    const from = previous === undefined ? start : Math.max(start, previous.end + (job.kerf ?? 0));
    if (end > from) apart.push({ start: from, end });
  }
  const spared = Math.min(last, job.kerf ?? 0);
  return apart.map(({ start, end }) => {
    let reach = end;
    // It grows over the spared part of the trim, unless a defect is in the way.
    if (end === stick.length - last) {
      while (
        reach < end + spared &&
        !blocked(reach + 0.5) &&
        !(stick.defects ?? []).some((zone) => zone.start === reach)
      )
        reach++;
    }
    return { start, end, reach };
  });
}

/** Least cost of cutting all of the units from one stick, trying every way to spread them over its clear stretches. */
function stickCost(units: readonly Unit[], stick: StockStick, job: StockJob): number {
  const kerf = job.kerf ?? 0;
  const clear = clearOf(stick, job);
  const keep = job.keep ?? 0;
  const groups: Unit[][] = clear.map(() => []);
  let best = Infinity;
  const spread = (k: number): void => {
    const unit = units[k];
    if (unit === undefined) {
      let cost = stick.cost ?? stick.length;
      for (const [room, group] of groups.entries()) {
        const stretch = clear[room]!;
        const taken = lengthOf(group, kerf);
        const space = stretch.end - stretch.start;
        if (taken > space) return;
        const open = stretch.reach - stretch.start;
        const offcut = group.length === 0 ? open : open - taken - kerf;
        if (offcut > 0 && offcut >= keep) cost -= (job.credit ?? 0) * offcut;
      }
      best = Math.min(best, cost);
      return;
    }
    for (const group of groups) {
      group.push(unit);
      spread(k + 1);
      group.pop();
    }
  };
  spread(0);
  return best;
}

/**
 * The least cost of a small job with integer lengths, by trying everything: every way to part the pieces into sticks.
 *
 * It shares no code and no idea with the library: no effective lengths, no patterns, no bounds.
 *
 * @param job - a job of nine pieces or fewer
 * @returns the least cost, or undefined if no plan makes every piece
 */
export function cheapestByForce(job: StockJob): number | undefined {
  const units = unitsOf(job);
  const costs = job.sticks.map((stick) => {
    const table = new Map<number, number>();
    for (let set = 1; set < 1 << units.length; set++) {
      const cost = stickCost(
        units.filter((_, k) => (set >> k) & 1),
        stick,
        job,
      );
      if (cost < Infinity) table.set(set, cost);
    }
    return table;
  });
  const limits = job.sticks.map(
    ({ count, defects }) => count ?? (defects === undefined || defects.length === 0 ? Infinity : 1),
  );
  const memo = new Map<string, number>();
  const solve = (rest: number, left: readonly number[]): number => {
    if (rest === 0) return 0;
    const name = `${rest} ${left.join(" ")}`;
    const known = memo.get(name);
    if (known !== undefined) return known;
    const lowest = rest & -rest;
    let best = Infinity;
    // Every part that holds the first unit which is still to be placed.
    for (let part = rest; part > 0; part = (part - 1) & rest) {
      if ((part & lowest) === 0) continue;
      for (const [k, table] of costs.entries()) {
        const cost = table.get(part);
        if (cost === undefined || !(left[k]! > 0)) continue;
        const after = left.map((count, n) => (n === k ? count - 1 : count));
        best = Math.min(best, cost + solve(rest ^ part, after));
      }
    }
    memo.set(name, best);
    return best;
  };
  const least = solve((1 << units.length) - 1, limits);
  return least === Infinity ? undefined : least;
}

const stretch = (length: number): fc.Arbitrary<{ start: number; end: number }> =>
  fc
    .tuple(fc.integer({ min: 0, max: length }), fc.integer({ min: 0, max: 4 }))
    .map(([start, size]) => ({ start, end: Math.min(length, start + size) }));

const stick: fc.Arbitrary<Omit<StockStick, "id">> = fc.integer({ min: 12, max: 30 }).chain((length) =>
  fc.record(
    {
      length: fc.constant(length),
      count: fc.integer({ min: 0, max: 3 }),
      cost: fc.integer({ min: 0, max: 40 }),
      defects: fc.array(stretch(length), { maxLength: 2 }),
    },
    { requiredKeys: ["length"] },
  ),
);

const piece: fc.Arbitrary<object> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({ length: fc.integer({ min: 1, max: 11 }), count: fc.integer({ min: 0, max: 3 }) }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      length: fc.integer({ min: 6, max: 11 }),
      count: fc.integer({ min: 1, max: 3 }),
      share: fc.constantFrom({ key: "a", saving: 2 }, { key: "b", saving: 3 }),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ sequence: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 3 }) }),
  },
);

/** How many pieces a job asks for. */
export function piecesOf(job: StockJob): number {
  return job.pieces.reduce((sum, { count }) => sum + (count ?? 1), 0);
}

/** Small jobs of every feature that brute force can solve: integer lengths, nine pieces or fewer. */
export const smallJob: fc.Arbitrary<StockJob> = fc
  .record(
    {
      pieces: fc.array(piece, { minLength: 1, maxLength: 5 }),
      sticks: fc.array(stick, { minLength: 1, maxLength: 3 }),
      kerf: fc.integer({ min: 0, max: 3 }),
      trim: fc.integer({ min: 0, max: 2 }),
      keep: fc.integer({ min: 0, max: 8 }),
      credit: fc.constantFrom(0, 0.25, 0.5, 1),
    },
    { requiredKeys: ["pieces", "sticks"] },
  )
  .map(
    (job) =>
      ({
        ...job,
        pieces: job.pieces.map((entry, k) => ({ id: `p${k}`, ...entry })),
        sticks: job.sticks.map((entry, k) => ({ id: `s${k}`, ...entry })),
      }) as unknown as StockJob,
  )
  .filter((job) => piecesOf(job) <= 9);

/**
 * The same job in another unit of length. Costs stay what they are: a default cost is made explicit, and a credit per length
 * becomes smaller as lengths become larger.
 */
export function scaleJob(job: StockJob, factor: number): StockJob {
  const by = (length: number): number => length * factor;
  const trim = job.trim ?? 0;
  return {
    pieces: job.pieces.map(
      (piece) =>
        ({
          ...piece,
          ...(piece.sequence === undefined ? { length: by(piece.length) } : { sequence: piece.sequence.map(by) }),
          ...(piece.share === undefined ? {} : { share: { ...piece.share, saving: by(piece.share.saving) } }),
        }) as StockPiece,
    ),
    sticks: job.sticks.map((stick) => ({
      ...stick,
      length: by(stick.length),
      cost: stick.cost ?? stick.length,
      ...(stick.defects === undefined
        ? {}
        : { defects: stick.defects.map(({ start, end }) => ({ start: by(start), end: by(end) })) }),
    })),
    kerf: by(job.kerf ?? 0),
    trim: typeof trim === "number" ? by(trim) : { start: by(trim.start), end: by(trim.end) },
    ...(job.keep === undefined ? {} : { keep: by(job.keep) }),
    ...(job.credit === undefined ? {} : { credit: job.credit / factor }),
  };
}
