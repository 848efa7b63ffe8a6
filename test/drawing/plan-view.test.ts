import { describe, expect, test } from "vitest";
import { drawPlanView } from "miterwright/drawing";
import { polygonCorners } from "miterwright/polygon";
import { measuredPlan, plan, BATTEN, EXACT, SAY, writing } from "./frames.js";
import { readDrawing, type ReadDrawing } from "./read-drawing.js";
import { distance, expectSimilar } from "./shapes.js";

const wordsOf = ({ texts }: ReadDrawing): string[] => texts.map(({ text }) => text);

describe.each([3, 4, 5, 6, 7, 8, 9, 10, 12])("a frame of %d sides", (sides) => {
  test.each(["side-down", "corner-down"] as const)("stands %s, in its proportions", (pose) => {
    const frame = plan({ sides, pose, slope: 20 });
    const { geometry } = frame;
    const read = readDrawing(drawPlanView(frame, EXACT));
    const polygons = {
      outermost: geometry.overall.polygon.apothem,
      opening: geometry.opening.apothem,
      innermost: frame.contents.visible.apothem,
    };
    const scales = Object.entries(polygons).map(([part, apothem]) =>
      expectSimilar(read.parts(part)[0]!, polygonCorners({ sides, apothem }, pose)),
    );
    expect(Math.max(...scales) / Math.min(...scales)).toBeCloseTo(1, 3);
  });

  test("has a joint at every corner, from the innermost edge to the outermost", () => {
    const read = readDrawing(drawPlanView(plan({ sides }), EXACT));
    const [outer, inner] = [read.parts("outermost")[0]!, read.parts("innermost")[0]!];
    expect(read.parts("joint")).toEqual(outer.map((corner, index) => [corner, inner[index]]));
  });

  test("has its sides numbered from 1, each number nearest to its side", () => {
    const read = readDrawing(drawPlanView(plan({ sides }), EXACT));
    const corners = read.parts("outermost")[0]!;
    for (let side = 0; side < sides; side++) {
      const label = read.texts.filter(({ text }) => text === String(side + 1));
      expect(label).toHaveLength(1);
      const at = { x: (label[0]!.x0 + label[0]!.x1) / 2, y: (label[0]!.y0 + label[0]!.y1) / 2 };
      const away = corners.map((from, index) => {
        const to = corners[(index + 1) % sides]!;
        return Math.abs((to.x - from.x) * (at.y - from.y) - (to.y - from.y) * (at.x - from.x)) / distance(from, to);
      });
      expect(away.indexOf(Math.min(...away))).toBe(side);
    }
  });

  test.each([
    ["side-down", "the side at the bottom"],
    ["corner-down", "the side to the right of the bottom corner"],
  ] as const)("says which side is the first, standing %s", (pose, first) => {
    const drawing = drawPlanView(plan({ sides, pose }), EXACT);
    expect(drawing.description).toContain(`Sides are numbered counter-clockwise from 1, ${first}.`);
    const read = readDrawing(drawing);
    const corners = read.parts("outermost")[0]!;
    const label = read.texts.find(({ text }) => text === "1")!;
    const lowest = Math.max(...corners.map(({ y }) => y));
    const middle = (Math.min(...corners.map(({ x }) => x)) + Math.max(...corners.map(({ x }) => x))) / 2;
    const ends = [corners[0]!, corners[1]!];
    expect(ends.map(({ y }) => Math.abs(y - lowest) < 0.1)).toEqual([true, pose === "side-down"]);
    if (pose === "corner-down") expect(label.x0).toBeGreaterThan(middle);
  });

  test.each(["side-down", "corner-down"] as const)("is dimensioned through the formatter, standing %s", (pose) => {
    const { geometry } = plan({ sides, pose });
    const { polygon } = geometry.overall;
    const words = wordsOf(readDrawing(drawPlanView(geometry, EXACT)));
    expect(words).toContain(`side ${SAY.length(polygon.side)}`);
    expect(words).toContain(`across flats ${SAY.length(polygon.acrossFlats)}`);
    expect(words).toContain(`across corners ${SAY.length(polygon.acrossCorners)}`);
  });
});

describe("dimensions", () => {
  test("span what they say", () => {
    const { geometry } = plan({ sides: 5 });
    const read = readDrawing(drawPlanView(geometry, EXACT));
    const [a, b] = read.parts("outermost")[0]!;
    const spans = read.parts("dimension").map(([from, to]) => distance(from!, to!));
    const scale = distance(a!, b!) / geometry.overall.polygon.side;
    const wanted = [
      geometry.overall.polygon.side,
      300,
      geometry.overall.polygon.acrossFlats,
      geometry.overall.polygon.acrossCorners,
    ];
    expect(spans).toHaveLength(wanted.length);
    wanted.forEach((value, index) => {
      expect(spans[index]).toBeCloseTo(value * scale, 1);
    });
  });

  test("of a square run across it from corner to corner", () => {
    const read = readDrawing(drawPlanView(plan({ sides: 4 }), EXACT));
    const corners = read.parts("outermost")[0]!;
    expect(read.parts("dimension")).toContainEqual([corners[2], corners[0]]);
  });
});

describe("edges", () => {
  test("that are seen from above are drawn: at slope 20 the face's two and where the sight edge's chamfer ends", () => {
    const { geometry } = plan({ slope: 20 });
    const read = readDrawing(drawPlanView(geometry, EXACT));
    const apothemOf = (ring: readonly { readonly x: number; readonly y: number }[]): number =>
      Math.max(...ring.map(({ y }) => y));
    const scale = apothemOf(read.parts("outermost")[0]!) / geometry.overall.polygon.apothem;
    const drawn = read.parts("arris").map((ring) => apothemOf(ring) / scale);
    const wanted = [geometry.polygons["sightFace"]!.apothem, geometry.polygons["outerFace"]!.apothem];
    expect(drawn).toHaveLength(wanted.length);
    wanted.forEach((apothem, index) => {
      expect(drawn[index]).toBeCloseTo(apothem, 1);
    });
  });

  test("of a molding without a rabbet leave no opening to be dashed", () => {
    expect(readDrawing(drawPlanView(plan({ profile: BATTEN }), EXACT)).parts("opening")).toEqual([]);
  });

  test("of a measured molding are its sight edge, its rabbet's wall and its outermost line", () => {
    const frame = measuredPlan();
    const read = readDrawing(drawPlanView(frame, EXACT));
    const scale = expectSimilar(read.parts("outermost")[0]!, polygonCorners(frame.geometry.overall.polygon));
    expectSimilar(read.parts("opening")[0]!, polygonCorners(frame.geometry.opening));
    const sight = { sides: 9, apothem: frame.geometry.opening.apothem - 6 };
    expect(expectSimilar(read.parts("innermost")[0]!, polygonCorners(sight))).toBeCloseTo(scale, 3);
  });
});

describe("what the frame was made for", () => {
  const brief = { sides: 5, opening: { contains: { width: 200, height: 120, allowance: 2 } } };

  test("is drawn in its place", () => {
    const frame = plan(brief);
    const read = readDrawing(drawPlanView(frame, EXACT));
    const { center } = frame.contents;
    const rectangle = [
      { x: -100, y: -60 },
      { x: 100, y: -60 },
      { x: 100, y: 60 },
      { x: -100, y: 60 },
    ].map(({ x, y }) => ({ x: x + center!.x, y: y + center!.y }));
    const opening = polygonCorners(frame.geometry.opening);
    expectSimilar([...read.parts("opening")[0]!, ...read.parts("contained")[0]!], [...opening, ...rectangle]);
    expect(wordsOf(read).join(" ")).toContain(`The frame must hold ${SAY.length(200)} × ${SAY.length(120)}.`);
  });

  test("is not known of a geometry alone", () => {
    expect(readDrawing(drawPlanView(plan(brief).geometry, EXACT)).parts("contained")).toEqual([]);
  });

  test("is drawn as a sheet when the panel is cut from one", () => {
    const read = readDrawing(
      drawPlanView(plan({ sides: 5, opening: { cutFrom: { width: 420, height: 297 } } }), EXACT),
    );
    const [sheet] = read.parts("sheet");
    expect(distance(sheet![0]!, sheet![1]!) / distance(sheet![1]!, sheet![2]!)).toBeCloseTo(420 / 297, 3);
  });

  test("is only named when a sheet reaches far beyond the frame", () => {
    const read = readDrawing(drawPlanView(plan({ opening: { cutFrom: { width: 4200, height: 297 } } }), EXACT));
    expect(read.parts("sheet")).toEqual([]);
    expect(wordsOf(read).join(" ")).toContain("L4200 × L297, which is not drawn.");
  });
});

test("of very many sides only some joints and numbers are drawn, and the key says so", () => {
  const read = readDrawing(drawPlanView(plan({ sides: 1000, opening: { acrossFlats: 3e5 } }), EXACT));
  const drawn = read.parts("joint").length;
  expect(drawn).toBeLessThan(400);
  expect(wordsOf(read)).toContain(`Of 1000 joints one in ${1000 / drawn} is drawn.`);
});

test("the width is what it aims at", () => {
  const [narrow, wide] = [300, 900].map((width) =>
    drawPlanView(plan(), { ...writing(() => "9 mm", SAY.angle), width }),
  );
  expect(Math.abs(narrow!.width - 300)).toBeLessThan(15);
  expect(Math.abs(wide!.width - 900)).toBeLessThan(15);
});
