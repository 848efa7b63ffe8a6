import { describe, expect, test } from "vitest";
import { drawPiece } from "miterwright/drawing";
import { tableSaw } from "miterwright/saw";
import { BATTEN, measuredPlan, plan, EXACT, SAY } from "./frames.js";
import { readDrawing, type ReadDrawing } from "./read-drawing.js";
import { distance, fromPlumb } from "./shapes.js";

const wordsOf = ({ texts }: ReadDrawing): string[] => texts.map(({ text }) => text);
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

describe.each([3, 4, 5, 6, 9, 12])("the piece of a flat frame of %d sides", (sides) => {
  const frame = plan({ sides, profile: BATTEN });
  const read = readDrawing(drawPiece(frame, EXACT));
  const [inner, outer] = [read.parts("dimension")[1]!, read.parts("dimension")[0]!];

  test("has its miters at both ends, the outer edge the longer", () => {
    const [face] = read.parts("face");
    const [a, b, c, d] = face!;
    const ends = [fromPlumb(a!, d!), fromPlumb(b!, c!)].sort((one, other) => one - other);
    expect(ends[0]).toBeCloseTo(-180 / sides, 1);
    expect(ends[1]).toBeCloseTo(180 / sides, 1);
  });

  test("has its longest and shortest line in proportion, dimensioned through the formatter", () => {
    const { longest, shortest } = frame.geometry.pieces[0];
    expect(distance(outer[0]!, outer[1]!) / distance(inner[0]!, inner[1]!)).toBeCloseTo(
      longest.length / shortest.length,
      2,
    );
    expect(wordsOf(read)).toEqual(
      expect.arrayContaining([`longest ${SAY.length(longest.length)}`, `shortest ${SAY.length(shortest.length)}`]),
    );
  });
});

describe("a splayed piece", () => {
  const frame = plan({ sides: 6, slope: 30, profile: BATTEN, opening: { side: 300 } });
  const read = readDrawing(drawPiece(frame, EXACT));
  const faces = read.parts("face");

  test("is also seen from its outer edge, where its ends lean by sin s tan h", () => {
    expect(faces).toHaveLength(2);
    const [a, b, c, d] = faces[1]!;
    const leanAngle = (Math.atan(Math.sin(radians(30)) * Math.tan(radians(30))) * 180) / Math.PI;
    expect(Math.abs(fromPlumb(a!, d!))).toBeCloseTo(leanAngle, 1);
    expect(Math.abs(fromPlumb(b!, c!))).toBeCloseTo(leanAngle, 1);
  });

  test("shows its sawn ends where they look up", () => {
    expect(read.parts("end-grain").length).toBe(2);
    expect(
      readDrawing(
        drawPiece(
          plan({
            sides: 6,
            slope: -30,
            profile: BATTEN,
            lay: "flat",
            saw: tableSaw({ bevel: { left: 45, right: 45, reads: "from-vertical", step: 0.5 } }),
          }),
          EXACT,
        ),
      ).parts("end-grain"),
    ).toEqual([]);
  });

  test("says both cuts at both ends", () => {
    const { first, second } = frame.sawing.lay!;
    for (const { miter, bevel } of [first, second]) {
      expect(wordsOf(read)).toContain(`miter ${SAY.angle(miter.degrees)}`);
      expect(wordsOf(read)).toContain(`bevel ${SAY.angle(bevel.degrees)}`);
    }
    expect(wordsOf(read)).toEqual(expect.arrayContaining(["start", "end"]));
  });

  test("has the tape along the measured arris, hooked over its long point", () => {
    const [tape] = read.parts("tape");
    const left = Math.min(...faces.flat().map(({ x }) => x));
    const right = Math.max(...faces.flat().map(({ x }) => x));
    expect(tape!.map(({ x }) => x)).toEqual([left, right]);
    expect(read.parts("hook")).toHaveLength(2);
    expect(wordsOf(read).join(" ")).toContain(
      `Tape: hook it over a long point of the outer edge at the back (d) and read ${SAY.length(frame.sawing.operations.at(-1)!.measure!.length)} at the other.`,
    );
  });

  test("has no hook where a tape can't hold, but pencil lines", () => {
    const rounded = {
      outline: BATTEN.outline.map((point) => (point.x > 0 && point.y === 0 ? { x: 41, y: 0 } : point)),
      arrises: {},
    };
    const other = readDrawing(drawPiece(plan({ sides: 6, profile: rounded }), EXACT));
    expect(other.parts("hook")).toEqual([]);
    expect(other.parts("pencil")).toHaveLength(2);
    expect(wordsOf(other).join(" ")).toContain("Tape: square a pencil line to the piece at both long points");
  });

  test("says which edge is at the fence, on the side where it is", () => {
    const places = (
      lay: "flat" | "face-down",
    ): [outer: { y0: number; y1: number }, sight: { y0: number; y1: number }] => {
      const laid = plan({ sides: 6, slope: 30, profile: BATTEN, opening: { side: 300 }, lay });
      const { texts } = readDrawing(drawPiece(laid, EXACT));
      return [
        texts.find(({ text }) => text === "outer edge at the fence: first end")!,
        texts.find(({ text }) => text === "sight edge at the fence: second end")!,
      ];
    };
    const [outer, sight] = places("flat");
    expect(sight.y1).toBeLessThan(outer.y0);
    // Rolled onto its face the piece has its edges the other way round.
    const [below, above] = places("face-down");
    expect(below.y1).toBeLessThan(above.y0);
  });
});

describe("a long piece", () => {
  const read = readDrawing(drawPiece(plan({ sides: 5, profile: BATTEN, opening: { side: 30000 } }), EXACT));

  test("is broken in the middle, and its ends keep their angle", () => {
    expect(read.parts("break")).toHaveLength(2);
    const [a, b, c, d] = read.parts("face")[0]!;
    expect([fromPlumb(a!, d!), fromPlumb(b!, c!)].map(Math.abs)).toEqual([
      expect.closeTo(36, 1),
      expect.closeTo(36, 1),
    ]);
  });

  test("a short one is not", () => {
    expect(readDrawing(drawPiece(plan({ sides: 5, profile: BATTEN }), EXACT)).parts("break")).toEqual([]);
  });
});

describe("without a lay or a section", () => {
  test("a piece that no saw cuts is drawn as it stands in the frame", () => {
    const saw = tableSaw({
      miter: { left: 1, right: 1, reads: "from-square", step: 1 },
      bevel: { left: 1, right: 1, reads: "from-vertical", step: 1 },
    });
    const words = wordsOf(readDrawing(drawPiece(plan({ saw, slope: 20 }), EXACT)));
    expect(words.join(" ")).toContain("Seen from above, as it stands in the frame");
    expect(words).toContain(`miter ${SAY.angle(30)}`);
  });

  test("a measured molding too, and its angles are said to be the saw's", () => {
    const words = wordsOf(readDrawing(drawPiece(measuredPlan(), EXACT)));
    expect(words.join(" ")).toContain("The angles are the saw's for the stick flat on its back.");
  });
});
