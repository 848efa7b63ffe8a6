import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sawPlan, frameGeometry, stockJob, type FrameGeometry, type RoughMethod } from "miterwright/frame";
import type { EndCut } from "miterwright/miter";
import { miterSaw, tableSaw } from "miterwright/saw";
import { fitStock } from "miterwright/stock";
import { briefs, plain } from "./briefs.js";

/** Wood along every line of the section, from here to there. */
type Wood = readonly (readonly [from: number, to: number])[];

/** Where a cut crosses every line of the section, its crossing of the longest line at `at`. */
function cutAt(frame: FrameGeometry, cut: EndCut, at: number): number[] {
  const { outline } = frame.profile!;
  const { along, across, through } = cut.plane;
  const reaches = outline.map(({ x, y }) => -(across * x + through * y) / along);
  const longest = (along > 0 ? Math.max : Math.min)(...reaches);
  return reaches.map((reach) => at + reach - longest);
}

const parted = (from: readonly number[], to: readonly number[]): Wood => from.map((here, line) => [here, to[line]!]);
const shifted = (line: readonly number[], by: number): number[] => line.map((at) => at + by);

/** How pieces come off a stick, with the kerf taken square to each cut. */
interface Shop {
  readonly frame: FrameGeometry;
  readonly kerf: number;
  readonly stick: number;
  readonly length: number;
}

/** Cut on the stick: the end, then a length further in the start, from the stick's far end on. */
function cutOnTheStick({ frame, kerf, stick, length }: Shop): { wood: Wood; end: number }[] {
  const { start, end } = frame.pieces[0];
  const pieces: { wood: Wood; end: number }[] = [];
  let left = frame.profile!.outline.map(() => stick);
  for (;;) {
    const shape = cutAt(frame, end, 0);
    const at = Math.min(...left.map((to, line) => to - shape[line]!));
    const starts = cutAt(frame, start, at - length);
    if (Math.min(...starts) < -1e-7) return pieces;
    pieces.push({ wood: parted(starts, shifted(shape, at)), end: at });
    left = shifted(starts, -kerf / Math.abs(start.plane.along));
  }
}

/** Crosscut square. */
function crosscut({ frame, kerf, stick, length }: Shop): { wood: Wood; end: number }[] {
  const pieces: { wood: Wood; end: number }[] = [];
  for (let to = stick; to - length > -1e-7; to -= length + kerf) {
    pieces.push({ wood: frame.profile!.outline.map(() => [to - length, to]), end: to });
  }
  return pieces;
}

/** Parted with the finished cut of the end, the length marked along the longest line from the stick's near end. */
function partMitered({ frame, kerf, stick, length }: Shop): { wood: Wood; end: number }[] {
  const { end } = frame.pieces[0];
  const pieces: { wood: Wood; end: number }[] = [];
  let from = frame.profile!.outline.map(() => 0);
  const shape = cutAt(frame, end, 0);
  const longest = shape.indexOf(Math.max(...shape));
  for (;;) {
    const at = from[longest]! + length;
    const ends = shifted(shape, at);
    if (Math.max(...ends) > stick + 1e-7) return pieces;
    pieces.push({ wood: parted(from, ends), end: at });
    from = shifted(ends, kerf / end.plane.along);
  }
}

const PARTING = { none: cutOnTheStick, square: crosscut, mitered: partMitered };

const roughs = fc.constantFrom<RoughMethod>(
  { method: "none" },
  { method: "square", allowance: 9 },
  { method: "mitered", allowance: 9 },
);

describe("roughs, taken off a stick in space", () => {
  test("come as many as the stock job says, hold the finished piece with its allowance, and no more would come", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(
        briefs,
        roughs,
        fc.double({ min: 0.5, max: 5, noNaN: true }),
        fc.integer({ min: 1, max: 6 }),
        (brief, rough, kerf, count) => {
          const frame = frameGeometry(brief);
          const plan = sawPlan(frame, { rough, kerf });
          const { start, end, longest } = frame.pieces[0];
          const stick = count * plan.rough.pitch - plan.rough.kerfAlong;
          const shop = { frame, kerf, stick, length: plan.rough.length };
          const pieces = PARTING[rough.method](shop);
          expect(pieces).toHaveLength(count);
          expect(PARTING[rough.method]({ ...shop, stick: stick - 1e-3 })).toHaveLength(count - 1);
          seen.add(rough.method);
          const spare = rough.method === "none" ? 0 : rough.allowance;
          for (const { wood, end: at } of pieces) {
            // The finished piece lies inside the rough one along every line, with the allowance to spare where an end is cut again.
            const to = rough.method === "square" ? at - spare : at;
            const ends = cutAt(frame, end, to);
            const starts = cutAt(frame, start, to - longest.length);
            for (const [line, [from, until]] of wood.entries()) {
              expect(starts[line]! - from).toBeGreaterThanOrEqual(spare - 1e-6);
              expect(until - ends[line]!).toBeGreaterThanOrEqual((rough.method === "square" ? spare : 0) - 1e-6);
            }
          }
          // Nothing of a piece is in another or in a cut.
          const sorted = [...pieces].sort((a, b) => a.end - b.end);
          const lost = rough.method === "square" ? kerf : kerf / Math.abs(end.plane.along);
          for (const [index, { wood }] of sorted.entries()) {
            const next = sorted[index + 1]?.wood;
            for (const [line, [, until]] of wood.entries()) {
              if (next !== undefined) expect(next[line]![0] - until).toBeGreaterThanOrEqual(lost - 1e-6);
            }
          }
        },
      ),
    );
    expect([...seen].sort()).toEqual(["mitered", "none", "square"]);
  });

  test("fit into the sticks that the job allows, its trim at both ends", () => {
    const frame = frameGeometry({
      sides: 6,
      slope: 30,
      profile: plain,
      opening: { side: 300 },
    });
    for (const rough of [
      { method: "none" },
      { method: "square", allowance: 9 },
      { method: "mitered", allowance: 9 },
    ] as const) {
      const { rough: piece } = sawPlan(frame, { rough, kerf: 3 });
      const exact = 6 * piece.pitch - piece.kerfAlong + 2 * piece.kerfAlong;
      const enough = stockJob(frame, { kerf: 3, rough, sticks: [{ id: "a", length: exact + 2 }] });
      const short = stockJob(frame, { kerf: 3, rough, sticks: [{ id: "a", length: exact - 2 }] });
      const sticksOf = (job: typeof enough): number =>
        fitStock(job, { stepLimit: 1e6 }).layouts.reduce((sum, { times }) => sum + times, 0);
      expect([sticksOf(enough), sticksOf(short)]).toEqual([1, 2]);
    }
  });
});

describe("the steps of each kind of rough", () => {
  const frame = frameGeometry({
    sides: 6,
    slope: 30,
    profile: plain,
    opening: { side: 400 },
  });
  const longest = frame.pieces[0].longest.length;

  test.each<[RoughMethod, string[], (number | null)[], string]>([
    [{ method: "none" }, ["first-end", "second-end"], [null, longest], "piece-by-piece"],
    [
      { method: "square", allowance: 9 },
      ["crosscut", "first-end", "second-end"],
      [longest + 18, null, longest],
      "step-by-step",
    ],
    [{ method: "mitered", allowance: 9 }, ["first-end", "second-end"], [longest + 9, longest], "step-by-step"],
  ])("%j: which, in which order, to which lengths, on both kinds of saw", (rough, kinds, lengths, order) => {
    for (const saw of [tableSaw(), miterSaw()]) {
      const { operations, order: planned } = sawPlan(frame, { rough, saw });
      expect(operations.map(({ kind }) => kind)).toEqual(kinds);
      expect(operations.map(({ step }) => step)).toEqual(kinds.map((_, index) => index + 1));
      expect(operations.map(({ measure }) => measure?.length ?? null)).toEqual(lengths);
      expect(planned).toBe(order);
      expect(operations.map(({ move }) => move !== null)).toEqual(kinds.map((kind) => kind === "second-end"));
    }
  });
});
