import fc from "fast-check";
import { describe, expect, expectTypeOf, test } from "vitest";
import { frameGeometry, type FrameBrief, type FrameGeometry } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { onePolygonMeasure, POLYGON_MEASURES, regularPolygon } from "miterwright/polygon";
import { briefs, deepFreeze, plain, rabbeted, throughJson } from "./briefs.js";

type Vector3 = readonly [number, number, number];

/**
 * Where a section point of a piece's end lies in space, from the piece's length along that point's line and its place in the section alone: the piece is laid
 * along side 0 with its middle on the axis of symmetry, then carried round to its own side.
 */
function endPoint(frame: FrameGeometry, arris: string, side: number, end: "start" | "end"): Vector3 {
  const { out, up } = frame.arrises[arris]!;
  const half = frame.pieces[0].lengths[arris]! / 2;
  const distance =
    frame.given.apothem + out - (frame.at === "opening" ? frame.deciding.out : frame.arrises[frame.at]!.out);
  const turn = ((2 * Math.PI) / frame.sides) * side;
  const along = end === "end" ? half : -half;
  // Side 0 at the bottom: along is +x, outward is -y.
  const [x, y] = [along, -distance];
  return [x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn), up!];
}

describe("the ring closes", () => {
  test("every arris of a piece's end meets the same arris of the next piece's start", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const frame = frameGeometry(brief);
        const size = frame.overall.polygon.circumradius;
        for (const arris of Object.keys(frame.arrises)) {
          const here = endPoint(frame, arris, 0, "end");
          const next = endPoint(frame, arris, 1, "start");
          expect(Math.hypot(here[0] - next[0], here[1] - next[1], here[2] - next[2])).toBeLessThan(size * 1e-13);
        }
      }),
    );
  });

  test("the end's cut plane holds all of its arrises", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const { profile } = brief;
        const frame = frameGeometry(brief);
        const { lengths, end } = frame.pieces[0];
        const distances = Object.entries(profile.arrises).map(
          ([arris, point]) =>
            end.plane.along * (lengths[arris]! / 2) + end.plane.across * point.x + end.plane.through * point.y,
        );
        const spread = Math.max(...distances) - Math.min(...distances);
        expect(spread).toBeLessThan(frame.overall.polygon.circumradius * 1e-13);
      }),
    );
  });

  test("the outlines are polygons with the pieces' lengths as sides", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const frame = frameGeometry(brief);
        for (const [arris, { corners }] of Object.entries(frame.outline)) {
          const [first, second] = [corners[0]!, corners[1]!];
          const side = Math.hypot(second.x - first.x, second.y - first.y);
          expect(side).toBeCloseTo(frame.pieces[0].lengths[arris]!, 8);
          expect(corners).toHaveLength(frame.sides);
        }
      }),
    );
  });
});

describe("lengths at every arris", () => {
  test("differ by twice the level distance times the tangent of the plan miter", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const frame = frameGeometry(brief);
        const { lengths, longest, shortest } = frame.pieces[0];
        const tangent = Math.tan(Math.PI / frame.sides);
        for (const [arris, point] of Object.entries(frame.arrises)) {
          expect(lengths[arris]! - shortest.length).toBeCloseTo(2 * (point.out - shortest.out) * tangent, 8);
          expect(lengths[arris]).toBeGreaterThanOrEqual(shortest.length);
          expect(lengths[arris]).toBeLessThanOrEqual(longest.length);
        }
      }),
    );
  });

  test("the outside of a frame is longer than the rabbet by 2 w tan(180/n), w the level width (common practice, no printed source)", () => {
    const frame = frameGeometry({ sides: 8, profile: rabbeted, opening: { side: 150 } });
    expect(frame.levelWidth).toBe(52 - 9);
    expect(frame.pieces[0].longest.length - 150).toBeCloseTo(2 * 43 * Math.tan(Math.PI / 8), 11);
  });

  test("a box that stands upright has the lengths of its outside and inside faces", () => {
    const box = frameGeometry({ sides: 4, slope: 90, profile: plain, opening: { side: 300 } });
    expect(box.pieces[0].lengths).toEqual({ sightFace: 300, sightBack: 340, outerFace: 300, outerBack: 340 });
  });
});

describe("the opening", () => {
  test.each(POLYGON_MEASURES)("comes back bit for bit when given by %s at the rabbet", (measure) => {
    const value = measure === "area" ? 54_321.1 : 432.1;
    const opening = { ...onePolygonMeasure(measure, value) };
    const frame = frameGeometry({ sides: 7, slope: 25, profile: rabbeted, opening, at: "wallLedge" });
    expect(frame.given[measure]).toBe(value);
    expect(frame.polygons.wallLedge.apothem).toBe(frame.given.apothem);
  });

  test("is taken where the contents touch unless another arris is named", () => {
    const frame = frameGeometry({ sides: 6, slope: -20, profile: rabbeted, opening: { side: 200 } });
    expect(frame.deciding.out).toBeCloseTo(frame.arrises.wallMouth.out, 12);
    expect(frame.pieces[0].lengths.wallMouth).toBeCloseTo(200, 10);
  });

  test("without a rabbet is taken at the innermost point", () => {
    const tray = frameGeometry({ sides: 6, slope: 40, profile: plain, opening: { side: 200 } });
    expect(tray.pieces[0].shortest).toMatchObject({ arris: "sightFace", length: 200 });
  });

  test("holds the rectangle it was made for, with its allowance and the clearance at every side", () => {
    fc.assert(
      fc.property(briefs, fc.double({ min: 0, max: 5, noNaN: true }), (base, clearance) => {
        const opening = { contains: { width: 300, height: 180, allowance: 2 } };
        const frame = frameGeometry({ ...base, opening, clearance });
        const { corners } = { corners: frameGeometry({ ...base, opening, clearance: 0 }) };
        expect(frame.opening.apothem - corners.opening.apothem).toBeCloseTo(clearance, 9);
        // The room left to each side, by the distance of the rectangle's corners from the side's line.
        for (let side = 0; side < frame.sides; side += 1) {
          const normal = -Math.PI / 2 + (2 * Math.PI * (side + (base.pose === "corner-down" ? 0.5 : 0))) / frame.sides;
          for (const [dx, dy] of [
            [151, 91],
            [-151, 91],
            [151, -91],
            [-151, -91],
          ] as const) {
            const reach = (frame.center!.x + dx) * Math.cos(normal) + (frame.center!.y + dy) * Math.sin(normal);
            expect(frame.given.apothem - reach).toBeGreaterThan(clearance - 1e-9);
          }
        }
      }),
    );
  });

  test("is larger by the clearance than the panel that a sheet gives", () => {
    const frame = frameGeometry({
      sides: 5,
      profile: rabbeted,
      opening: { cutFrom: { width: 400, height: 300 } },
      clearance: 2,
    });
    const loose = frameGeometry({ sides: 5, profile: rabbeted, opening: { cutFrom: { width: 400, height: 300 } } });
    expect(frame.opening.apothem).toBeCloseTo(loose.opening.apothem + 2, 11);
  });

  test("so tight that a piece would have no length is refused with the length it would have", () => {
    expect(() => frameGeometry({ sides: 6, profile: plain, opening: { side: 20 }, at: "outerBack" })).toThrow(
      "Expected `opening` to leave the pieces a length at every edge, but at `sightFace` it would be -26.1880215352",
    );
  });
});

describe("a molding known by level measures alone", () => {
  test("gives the lengths of a section with the same level measures", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 20 }), fc.double({ min: -80, max: 80, noNaN: true }), (sides, slope) => {
        const full = frameGeometry({ sides, slope, profile: plain, opening: { side: 500 } });
        const measured = frameGeometry({
          sides,
          slope,
          measured: { levelWidth: full.levelWidth },
          opening: { side: 500 },
        });
        expect(measured.pieces[0].lengths.outer).toBeCloseTo(full.pieces[0].longest.length, 9);
        expect(measured.pieces[0].end).toEqual(full.pieces[0].end);
      }),
    );
  });

  test("has the sight edge only where the lap is given, and no heights", () => {
    const without = frameGeometry({ sides: 5, measured: { levelWidth: 30 }, opening: { side: 200 } });
    expect(Object.keys(without.arrises)).toEqual(["wall", "outer"]);
    const lapped = frameGeometry({ sides: 5, measured: { levelWidth: 30, lap: 6 }, opening: { side: 200 } });
    expect(lapped.arrises).toEqual({
      wall: { out: 6, up: null },
      outer: { out: 36, up: null },
      sight: { out: 0, up: null },
    });
    expect(lapped.overall.height).toBeNull();
  });
});

describe("metamorphic laws", () => {
  const scaled = (k: number): FrameGeometry =>
    frameGeometry({
      sides: 7,
      slope: 33,
      profile: molding({ width: 52 * k, thickness: 19 * k, rabbet: { width: 9 * k, depth: 11 * k } }),
      opening: { side: 210 * k },
    });

  test("scaling by a power of two scales every length exactly and no angle", () => {
    for (const exponent of [-200, -3, 1, 200]) {
      const k = 2 ** exponent;
      const [one, many] = [scaled(1), scaled(k)];
      for (const [arris, length] of Object.entries(one.pieces[0].lengths))
        expect(many.pieces[0].lengths[arris]).toBe(length * k);
      expect(many.pieces[0].end.miter).toBe(one.pieces[0].end.miter);
    }
  });

  test("a section moved within its own coordinates gives the same frame", () => {
    const move = (point: { x: number; y: number }): { x: number; y: number } => ({ x: point.x + 16, y: point.y - 8 });
    const moved = {
      outline: plain.outline.map(move),
      arrises: Object.fromEntries(Object.entries(plain.arrises).map(([name, point]) => [name, move(point)])),
    };
    const here = frameGeometry({ sides: 6, slope: 30, profile: plain, opening: { side: 200 } });
    const there = frameGeometry({ sides: 6, slope: 30, profile: moved, opening: { side: 200 } });
    for (const [arris, length] of Object.entries(here.pieces[0].lengths)) {
      expect(there.pieces[0].lengths[arris]).toBeCloseTo(length, 11);
    }
  });
});

test("input stays as it was, and a brief from JSON gives the same frame", () => {
  const brief = deepFreeze({ sides: 6, slope: 12, profile: rabbeted, opening: { acrossFlats: 400 } });
  expect(frameGeometry(throughJson(brief))).toEqual(throughJson(frameGeometry(brief)));
});

test("the arrises of a frame are those of its profile, in the types too", () => {
  const frame = frameGeometry({ sides: 6, profile: rabbeted, opening: { side: 200 } });
  expectTypeOf(frame.pieces[0].lengths.wallMouth).toEqualTypeOf<number>();
  // @ts-expect-error an arris that the molding does not have
  expect(frame.pieces[0].lengths.bead).toBeUndefined();
  // @ts-expect-error two measures at once
  expect(() => frameGeometry({ sides: 6, profile: rabbeted, opening: { side: 200, area: 4 } })).toThrow();
  expect(regularPolygon({ sides: 6, side: 200 }).apothem).toBe(frame.given.apothem);
});

describe("of the rest of a brief", () => {
  const sound = { sides: 6, profile: plain, opening: { side: 200 } };

  test("only the names are looked at", () => {
    const broken = {
      ...sound,
      saw: "broken",
      unit: "yd",
      sticks: 3,
      species: NaN,
      contents: [{ name: "pane", thickness: 2, material: "mica", cost: -1 }],
    } as unknown as FrameBrief;
    expect(frameGeometry(broken)).toEqual(frameGeometry({ ...sound, contents: [{ name: "pane", thickness: 2 }] }));
  });

  test("a name that is not known is refused, with the nearest", () => {
    expect(() => frameGeometry({ ...sound, kref: 3 } as never)).toThrow("got `kref`; did you mean `kerf`?");
    const contents = [{ name: "pane", thickness: 2, materiel: "glass" }];
    expect(() => frameGeometry({ ...sound, contents } as never)).toThrow("did you mean `material`?");
    expect(() => frameGeometry({ ...sound, schemaVersion: 2 } as never)).toThrow("Expected `schemaVersion` to be 1");
  });
});
