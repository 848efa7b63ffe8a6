import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  planFrame,
  shopOrder,
  type FramePlan,
  type Operation,
  type RoughMethod,
  type ShopFrame,
  type ShopGroup,
  type ShopOrder,
} from "miterwright/frame";
import type { Lay } from "miterwright/miter";
import { miterSaw, tableSaw, type Saw } from "miterwright/saw";
import { deepFreeze, plain, rabbeted, throughJson } from "./briefs.js";

const square: RoughMethod = { method: "square", allowance: 12 };
const mitered: RoughMethod = { method: "mitered", allowance: 12 };

const planned = new Map<string, FramePlan>();

/** A frame's plan; equal ones are planned once. */
function frame(sides: number, slope: number, rough: RoughMethod, saw: Saw = tableSaw(), lay?: Lay): FramePlan {
  const key = JSON.stringify([sides, slope, rough, saw, lay]);
  const common = { sides, slope, rough, saw, profile: plain, opening: { side: 400 } };
  const plan = planned.get(key) ?? planFrame(lay === undefined ? common : { ...common, lay });
  planned.set(key, plan);
  return plan;
}

/** Every group in the order in which a maker comes to it. */
function walk(order: ShopOrder): ShopGroup[] {
  return order.rounds.flatMap(({ times, groups }) => Array.from({ length: times }, () => groups).flat());
}

/** What a saw shows for an operation, as text, written from the plan alone. */
function shows({ placement: { miter, bevel } }: Operation): { miter: string; bevel: string } {
  const text = (degrees: number, toward: string): string => `${degrees.toFixed(7)} ${toward}`;
  return { miter: text(miter.degrees, miter.toward), bevel: text(bevel.degrees, bevel.toward) };
}

interface Cost {
  readonly settings: number;
  readonly bevel: number;
  readonly miter: number;
}

const weigh = ({ settings, bevel, miter }: Cost): number => (settings * 1000 + bevel) * 1000 + miter;

/**
 * The cheapest order of all, by trying every setting at every point and keeping the cheapest way to each state (Dijkstra over what is done of every
 * frame and what the saw shows). It knows no alternation, no block and no round.
 */
function cheapest(frames: readonly ShopFrame[]): Cost {
  const chains = frames.map(({ plan, frames: count = 1 }) => {
    const { operations, order } = plan.sawing;
    const ends = operations.filter(({ kind }) => kind !== "crosscut").map(shows);
    const rounds = order === "step-by-step" ? 1 : operations[0]!.times * count;
    return Array.from({ length: rounds }, () => ends).flat();
  });
  const hasCrosscuts = frames.some(({ plan }) => plan.sawing.operations[0]?.kind === "crosscut");
  const start = chains.map(() => 0);
  const before = hasCrosscuts ? { miter: "0.0000000 none", bevel: "0.0000000 none" } : null;
  interface State {
    readonly done: readonly number[];
    readonly shown: { miter: string; bevel: string } | null;
    readonly cost: Cost;
  }
  const keyOf = ({ done, shown }: State): string => `${done.join()} ${shown?.miter} ${shown?.bevel}`;
  let frontier: State[] = [
    { done: start, shown: before, cost: { settings: hasCrosscuts ? 1 : 0, bevel: 0, miter: 0 } },
  ];
  const best = new Map<string, number>();
  let least: Cost | null = null;
  while (frontier.length > 0) {
    const next = new Map<string, State>();
    for (const { done, shown, cost } of frontier) {
      if (done.every((count, index) => count === chains[index]!.length)) {
        if (least === null || weigh(cost) < weigh(least)) least = cost;
        continue;
      }
      const wanted = done.flatMap((count, index) => chains[index]![count] ?? []);
      for (const setting of new Map(wanted.map((item) => [`${item.miter}/${item.bevel}`, item])).values()) {
        const after = done.map((count, index) => {
          let reached = count;
          for (let here = chains[index]![reached]; here !== undefined; here = chains[index]![reached]) {
            if (here.miter !== setting.miter || here.bevel !== setting.bevel) break;
            reached += 1;
          }
          return reached;
        });
        const state: State = {
          done: after,
          shown: setting,
          cost: {
            settings: cost.settings + 1,
            bevel: cost.bevel + Number(shown !== null && shown.bevel !== setting.bevel),
            miter: cost.miter + Number(shown !== null && shown.miter !== setting.miter),
          },
        };
        const key = keyOf(state);
        if (weigh(state.cost) < (best.get(key) ?? Infinity)) {
          best.set(key, weigh(state.cost));
          next.set(key, state);
        }
      }
    }
    frontier = [...next.values()];
  }
  return least!;
}

/** The same three numbers of an order, counted from its groups. */
function costOf(order: ShopOrder): Cost {
  const groups = walk(order);
  const shown = groups.map(({ miter, bevel }) => ({
    miter: `${miter.degrees.toFixed(7)} ${miter.toward}`,
    bevel: `${bevel.degrees.toFixed(7)} ${bevel.toward}`,
  }));
  const differs = (scale: "miter" | "bevel", index: number): boolean =>
    index > 0 && shown[index]![scale] !== shown[index - 1]![scale];
  const at = shown.map((_, index) => index);
  return {
    settings: at.filter((index) => index === 0 || differs("miter", index) || differs("bevel", index)).length,
    bevel: at.filter((index) => differs("bevel", index)).length,
    miter: at.filter((index) => differs("miter", index)).length,
  };
}

/** Does the work of an order with counters for every frame, and throws where a step comes before the one that it needs. */
function doTheWork(order: ShopOrder, frames: readonly ShopFrame[]): void {
  const done = new Map(frames.map(({ name }) => [name, { crosscut: 0, "first-end": 0, "second-end": 0 }]));
  const planOf = new Map(frames.map((item) => [item.name, item]));
  for (const { cuts, miter, bevel, down } of walk(order)) {
    for (const { name, kind, times, step, length } of cuts) {
      const counts = done.get(name)!;
      const { sawing } = planOf.get(name)!.plan;
      const own = sawing.operations.find((operation) => operation.step === step)!;
      expect(own.kind).toBe(kind);
      expect(length).toBe(own.measure?.length ?? null);
      expect(down).toBe(own.placement.down);
      expect([miter.toward, bevel.toward]).toEqual([own.placement.miter.toward, own.placement.bevel.toward]);
      expect(miter.degrees).toBeCloseTo(own.placement.miter.degrees, 8);
      expect(bevel.degrees).toBeCloseTo(own.placement.bevel.degrees, 8);
      counts[kind] += times;
      if (kind === "first-end" && sawing.operations[0]!.kind === "crosscut") {
        expect(counts["first-end"]).toBeLessThanOrEqual(counts.crosscut);
      }
      if (kind === "second-end") expect(counts["second-end"]).toBeLessThanOrEqual(counts["first-end"]);
      const bothHere = cuts.filter((cut) => cut.name === name).length === 2;
      if (sawing.order === "piece-by-piece" && !bothHere) {
        expect(counts["first-end"] - counts["second-end"]).toBeLessThanOrEqual(1);
      }
    }
  }
  for (const { name, plan, frames: count = 1 } of frames) {
    const { operations } = plan.sawing;
    const counts = done.get(name)!;
    for (const { kind, times } of operations) expect(counts[kind]).toBe(times * count);
    if (operations.length === 0) expect(order.left.map((item) => item.name)).toContain(name);
  }
}

const saws = [tableSaw(), miterSaw(), tableSaw({ bevel: { left: 0, right: 45, reads: "from-vertical", step: 0.5 } })];

/** Up to four frames on one saw, small enough to try everything, with settings that often meet. */
const shops = fc
  .record({
    saw: fc.constantFrom(...saws),
    kinds: fc.array(
      fc.record({
        sides: fc.constantFrom(3, 4, 4, 6, 8),
        slope: fc.constantFrom(0, 30, -30, 30, 90, 45),
        lay: fc.constantFrom<Lay | undefined>(
          undefined,
          "flat",
          "propped",
          "sight-edge-down",
          "outer-edge-down",
          "face-down",
        ),
        rough: fc.constantFrom<RoughMethod>({ method: "none" }, square, square, mitered),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map(({ saw, kinds }) =>
    kinds.map(({ sides, slope, lay, rough }, index) => ({
      name: `frame ${index}`,
      plan: frame(sides, slope, rough, saw, lay),
    })),
  )
  .filter(
    (frames) =>
      frames.reduce((states, { plan }) => states * (plan.sawing.order === "piece-by-piece" ? 13 : 3), 1) < 3000,
  );

/** Frames that need the same two settings the one way round and the other, for different numbers of pieces. */
const opposites = fc
  .record({
    saw: fc.constantFrom(...saws),
    kinds: fc.array(
      fc.record({
        sides: fc.constantFrom(3, 4),
        slope: fc.constantFrom(30, -30),
        lay: fc.constantFrom<Lay>("sight-edge-down", "outer-edge-down"),
        rough: fc.constantFrom<RoughMethod>({ method: "none" }, mitered),
      }),
      { minLength: 2, maxLength: 3 },
    ),
  })
  .map(({ saw, kinds }) =>
    kinds.map(({ sides, slope, lay, rough }, index) => ({
      name: `frame ${index}`,
      plan: frame(sides, slope, rough, saw, lay),
    })),
  );

describe("shopOrder against trying every order", () => {
  test("makes the fewest settings, then the fewest changes of bevel", () => {
    let shared = 0;
    fc.assert(
      fc.property(fc.oneof(shops, opposites), (frames) => {
        const order = shopOrder(frames);
        const possible = frames.filter(({ plan }) => plan.sawing.lay !== null);
        if (possible.length === 0) return;
        const { settings, bevel, miter } = costOf(order);
        const least = cheapest(possible);
        expect({ settings, bevel }).toEqual({ settings: least.settings, bevel: least.bevel });
        expect(order.changes).toMatchObject({ bevel, miter });
        if (settings < possible.reduce((sum, { plan }) => sum + plan.sawing.operations.length, 0)) shared += 1;
      }),
      { numRuns: 400 },
    );
    expect(shared).toBeGreaterThan(20);
  });

  test("then the fewest swings of the miter, where no other order of whole blocks could have fewer", () => {
    let tried = 0;
    fc.assert(
      fc.property(shops, (frames) => {
        // Rounds and blades that cross over can be nested in each other, which would leave the one frame half cut while another is begun.
        const plain = frames.filter(({ plan: { sawing } }) => {
          return sawing.order === "step-by-step" && sawing.operations.at(-1)?.move === "flip-end-for-end";
        });
        if (plain.length === 0) return;
        tried += 1;
        expect(costOf(shopOrder(plain))).toEqual(cheapest(plain));
      }),
      { numRuns: 300 },
    );
    expect(tried).toBeGreaterThan(100);
  });

  test("keeps every frame's own order of steps and loses no cut", () => {
    fc.assert(
      fc.property(fc.oneof(shops, opposites), (frames) => {
        doTheWork(shopOrder(frames), frames);
      }),
    );
  });
});

/** Short texts of an order's groups: setting, then the frames with their kinds of cut. */
function inShort(order: ShopOrder): string[] {
  return order.rounds.flatMap(({ times, groups }) =>
    groups.map(({ miter, bevel, cuts }) => {
      const angles = [miter, bevel].map(({ degrees, toward }) => `${Number(degrees.toFixed(2))} ${toward}`).join(", ");
      return `${times} x ${angles}: ${cuts.map((cut) => `${cut.name} ${cut.kind} ${cut.times}`).join("; ")}`;
    }),
  );
}

describe("the groups", () => {
  const tray = frame(8, 30, square);
  const small = planFrame({ sides: 8, slope: 30, rough: square, profile: rabbeted, opening: { side: 150 } });
  const picture = frame(8, 0, mitered);

  test("say which frames, how many cuts, at which lengths, and what changes", () => {
    const order = shopOrder([
      { name: "small", plan: small, frames: 3 },
      { name: "picture", plan: picture },
      { name: "tray", plan: tray },
    ]);
    expect(inShort(order)).toEqual([
      "1 x 0 none, 0 none: tray crosscut 8; small crosscut 24",
      "1 x 22.5 left, 0 none: picture first-end 8",
      "1 x 22.5 right, 0 none: picture second-end 8",
      "1 x 19.73 right, 11.03 left: small first-end 24; tray first-end 8",
      "1 x 19.73 left, 11.03 left: tray second-end 8; small second-end 24",
    ]);
    expect(order.rounds).toHaveLength(1);
    expect(order.rounds[0]!.groups.map(({ changes }) => changes)).toEqual([
      ["saw", "bevel", "miter", "lay"],
      ["miter", "lay"],
      ["miter"],
      ["bevel", "miter", "lay"],
      ["miter"],
    ]);
    expect(order.changes).toEqual({ bevel: 1, miter: 4, lay: 2 });
    const last = order.rounds[0]!.groups[4]!.cuts;
    expect(last.map(({ length }) => length)).toEqual([
      tray.sawing.operations[2]!.measure!.length,
      small.sawing.operations[2]!.measure!.length,
    ]);
    expect(last[0]!.stop).toEqual(tray.sawing.operations[2]!.stop);
    expect(last[0]).toMatchObject({
      arris: "outerBack",
      atFence: "sight-edge",
      kept: "right",
      move: "flip-end-for-end",
    });
  });

  test("go round and round for pieces that are cut on the stick, together as long as they can", () => {
    const order = shopOrder([
      { name: "six", plan: frame(6, 30, { method: "none" }) },
      { name: "twelve", plan: frame(6, 30, { method: "none" }), frames: 2 },
      { name: "roughs", plan: frame(6, 30, mitered) },
    ]);
    expect(inShort(order)).toEqual([
      "1 x 26.57 right, 14.48 left: six first-end 1; twelve first-end 1; roughs first-end 6",
      "1 x 26.57 left, 14.48 left: six second-end 1; twelve second-end 1; roughs second-end 6",
      "5 x 26.57 right, 14.48 left: six first-end 1; twelve first-end 1",
      "5 x 26.57 left, 14.48 left: six second-end 1; twelve second-end 1",
      "6 x 26.57 right, 14.48 left: twelve first-end 1",
      "6 x 26.57 left, 14.48 left: twelve second-end 1",
    ]);
    expect(order.rounds.map(({ again }) => again)).toEqual([[], ["miter"], ["miter"]]);
    expect(order.changes).toEqual({ bevel: 0, miter: 23, lay: 0 });
  });

  test("make one of two opposite orders wait where frames swing the miter the other way round", () => {
    const order = shopOrder([
      { name: "tray", plan: frame(4, 30, mitered, tableSaw(), "sight-edge-down") },
      { name: "reverse", plan: frame(4, -30, mitered, tableSaw(), "sight-edge-down") },
    ]);
    expect(inShort(order)).toHaveLength(3);
    expect(order.changes).toEqual({ bevel: 0, miter: 2, lay: 0 });
  });

  test("tilt the blade over once for all frames, on a saw whose blade leans both ways", () => {
    const saw = miterSaw();
    const order = shopOrder(
      [4, 6, 8].map((sides) => ({ name: `${sides}`, plan: frame(sides, 90, mitered, saw, "flat") })),
    );
    expect(order.changes).toEqual({ bevel: 5, miter: 0, lay: 0 });
  });

  test("lay sticks that lie alike one after the other, and keep the scales for both", () => {
    const order = shopOrder([
      { name: "flat", plan: frame(6, 0, mitered) },
      { name: "propped", plan: frame(6, 35, mitered, tableSaw(), "propped") },
    ]);
    expect(order.rounds.flatMap(({ groups }) => groups).map(({ cradled, changes }) => [cradled, changes])).toEqual([
      [false, ["saw", "bevel", "miter", "lay"]],
      [true, ["lay"]],
      [true, ["miter"]],
      [false, ["lay"]],
    ]);
  });

  test("share a setting within the tolerance, set to the middle, and no more", () => {
    const frames = [30, 30.4, 31].map((slope) => ({ name: `${slope}`, plan: frame(6, slope, mitered) }));
    expect(inShort(shopOrder(frames))).toHaveLength(6);
    const order = shopOrder(frames, { tolerance: 0.25 });
    const groups = order.rounds.flatMap((round) => round.groups);
    expect(groups.map(({ cuts }) => cuts.map(({ name }) => name))).toEqual([
      ["30", "30.4"],
      ["30", "30.4"],
      ["31"],
      ["31"],
    ]);
    const [first] = groups;
    const bevels = [0, 1].map((index) => frames[index]!.plan.sawing.operations[0]!.placement.bevel.degrees);
    expect(first!.bevel.degrees).toBeCloseTo((bevels[0]! + bevels[1]!) / 2, 12);
    expect(first!.cuts.map(({ bevelOff }) => bevelOff)).toEqual([
      expect.closeTo((bevels[1]! - bevels[0]!) / 2, 12),
      expect.closeTo((bevels[1]! - bevels[0]!) / 2, 12),
    ]);
    expect(first!.bevel.reading).toBe(first!.bevel.degrees);
  });

  test("never trade a square cut or an upright blade for a little lean", () => {
    const order = shopOrder(
      [
        { name: "flat", plan: frame(6, 0, square) },
        { name: "nearly", plan: frame(6, 2, square) },
      ],
      { tolerance: 5 },
    );
    expect(order.rounds.flatMap(({ groups }) => groups).map(({ bevel }) => bevel.toward)).toEqual([
      "none",
      "none",
      "none",
      // The tray is crosscut as it will be mitered, on its face.
      "none",
      "left",
      "left",
    ]);
  });
});

describe("several saws, and frames that none can cut", () => {
  test("are kept apart, each saw beginning anew, and reported", () => {
    const other = tableSaw({ miter: { left: 60, right: 60, reads: "from-fence", step: 1 } });
    const order = shopOrder([
      { name: "one", plan: frame(6, 30, mitered) },
      { name: "steep", plan: frame(3, 90, mitered, tableSaw(), "flat") },
      { name: "two", plan: frame(6, 30, mitered, other) },
      { name: "three", plan: frame(6, 30, mitered) },
    ]);
    expect(order.saws).toEqual([tableSaw(), other]);
    expect(order.left).toMatchObject([{ obstacles: [{ code: "bevel-range-left" }] }]);
    expect(order.left).toEqual([
      {
        name: "steep",
        obstacles: frame(3, 90, mitered, tableSaw(), "flat").sawing.lays.find(({ lay }) => lay === "flat")!.obstacles,
      },
    ]);
    const groups = order.rounds.flatMap((round) => round.groups);
    expect(groups.map(({ saw, cuts }) => [saw, cuts.map(({ name }) => name)])).toEqual([
      [0, ["one", "three"]],
      [0, ["one", "three"]],
      [1, ["two"]],
      [1, ["two"]],
    ]);
    expect(groups[2]!.changes).toEqual(["saw", "bevel", "miter", "lay"]);
    expect(groups[2]!.miter.reading).toBeCloseTo(90 - 26.565051177078, 10);
    expect(order.changes).toEqual({ bevel: 0, miter: 2, lay: 0 });
  });

  test("no frame is no work", () => {
    expect(shopOrder([])).toEqual({ saws: [], rounds: [], changes: { bevel: 0, miter: 0, lay: 0 }, left: [] });
  });
});

test("a hundred frames are ordered with every cut kept", () => {
  const roughs: readonly RoughMethod[] = [{ method: "none" }, square, mitered];
  const frames = Array.from({ length: 100 }, (_, index) => ({
    name: `frame ${index}`,
    plan: frame(3 + (index % 9), (index % 4) * 20, roughs[index % 3]!, saws[index % 2]),
    frames: 1 + (index % 5),
  }));
  doTheWork(shopOrder(frames), frames);
});

test("plans from JSON give the same order, and stay as they were", () => {
  const frames = deepFreeze([
    { name: "one", plan: frame(6, 30, mitered) },
    { name: "two", plan: frame(5, 20, square), frames: 2 },
  ]);
  expect(shopOrder(throughJson(frames))).toEqual(shopOrder(frames));
});

describe("bad input", () => {
  const plan = frame(6, 30, square);
  const { sawing } = plan;
  const withFirst = (changes: object): unknown => ({
    sawing: { ...sawing, operations: [{ ...sawing.operations[0], ...changes }, ...sawing.operations.slice(1)] },
  });

  test.each<[unknown, string]>([
    [{}, "Expected `plans` to be an array of frames with their plans, got an object"],
    [[5], "Expected `plans[0]` to be an object, got 5 (number)"],
    [[{ plan }], "Expected `plans[0].name` to be a string that is not empty, got undefined"],
    [[{ name: "a" }], "Expected `plans[0].plan` to be an object, got undefined"],
    [[{ name: "a", plan: {} }], "Expected `plans[0].plan.sawing` to be an object, got undefined"],
    [[{ name: "a", plan, frames: 0 }], "Expected `plans[0].frames` to be an integer from 1 to 1000, got 0 (number)"],
    [
      [
        { name: "a", plan },
        { name: "a", plan },
      ],
      'Expected `plans[1].name` to be a new name, got "a" again',
    ],
    [
      [{ name: "a", plan: { sawing: { ...sawing, operations: sawing.operations.slice(0, 2) } } }],
      'Expected `plans[0].plan.sawing.operations` to cut both ends, got no "second-end"',
    ],
    [
      [{ name: "a", plan: withFirst({ kind: "plane" }) }],
      'Expected `plans[0].plan.sawing.operations[0].kind` to be one of "crosscut", "first-end", "second-end", got "plane" (string)',
    ],
    [
      [{ name: "a", plan: withFirst({ placement: sawing.operations[1]!.placement }) }],
      'Expected `plans[0].plan.sawing.operations[0].placement.miter.toward` to be one of "none", got "right" (string)',
    ],
  ])("%#", (plans, message) => {
    expect(() => shopOrder(plans as never)).toThrow(message);
  });

  test("options", () => {
    expect(() => shopOrder([], { tolerance: 6 })).toThrow(
      "Expected `tolerance` to be degrees from 0 to 5, got 6 (number)",
    );
  });
});
