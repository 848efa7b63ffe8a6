import fc from "fast-check";
import {
  levelWidth,
  molding,
  profileFromPoints,
  rabbetSeating,
  sectionAt,
  type Profile,
  type RabbetSeating,
  type RabbetSeatingOptions,
  type RabbetHold,
  type RabbetArris,
  type SeatingReason,
} from "miterwright/profile";
import { describe, expect, expectTypeOf, test } from "vitest";
import {
  between,
  deepFrozen,
  handDrawnRabbets,
  anyProfile,
  numbersAreClean,
  rabbetedMoldings,
  rabbetedSizes,
  slopes,
  type Rabbeted,
} from "../laws/profile.js";
import { exact } from "../exact.js";
import { exactTrig, expectSum } from "./expect-sum.js";
import { distanceToOutline, overlap, placeByTrial, restHeight } from "./place-contents.js";
import { refuses } from "./refusals.js";

const rabbeted = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });
const glazing = [
  { name: "glass", thickness: 2 },
  { name: "mat", thickness: 1.5 },
  { name: "backing", thickness: 3 },
];
const hold = (profile: Profile<RabbetArris>, options: RabbetSeatingOptions): RabbetHold => {
  const seating = rabbetSeating(profile, options);
  if (!seating.possible) throw new Error(seating.reason);
  return seating;
};

describe("rabbetSeating of a square-cut rabbet", () => {
  test("holds contents flat on the ledge of a flat frame", () => {
    expect(rabbetSeating(rabbeted, { slope: 0, contents: glazing })).toEqual({
      possible: true,
      slope: 0,
      bearsOn: "ledge",
      bearing: { out: 0, up: 10 },
      opening: { out: 8, up: 10 },
      lap: 8,
      depthUsed: 6.5,
      depthLeft: 3.5,
      roomLost: 0,
      thickness: 6.5,
      layers: [
        { name: "glass", front: 10, back: 8 },
        { name: "mat", front: 8, back: 6.5 },
        { name: "backing", front: 6.5, back: 3.5 },
      ],
    });
  });

  test("bears on the sight edge's back arris at a positive slope: w / cos s, w tan s + T / cos s, T tan s", () => {
    const held = fc.record({ sizes: rabbetedSizes, steepness: between(0.001, 1), thickness: between(0.01, 60) });
    fc.assert(
      fc.property(held, ({ sizes, steepness, thickness }) => {
        const { width, depth } = sizes.rabbet;
        const slope = steepness * 0.999999 * ((Math.atan(depth / width) * 180) / Math.PI);
        const seating = hold(molding(sizes), { slope, contents: [{ name: "panel", thickness }] });
        const { sin, cos, tan } = exactTrig(slope);
        const [w, d, t] = [exact(width), exact(depth), exact(thickness)];
        expect(seating.bearsOn).toBe("sight-edge");
        expect(seating.bearing).toEqual(sectionAt(molding(sizes), slope).arrises.sightBack);
        expectSum(seating.lap, [w.div(cos)]);
        expectSum(seating.depthUsed, [w.mul(tan), t.div(cos)]);
        expectSum(seating.depthLeft, [d, w.mul(tan).neg(), t.div(cos).neg()]);
        expectSum(seating.roomLost, [t.mul(tan)]);
        expectSum(seating.opening.out, [w.div(cos), d.mul(sin).neg()]);
      }),
    );
  });

  test("passes the mouth and bears on the ledge, short of the corner, at a negative slope: w cos s - d sin|s|, whatever the thickness", () => {
    fc.assert(
      fc.property(rabbetedSizes, between(0.001, 0.999), between(0.01, 60), (sizes, steepness, thickness) => {
        const { width, depth } = sizes.rabbet;
        const slope = -steepness * ((Math.atan(width / depth) * 180) / Math.PI);
        const seating = hold(molding(sizes), { slope, contents: [{ name: "panel", thickness }] });
        const { sin, cos, tan } = exactTrig(-slope);
        const [w, d, t] = [exact(width), exact(depth), exact(thickness)];
        expect(seating.bearsOn).toBe("corner");
        expect(seating.opening).toEqual(sectionAt(molding(sizes), slope).arrises.wallMouth);
        expectSum(seating.lap, [w.mul(cos), d.mul(sin).neg()]);
        expectSum(seating.roomLost, [d.mul(sin)]);
        // With a clearance c the arris bears d sin|s| + c before the corner, where the ledge is so much times tan|s| higher.
        const clearance = seating.lap / 4;
        const free = rabbetSeating(molding(sizes), { slope, contents: [{ name: "panel", thickness }], clearance });
        const [c, below] = [exact(clearance), d.mul(sin).add(exact(clearance)).mul(tan).div(cos)];
        if (!free.possible) throw new Error(free.reason);
        expectSum(free.lap, [w.mul(cos), d.mul(sin).neg(), c.neg()]);
        if (t.div(cos).gt(below)) {
          expectSum(free.depthUsed, [t.div(cos), d.mul(tan).mul(tan).neg(), c.mul(tan).div(cos).neg()]);
        }
        const corner = sectionAt(molding(sizes), slope).arrises.wallLedge;
        expect(corner.out - free.bearing.out).toBeCloseTo(depth * Number(sin) + clearance, 9);
        const depthUsed = t.div(cos).sub(d.mul(tan).mul(tan));
        if (depthUsed.isPositive()) expectSum(seating.depthUsed, [t.div(cos), d.mul(tan).mul(tan).neg()]);
        else expect(seating.depthUsed).toBeLessThan(1e-12 * depth);
        expect(seating.opening).toEqual(hold(molding(sizes), { slope, contents: [] }).opening);
      }),
    );
  });

  test("cannot hold what lies past the mouth: w tan s > d", () => {
    // w = 8 and d = 10 meet at atan(10 / 8) = 51.34 degrees.
    expect(rabbetSeating(rabbeted, { slope: 51.3, contents: [] }).possible).toBe(true);
    const seating = rabbetSeating(rabbeted, { slope: 60, contents: glazing });
    expect(seating).toEqual({
      possible: false,
      slope: 60,
      reason: "past-mouth",
      shortBy: expect.closeTo(8 * Math.sqrt(3) - 10, 12) as number,
    });
  });

  test("holds at the mouth's very arris, where w tan s = d to the last bit", () => {
    const even = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 8 } });
    expect(hold(even, { slope: 45, contents: [] }).opening).toEqual(sectionAt(even, 45).arrises.wallMouth);
    expect(rabbetSeating(even, { slope: -45, contents: [] })).toMatchObject({ reason: "falls-through", shortBy: 0 });
  });

  test("drops what gets through a mouth no wider than the sight opening: w cos s <= d sin|s|", () => {
    expect(rabbetSeating(rabbeted, { slope: -38, contents: [] }).possible).toBe(true);
    expect(rabbetSeating(rabbeted, { slope: -45, contents: glazing })).toEqual({
      possible: false,
      slope: -45,
      reason: "falls-through",
      shortBy: expect.closeTo(Math.SQRT2, 12) as number,
    });
  });

  test("drops contents whose clearance is as wide as the lap", () => {
    expect(hold(rabbeted, { slope: 0, contents: [], clearance: 7 }).lap).toBe(1);
    expect(rabbetSeating(rabbeted, { slope: 0, contents: [], clearance: 8 })).toMatchObject({
      reason: "falls-through",
      shortBy: 0,
    });
    expect(rabbetSeating(rabbeted, { slope: 0, contents: [], clearance: 10 })).toMatchObject({
      reason: "falls-through",
      shortBy: 2,
    });
  });

  test.each([90, -90])("is too steep for level contents at %d", (slope) => {
    expect(rabbetSeating(rabbeted, { slope, contents: glazing })).toEqual({
      possible: false,
      slope,
      reason: "too-steep",
      shortBy: 0,
    });
  });

  test("lets contents stand proud of the mouth, and says by how much", () => {
    expect(hold(rabbeted, { slope: 0, contents: [{ name: "canvas", thickness: 18 }] }).depthLeft).toBe(-8);
  });
});

describe("rabbetSeating against contents placed by trial", () => {
  /** Holds a seating against trial placement; gives what it found, so that a test can see that it met every case. */
  const compare = (profile: Rabbeted, slope: number, thickness: number, clearance: number): string => {
    const seating: RabbetSeating = rabbetSeating(profile, {
      slope,
      contents: [{ name: "panel", thickness }],
      clearance,
    });
    const { sight, edge, wood, slack } = placeByTrial(profile, slope);
    const { wallLedge, wallMouth } = sectionAt(profile, slope).arrises;
    if (!seating.possible && seating.reason === "too-steep") {
      // A wall that rises toward its mouth, or a ledge that faces outward, is none whatever a trial finds.
      const overhangs = wallLedge.up < sight.up && wallLedge.out <= sight.out + slack;
      expect(wallLedge.up - wallMouth.up <= slack || overhangs).toBe(true);
      return seating.reason;
    }
    if (edge === null) {
      // Right at the boundary either answer is right to rounding.
      if (seating.possible)
        expect(Math.min(seating.lap, Math.abs(seating.bearing.up - wallMouth.up))).toBeLessThan(1e4 * slack);
      return seating.possible ? "boundary" : seating.reason;
    }
    // Bisection stops when the wood is within the slack in height; along a wall that lies nearly level that is farther.
    const loose = 10 * slack * (1 + Math.abs((wallMouth.out - wallLedge.out) / (wallLedge.up - wallMouth.up)));
    if (!seating.possible) {
      expect(edge - clearance - sight.out).toBeLessThan(loose + 1e4 * slack);
      return seating.reason;
    }
    const reach = edge - clearance;
    expect(Math.abs(seating.opening.out - edge)).toBeLessThan(loose);
    expect(Math.abs(seating.lap - (reach - sight.out))).toBeLessThan(loose);

    // They rest where the trial rests, touch wood where they are said to bear, and meet no wood on their way in.
    const { front, back } = seating.layers[0]!;
    const steep = 1 + Math.abs((wallLedge.up - sight.up) / (wallLedge.out - sight.out));
    expect(Math.abs(front - restHeight(wood, reach - loose))).toBeLessThan(2 * loose * steep);
    expect(seating.bearing.up).toBe(front);
    expect(seating.bearing.out).toBeLessThanOrEqual(reach + loose);
    expect(distanceToOutline(wood, seating.bearing)).toBeLessThan(slack);
    const size = Math.max(...wood.map(({ out, up }) => Math.hypot(out, up)));
    expect(overlap(wood, reach, -10 * size, front)).toBeLessThan(10 * loose * size);
    expect(back).toBe(front - thickness);

    // The wall's depth down to the contents' back, measured with a rule laid on the tilted wall.
    const wall = Math.hypot(wallMouth.out - wallLedge.out, wallMouth.up - wallLedge.up);
    const depthUsed = ((wallLedge.up - back) / (wallLedge.up - wallMouth.up)) * wall;
    const scale = (wall / (wallLedge.up - wallMouth.up)) * 1e-12 * (size + thickness);
    expect(Math.abs(seating.depthUsed - Math.max(0, depthUsed))).toBeLessThan(scale);
    expect(Math.abs(seating.depthUsed + seating.depthLeft - wall)).toBeLessThan(scale);
    return seating.bearsOn;
  };

  test.each<[string, fc.Arbitrary<Rabbeted>, fc.Arbitrary<number>, string[]]>([
    ["square-cut, positive slopes", rabbetedMoldings, between(0.01, 85), ["past-mouth", "sight-edge"]],
    ["square-cut, negative slopes", rabbetedMoldings, between(-85, -0.01), ["corner", "falls-through"]],
    ["square-cut, no slope", rabbetedMoldings, fc.constant(0), ["falls-through", "ledge"]],
    ["hand-drawn", handDrawnRabbets, between(-80, 80), ["corner", "falls-through", "past-mouth", "sight-edge"]],
    ["hand-drawn, gentle slopes", handDrawnRabbets, between(-25, 25), ["corner", "falls-through", "sight-edge"]],
  ])("%s", (_, profiles, slope, cases) => {
    const met = new Set<string>();
    fc.assert(
      fc.property(profiles, slope, between(0.1, 30), fc.oneof(fc.constant(0), between(0, 3)), (...given) => {
        met.add(compare(...given));
      }),
      { endOnFailure: true },
    );
    for (const one of cases) expect(met).toContain(one);
  });
});

describe("rabbetSeating", () => {
  test("of a rabbet made for its slope is as if the frame were flat", () => {
    const milled = molding({ width: 60, thickness: 40, rabbet: { width: 8, depth: 10 }, madeFor: { slope: 35 } });
    const seating = hold(milled, { slope: 35, contents: glazing });
    expect(seating.bearsOn).toBe("ledge");
    expect(seating.lap).toBeCloseTo(8, 12);
    expect(seating.depthUsed).toBeCloseTo(6.5, 12);
    expect(seating.depthLeft).toBeCloseTo(3.5, 12);
    expect(seating.roomLost).toBeLessThan(1e-12);
    expect(hold(milled, { slope: 34.99, contents: glazing }).bearsOn).toBe("corner");
    expect(hold(milled, { slope: 35.01, contents: glazing }).bearsOn).toBe("sight-edge");
  });

  test("calls the ledge of a rabbet made for its slope level, rounding and all", () => {
    const slopesOfMilled = fc.tuple(between(-50, 50), between(60, 100), between(1, 20), between(1, 20));
    fc.assert(
      fc.property(slopesOfMilled, ([slope, thickness, width, depth]) => {
        const milled = molding({ width: 200, thickness, rabbet: { width, depth }, madeFor: { slope } });
        expect(hold(milled, { slope, contents: glazing }).bearsOn).toBe("ledge");
      }),
    );
  });

  test("holds nothing under a ledge that does not face down, or against a wall that lies level", () => {
    const rabbet = (
      ledgeX: number,
      ledgeY: number,
      mouthX: number,
      mouthY: number,
    ): Pick<Profile<RabbetArris>, "arrises"> => ({
      arrises: {
        sightBack: { x: 0, y: 10 },
        wallLedge: { x: ledgeX, y: ledgeY },
        wallMouth: { x: mouthX, y: mouthY },
      },
    });
    const steep = { possible: false, reason: "too-steep", shortBy: 0 };
    expect(rabbetSeating(rabbet(0, 8, 6, 0), { slope: 0, contents: [] })).toMatchObject(steep);
    expect(rabbetSeating(rabbet(-1, 8, 6, 0), { slope: 0, contents: [] })).toMatchObject(steep);
    expect(rabbetSeating(rabbet(6, 10, 9, 10), { slope: 0, contents: [] })).toMatchObject(steep);
    expect(rabbetSeating(rabbet(6, 10, 9, 12), { slope: 0, contents: [] })).toMatchObject(steep);
    expect(rabbetSeating(rabbet(6, 10, 6, 10), { slope: 0, contents: [] })).toMatchObject(steep);
    expect(rabbetSeating(rabbet(6, 0, 1e100, -1e-200), { slope: 0, contents: [] })).toMatchObject(steep);
  });

  test("holds contents under a sight edge that the ledge rises from inward, up to the wall behind it", () => {
    const arrises = { sightBack: { x: 0, y: 4 }, wallLedge: { x: -2, y: 10 }, wallMouth: { x: 8, y: 0 } };
    const seating = hold({ outline: [], arrises }, { slope: 0, contents: [{ name: "panel", thickness: 1 }] });
    expect(seating).toMatchObject({
      bearsOn: "sight-edge",
      bearing: { out: 0, up: 4 },
      opening: { out: 4, up: 4 },
      lap: 4,
    });
    expect(seating.depthUsed).toBeCloseTo(7 * Math.SQRT2, 12);
  });

  test("passes the mouth of a wall that leans inward to the bit", () => {
    fc.assert(
      fc.property(handDrawnRabbets, between(-80, 80), (profile, slope) => {
        const { wallLedge, wallMouth } = sectionAt(profile, slope).arrises;
        const seating = rabbetSeating(profile, { slope, contents: [] });
        if (seating.possible && wallMouth.out < wallLedge.out - 1e-9) expect(seating.opening).toEqual(wallMouth);
      }),
    );
    // 10 + (0.1 - 10) is not 0.1 in doubles.
    const arrises = { sightBack: { x: -5, y: 10 }, wallLedge: { x: 10, y: 10 }, wallMouth: { x: 0.1, y: 0 } };
    expect(hold({ outline: [], arrises }, { slope: 0, contents: [] }).opening).toEqual({ out: 0.1, up: 0 });
  });

  test("reaches no farther past a flared wall's corner than the corner, when the ledge falls toward it", () => {
    const flared = profileFromPoints({
      outline: [
        { x: 0, y: 10 },
        { x: 8, y: 9 },
        { x: 12, y: 0 },
        { x: 40, y: 0 },
        { x: 40, y: 20 },
        { x: 0, y: 20 },
      ],
      arrises: { sightBack: 0, wallLedge: 1, wallMouth: 2 },
    });
    const tight = hold(flared, { slope: 0, contents: glazing });
    expect(tight).toMatchObject({ bearsOn: "corner", opening: { out: 8, up: 9 }, bearing: { out: 8, up: 9 }, lap: 8 });
    // With a clearance of 2 they rise a quarter of the ledge's fall of 1.
    const loose = hold(flared, { slope: 0, contents: glazing, clearance: 2 });
    expect(loose).toMatchObject({ opening: { out: 8, up: 9 }, bearing: { out: 6, up: 9.25 }, lap: 6 });
  });

  test("cannot hold contents below a mouth that is higher than the sight edge, whichever way the wall leans", () => {
    const hooked = profileFromPoints({
      outline: [
        { x: 0, y: 4 },
        { x: 8, y: 14 },
        { x: 7, y: 6 },
        { x: 40, y: 6 },
        { x: 40, y: 20 },
        { x: 0, y: 20 },
      ],
      arrises: { sightBack: 0, wallLedge: 1, wallMouth: 2 },
    });
    expect(rabbetSeating(hooked, { slope: 0, contents: [] })).toMatchObject({ possible: false, reason: "past-mouth" });
  });

  test("decides the opening without the contents, and levelWidth starts there", () => {
    fc.assert(
      fc.property(anyProfile, slopes(-89, 89), between(0.1, 30), (profile, slope, thickness) => {
        const thin = rabbetSeating(profile, { slope, contents: [] });
        const thick = rabbetSeating(profile, { slope, contents: [{ name: "panel", thickness }] });
        expect(thick.possible).toBe(thin.possible);
        if (!thin.possible || !thick.possible) return;
        expect(thick.opening).toEqual(thin.opening);
        const { outerBack } = sectionAt(profile, slope).arrises;
        expect(levelWidth(profile, { slope, to: "outerBack" })).toBeCloseTo(outerBack.out - thin.opening.out, 10);
      }),
    );
  });

  test("scales bit for bit", () => {
    const grown = (value: unknown): unknown =>
      typeof value === "number"
        ? value * 1024
        : Array.isArray(value)
          ? value.map(grown)
          : typeof value === "object" && value !== null
            ? Object.fromEntries(Object.entries(value).map(([key, one]) => [key, key === "slope" ? one : grown(one)]))
            : value;
    fc.assert(
      fc.property(
        anyProfile,
        slopes(-90, 90),
        between(0.1, 30),
        between(0, 2),
        (profile, slope, thickness, clearance) => {
          const small = { slope, contents: [{ name: "panel", thickness }], clearance };
          const large = {
            slope,
            contents: [{ name: "panel", thickness: thickness * 1024 }],
            clearance: clearance * 1024,
          };
          expect(rabbetSeating(grown(profile) as Rabbeted, large)).toEqual(grown(rabbetSeating(profile, small)));
        },
      ),
    );
  });

  test("takes frozen and parsed profiles, reads only three arrises and returns clean numbers", () => {
    fc.assert(
      fc.property(anyProfile, slopes(-90, 90), between(0, 3), (profile, slope, clearance) => {
        const seating = rabbetSeating(deepFrozen(profile), deepFrozen({ slope, contents: glazing, clearance }));
        numbersAreClean(seating);
        expect(JSON.parse(JSON.stringify(seating))).toEqual(seating);
        const { sightBack, wallLedge, wallMouth } = profile.arrises;
        const parsed = JSON.parse(JSON.stringify({ arrises: { sightBack, wallLedge, wallMouth } })) as typeof profile;
        expect(rabbetSeating(parsed, { slope, contents: glazing, clearance })).toEqual(seating);
      }),
    );
  });

  test("stays finite a hair from upright, and at the ends of the range of lengths", () => {
    const cases = [
      { profile: rabbeted, slope: 90 - 1e-14 },
      { profile: rabbeted, slope: -90 + 1e-14 },
      { profile: molding({ width: 1e100, thickness: 1e100, rabbet: { width: 1e99, depth: 1e99 } }), slope: 90 - 1e-14 },
      { profile: molding({ width: 1e100, thickness: 1e100, rabbet: { width: 1e99, depth: 1e99 } }), slope: -30 },
      { profile: molding({ width: 1e-99, thickness: 1e-99, rabbet: { width: 1e-100, depth: 1e-100 } }), slope: 30 },
    ];
    for (const { profile, slope } of cases) {
      numbersAreClean(rabbetSeating(profile, { slope, contents: [{ name: "panel", thickness: 1e100 }] }));
    }
  });

  test("asks for the rabbet's arrises in types, and tells the two answers apart", () => {
    const plain = molding({ width: 40, thickness: 20 });
    // @ts-expect-error -- a molding without a rabbet has no wall
    expect(() => rabbetSeating(plain, { slope: 0, contents: [] })).toThrow();
    const seating = rabbetSeating(rabbeted, { slope: 0, contents: [] });
    // @ts-expect-error -- only what is possible has an opening
    expect(seating.opening).toEqual({ out: 8, up: 10 });
    if (seating.possible) expectTypeOf(seating.lap).toEqualTypeOf<number>();
    else expectTypeOf(seating.reason).toEqualTypeOf<SeatingReason>();
  });
});

describe("rabbetSeating refuses", () => {
  const at =
    (options: unknown, profile: unknown = rabbeted) =>
    () =>
      rabbetSeating(profile as typeof rabbeted, options as RabbetSeatingOptions);
  refuses([
    ["Expected `options` to be an object, got null", "type", "options", at(null)],
    [
      "Expected `slope` to be degrees from -90 to 90, got 100 (number)",
      "range",
      "slope",
      at({ slope: 100, contents: [] }),
    ],
    ["Expected `contents` to be an array of contents, got undefined", "missing", "contents", at({ slope: 0 })],
    ["Expected `contents[0]` to be an object, got 3 (number)", "type", "contents[0]", at({ slope: 0, contents: [3] })],
    [
      "Expected `contents[1].name` to be a string that is not empty, got undefined",
      "missing",
      "contents[1].name",
      at({ slope: 0, contents: [glazing[0], { thickness: 2 }] }),
    ],
    [
      "Expected `contents[0].thickness` to be a positive length (1e-100 to 1e100), got 0 (number)",
      "range",
      "contents[0].thickness",
      at({ slope: 0, contents: [{ name: "air", thickness: 0 }] }),
    ],
    [
      "Expected `clearance` to be zero or a positive length (up to 1e100), got -1 (number)",
      "range",
      "clearance",
      at({ slope: 0, contents: [], clearance: -1 }),
    ],
    [
      "Expected `profile.arrises.wallLedge` to be an object, got undefined",
      "missing",
      "profile.arrises.wallLedge",
      at({ slope: 0, contents: [] }, molding({ width: 40, thickness: 20 })),
    ],
  ]);
});
