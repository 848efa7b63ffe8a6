import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawCut } from "miterwright/drawing";
import { sawPlan, frameGeometry, planFrame, type FramePlan } from "miterwright/frame";
import { operationText } from "miterwright/words";
import { miterSaw, placeCut, tableSaw, type Saw } from "miterwright/saw";
import { placeStick } from "../../src/drawing/placed-stick.js";
import { lyingPiece } from "../../src/drawing/lying-piece.js";
import { BATTEN, measuredPlan, plan, TRAY, EXACT, SAY } from "./frames.js";
import { readDrawing, type ReadDrawing } from "./read-drawing.js";
import { fromPlumb } from "./shapes.js";

/** What a person at the saw is told. */
const words = EXACT;
const readStep = (frame: FramePlan, step: number): ReadDrawing => readDrawing(drawCut(frame, { step, ...EXACT }));
const middleOf = (read: ReadDrawing, text: string): { readonly x: number; readonly y: number } => {
  const label = read.texts.find((one) => one.text === text)!;
  return { x: (label.x0 + label.x1) / 2, y: (label.y0 + label.y1) / 2 };
};

/** Frames on saws of both kinds, whose steps keep either part and lean either way. */
const frames: readonly (readonly [string, FramePlan])[] = [
  ["flat, table saw", plan()],
  ["splayed, table saw", plan({ slope: 25 })],
  ["reverse section, table saw", plan({ slope: -25 })],
  ["splayed, miter saw", plan({ slope: 25, saw: miterSaw() })],
  ["reverse section, miter saw", plan({ slope: -25, saw: miterSaw() })],
  ["face down", plan({ slope: 25, lay: "face-down" })],
  ["on its sight edge", plan({ slope: 25, lay: "sight-edge-down" })],
  ["on its outer edge", plan({ slope: 25, lay: "outer-edge-down" })],
  ["roughs, square", plan({ slope: 25, rough: { method: "square", allowance: 20 } })],
  ["level measures", measuredPlan()],
];
const steps = frames.flatMap(([name, frame]) =>
  frame.sawing.operations.map((operation) => ({ name, frame, operation, step: operation.step })),
);

describe.each(steps)("$name, step $step", ({ frame, operation, step }) => {
  const { placement } = operation;
  const read = readStep(frame, step);
  const signOf = (toward: string): number => (toward === "left" ? -1 : toward === "right" ? 1 : 0);

  test("the blade's path runs to the hand and by the angle that is said", () => {
    for (const [from, to] of read.parts("blade-path")) {
      expect(fromPlumb(from!, to!)).toBeCloseTo(signOf(placement.miter.toward) * placement.miter.degrees, 0);
    }
    expect(read.parts("blade-path")).toHaveLength(2);
  });

  test("the blade leans to the hand and by the angle that is said", () => {
    const [from, to] = read.parts("blade")[0]!;
    expect(fromPlumb(from!, to!)).toBeCloseTo(signOf(placement.bevel.toward) * placement.bevel.degrees, 0);
  });

  test("the part that is kept is hatched, named and on the side that is said", () => {
    const sign = placement.kept === "right" ? 1 : -1;
    const blade = (read.parts("blade-path")[0]![0]!.x + read.parts("blade-path")[1]![0]!.x) / 2;
    expect(Math.sign(middleOf(read, "kept").x - blade)).toBe(sign);
    expect(Math.sign(middleOf(read, "offcut").x - blade)).toBe(-sign);
    const [kept, off] = [read.parts("kept-side")[0]!, read.parts("off-side")[0]!];
    expect(Math.sign(kept[1]!.x - off[1]!.x)).toBe(sign);
    const hatch = read.parts("kept").flat();
    expect(hatch.length).toBeGreaterThan(20);
  });

  test("the fence is on your side or behind the stick, and leaves the blade's path free", () => {
    const fence = middleOf(read, "fence").y;
    const stick = read
      .parts("face")
      .flat()
      .map(({ y }) => y);
    if (frame.sawing.saw.fence === "near") expect(fence).toBeGreaterThan(Math.max(...stick));
    else expect(fence).toBeLessThan(Math.min(...stick));
    const blocks = read
      .parts("fence")
      .map((block) => block.map(({ x }) => x))
      .sort((a, b) => a[0]! - b[0]!);
    const path = read
      .parts("blade-path")
      .flat()
      .filter(({ y }) => Math.abs(y - fence) < 12);
    for (const { x } of path) {
      expect(x).toBeGreaterThan(Math.max(...blocks[0]!));
      expect(x).toBeLessThan(Math.min(...blocks[1]!));
    }
  });

  test("only the second end has a stop, at the far end of the kept part", () => {
    const stops = read.parts("stop");
    expect(stops).toHaveLength(operation.kind === "second-end" ? 1 : 0);
    for (const stop of stops) {
      const xs = [...read.parts("face"), ...read.parts("end-grain")].flat().map(({ x }) => x);
      if (placement.kept === "right") expect(Math.min(...stop.map(({ x }) => x))).toBeCloseTo(Math.max(...xs), 1);
      else expect(Math.max(...stop.map(({ x }) => x))).toBeCloseTo(Math.min(...xs), 1);
    }
  });

  test("angles are labelled through the formatter, and the description is the instruction", () => {
    const texts = read.texts.map(({ text }) => text);
    const { toward, degrees } = placement.miter;
    expect(texts).toContain(toward === "none" ? "square" : `miter ${SAY.angle(degrees)} to the ${toward}`);
    expect(texts).toContain(
      placement.bevel.toward === "none" ? "blade upright" : `bevel ${SAY.angle(placement.bevel.degrees)}`,
    );
    const { title, lines } = operationText(operation, words);
    expect(drawCut(frame, { step, ...EXACT }).title).toBe(`Step ${step}: ${title}`);
    expect(drawCut(frame, { step, ...EXACT }).description).toBe(lines.join(" "));
  });
});

test("all of them together keep either side and lean either way", () => {
  const placements = steps.map(({ operation }) => operation.placement);
  expect(new Set(placements.map(({ kept }) => kept)).size).toBe(2);
  expect(new Set(placements.map(({ miter }) => miter.toward)).size).toBe(3);
  expect(new Set(placements.map(({ bevel }) => bevel.toward)).size).toBe(3);
});

test("a thin stick has its words beside it", () => {
  const read = readStep(
    planFrame({
      sides: 4,
      opening: { side: 300 },
      profile: {
        outline: [
          { x: 0, y: 0 },
          { x: 3, y: 0 },
          { x: 3, y: 60 },
          { x: 0, y: 60 },
        ],
        arrises: {},
      },
    }),
    1,
  );
  expect(middleOf(read, "kept").y).toBeLessThan(
    Math.min(
      ...read
        .parts("face")
        .flat()
        .map(({ y }) => y),
    ),
  );
});

describe("a cut that follows the instruction is the frame's own cut", () => {
  const saws: readonly Saw[] = [tableSaw(), miterSaw()];
  test("at every line of the piece, whichever part is kept and however it lies", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 20 }),
        fc.double({ min: -85, max: 85, noNaN: true }),
        fc.constantFrom(
          "flat" as const,
          "propped" as const,
          "face-down" as const,
          "sight-edge-down" as const,
          "outer-edge-down" as const,
        ),
        fc.constantFrom("left" as const, "right" as const),
        fc.constantFrom("start" as const, "end" as const),
        fc.constantFrom(...saws),
        fc.constantFrom(BATTEN, TRAY),
        (sides, slope, lay, kept, end, saw, profile) => {
          const geometry = frameGeometry({ sides, slope, profile, opening: { side: 400 } });
          const cut = geometry.pieces[0][end];
          const placement = placeCut(cut, { lay, saw, kept });
          const stick = placeStick(profile, slope, placement, { size: 100, reach: 1e9 });
          const solid = lyingPiece(geometry, lay)!;
          const scale = 100 / Math.max(solid.width, solid.height);
          const [least, most] = stick.reach;
          // The section is mirrored, and listed backward, where the stick points left.
          const lines = placement.along === "right" ? stick.lines : stick.lines.slice().reverse();
          lines.forEach(({ cut: at }, index) => {
            const short = kept === "right" ? at - least : most - at;
            expect(short).toBeCloseTo(solid.lines[index]!.short * scale, 6);
          });
        },
      ),
      { numRuns: 300 },
    );
  });
});

test("a saw plan made by itself can be drawn with its geometry", () => {
  const geometry = frameGeometry({ sides: 5, slope: 10, profile: BATTEN, opening: { side: 200 } });
  const sawing = sawPlan(geometry);
  expect(drawCut({ geometry, sawing }, { step: 2, ...EXACT }).title).toBe(
    "Step 2: Cut the second end to length, 5 pieces",
  );
});
