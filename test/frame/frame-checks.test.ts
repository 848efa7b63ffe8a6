import { frameCheckText } from "miterwright/words";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ringChecks, type RingCheck } from "miterwright/closure";
import { planFrame, type FrameBrief, type FrameCheck, type FramePlan, type ProfileBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { tableSaw } from "miterwright/saw";
import { RADIAN } from "../closure/assemble.js";
import { briefs, plain, rabbeted, throughJson } from "./briefs.js";
import { sawnFrame, setTo } from "./sawn-frame.js";

function planOf(changes: Partial<ProfileBrief>): FramePlan {
  return planFrame({ sides: 6, profile: rabbeted, opening: { side: 400 }, ...changes } as ProfileBrief);
}

function checkOf(plan: FramePlan, code: FrameCheck["code"]): FrameCheck {
  const check = plan.checks.find((one) => one.code === code);
  if (check === undefined) throw new Error(`no check ${code}`);
  return check;
}

describe("what to measure", () => {
  test("is told in the order of work, every check once, few enough for a sheet", () => {
    const told = ({ checks }: FramePlan): string[] => checks.map(({ when, code }) => `${when} ${code}`);
    expect(told(planOf({ slope: 20 }))).toEqual([
      "pieces piece-length",
      "pieces level-width",
      "dry miter-sum",
      "dry corner-angle",
      "dry last-joint",
      "dry opening-across-flats",
      "dry opening-across-corners",
      "dry overall-across-flats",
      "dry overall-across-corners",
      "dry flatness",
      "dry slope",
      "glued glued-across-flats",
      "glued glued-across-corners",
      "glued glued-flatness",
    ]);
    expect(told(planOf({}))).toEqual(told(planOf({ slope: 20 })).filter((one) => one !== "dry slope"));
  });

  test("has what ringChecks says at the opening and at the outermost line, whatever the frame", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const plan = planFrame(brief);
        const { sides, slope, opening, overall } = plan.geometry;
        const { acceptedGap } = plan.brief;
        const at = (apothem: number): readonly RingCheck[] =>
          ringChecks({
            sides,
            slope,
            width: plan.assembly.jointWidth,
            acceptedGap,
            apothem,
            thickness: overall.height!,
          });
        // A rabbet's wall is measured at its edge at the back, wherever on it the contents touch.
        const inside = plan.geometry.seating === null ? opening.apothem : plan.geometry.polygons["wallMouth"]!.apothem;
        const [inner, outer] = [at(inside), at(overall.polygon.apothem)];
        const across = sides % 2 === 0 ? "side-to-side" : "corner-to-side";
        const pairs: readonly [FrameCheck["code"], readonly RingCheck[], RingCheck["code"]][] = [
          ["corner-angle", inner, "corner-angle"],
          ["last-joint", inner, "last-joint"],
          ["opening-across-flats", inner, across],
          ["opening-across-corners", inner, "corner-to-corner"],
          ["overall-across-flats", outer, across],
          ["overall-across-corners", outer, "corner-to-corner"],
          ["glued-across-flats", inner, across],
          ["glued-across-corners", inner, "corner-to-corner"],
        ];
        const sloping: typeof pairs = slope === 0 ? [] : [["slope", inner, "slope"]];
        for (const [code, checks, name] of [...pairs, ...sloping]) {
          const check = checkOf(plan, code);
          const ring = checks.find((one) => one.code === name)!;
          expect(check.kind).toBe(ring.kind);
          expect(Math.abs(check.value - ring.value)).toBeLessThanOrEqual(1e-9 * Math.abs(ring.value));
          // The tolerance is the difference of two measures: it keeps what their size leaves.
          expect(Math.abs(check.tolerance! - ring.tolerance)).toBeLessThan(1e-12 * Math.abs(ring.value) + 1e-12);
        }
        expect(checkOf(plan, "piece-length").tolerance).toBe(
          inner.find(({ code }) => code === "piece-length")!.tolerance,
        );
        expect(checkOf(plan, "miter-sum").tolerance).toBeNull();
        expect(checkOf(plan, "level-width").tolerance).toBeNull();
      }),
      { numRuns: 60 },
    );
  });

  test("keeps within its tolerances on frames put together in space that gape by the accepted gap, and not on worse ones", () => {
    const saw = tableSaw({ bevel: { left: 60, right: 60, reads: "from-vertical", step: 0.5 } });
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 14 }), fc.constantFrom(1, -1), (sides, way) => {
        const plan = planOf({ sides, saw, profile: plain });
        const { first, second } = plan.sawing.lay!;
        const { miter } = plan.assembly.tolerance!.shared;
        const worst = (share: number): number => {
          const size = first.miter.degrees + way * share * miter!;
          const { poses, blanks, gap } = sawnFrame(plan, {
            first: setTo(first, size, 0),
            second: setTo(second, size, 0),
          });
          expect(gap / plan.brief.acceptedGap).toBeCloseTo(share, 1);
          const far = Math.floor(sides / 2);
          const corner = (index: number): readonly [number, number] => {
            const { rows, origin } = poses[index]!;
            const point = blanks[index]!.start.inside;
            return [
              rows[0][0] * point[0] + rows[0][1] * point[1] + origin[0],
              rows[1][0] * point[0] + rows[1][1] * point[1] + origin[1],
            ];
          };
          // An odd ring has the open joint now in the longer, now in the shorter part between two corners.
          const off = [far, sides - far].map((to) =>
            Math.abs(Math.hypot(corner(0)[0] - corner(to)[0], corner(0)[1] - corner(to)[1]) - value),
          );
          return Math.max(...off);
        };
        const { value, tolerance } = checkOf(plan, "opening-across-corners");
        expect(worst(0.98)).toBeLessThan(tolerance!);
        expect(worst(1.1)).toBeGreaterThan(tolerance!);
      }),
      { numRuns: 30 },
    );
  });

  test("measures the pieces where the tape goes", () => {
    const plan = planOf({ slope: 20 });
    const measure = plan.sawing.operations.at(-1)!.measure!;
    expect(checkOf(plan, "piece-length").value).toBe(measure.length);
    expect(frameCheckText(checkOf(plan, "piece-length"), plan.geometry)).toBe(
      "length of every piece along the outer edge at the back, one against the other",
    );
    // With no lay there is no tape; then the longest line will do.
    const none = planOf({
      saw: tableSaw({
        miter: { left: 1, right: 1, reads: "from-square", step: 1 },
        bevel: { left: 1, right: 0, reads: "from-vertical", step: 1 },
      }),
    });
    expect(checkOf(none, "piece-length").value).toBe(none.geometry.pieces[0].longest.length);
  });

  test("takes flatness over the height of the joint, at the corners it stands on", () => {
    const flat = planOf({ profile: plain });
    const outer = (400 / 2 / Math.tan(30 * RADIAN) + 40) / Math.cos(30 * RADIAN);
    expect(checkOf(flat, "flatness").tolerance).toBeCloseTo((outer * 0.25) / 20, 9);
    // An upright box stands on 20 of thickness, 40 high; its inner edges are the lower ones if it leans outward at all.
    expect(checkOf(planOf({ profile: plain, slope: 90 }), "flatness").tolerance).toBeCloseTo((400 * 0.25) / 40, 9);
    const reverse = planOf({ profile: plain, slope: -90 });
    expect(checkOf(reverse, "flatness").tolerance).toBeCloseTo(
      (reverse.geometry.overall.polygon.circumradius * 0.25) / 40,
      9,
    );
  });

  test("takes flatness at the innermost line where a rabbeted frame rises outward, before and after gluing", () => {
    for (const [sides, slope] of [
      [5, 20],
      [6, 20],
      [6, 0.5],
    ] as const) {
      const plan = planOf({ sides, slope, acceptedGap: 0.3 });
      const { polygons, overall, pieces } = plan.geometry;
      const lowest = polygons[pieces[0].shortest.arris!]!;
      const radius = lowest.apothem / Math.cos(Math.PI / sides);
      for (const code of ["flatness", "glued-flatness"] as const) {
        const check = checkOf(plan, code);
        expect(check.value).toBe(0);
        expect(check.tolerance! / ((radius * 0.3) / overall.height!)).toBeCloseTo(1, 9);
      }
    }
  });

  test("has no tolerance of flatness from a gap as high as the joint, and one from a hair less", () => {
    const low = { profile: molding({ width: 40, thickness: 20 }) };
    for (const code of ["flatness", "glued-flatness"] as const) {
      expect(checkOf(planOf({ ...low, acceptedGap: 20 }), code).tolerance).toBeNull();
      expect(checkOf(planOf({ ...low, acceptedGap: 19.999 }), code).tolerance).not.toBeNull();
    }
  });

  test("prints its tolerances as an octagon of 100 gives them by hand", () => {
    // Plain boards 40 wide and 20 thick round an opening of side 100, a gap of 0.5; t = 22.5 degrees.
    const t = 22.5 * RADIAN;
    const { checks } = planOf({ sides: 8, profile: plain, opening: { side: 100 }, acceptedGap: 0.5 });
    // The gap is the joint's width, 40 / cos t, times the open angle, which all joints share.
    const open = 0.5 / (40 / Math.cos(t));
    const share = open / 16;
    const chordOff = (side: number): number =>
      Math.max(
        ...[t - share, t + share].map((x) => Math.abs((side * Math.sin(4 * x)) / Math.sin(x) - side / Math.sin(t))),
      );
    const flatsOff = (side: number): number =>
      Math.max(
        ...[t - share, t + share].map((x) =>
          Math.abs((side * Math.sin(4 * x) ** 2) / Math.tan(x) - side / Math.tan(t)),
        ),
      );
    const outer = 100 + 2 * 40 * Math.tan(t);
    const told = Object.fromEntries(checks.map(({ code, tolerance }) => [code, tolerance]));
    expect(told).toEqual({
      "piece-length": expect.closeTo((0.5 * Math.sin(t)) / 2, 12) as unknown,
      "level-width": null,
      "miter-sum": null,
      "corner-angle": expect.closeTo(open / RADIAN / 8, 9) as unknown,
      "last-joint": 0.5,
      "opening-across-flats": expect.closeTo(flatsOff(100), 9) as unknown,
      "opening-across-corners": expect.closeTo(chordOff(100), 9) as unknown,
      "overall-across-flats": expect.closeTo(flatsOff(outer), 9) as unknown,
      "overall-across-corners": expect.closeTo(chordOff(outer), 9) as unknown,
      flatness: expect.closeTo(((outer / 2 / Math.sin(t)) * 0.5) / 20, 9) as unknown,
      "glued-across-flats": expect.closeTo(flatsOff(100), 9) as unknown,
      "glued-across-corners": expect.closeTo(chordOff(100), 9) as unknown,
      "glued-flatness": expect.closeTo(((outer / 2 / Math.sin(t)) * 0.5) / 20, 9) as unknown,
    });
  });

  test("says where to measure, in words and by the arris, with a rabbet, without one, and on a slope", () => {
    const said = (plan: FramePlan): Record<string, string> =>
      Object.fromEntries(
        plan.checks.map((check) => [check.code, `${check.arris ?? "-"}: ${frameCheckText(check, plan.geometry)}`]),
      );
    const odd = said(planOf({ sides: 5 }));
    expect(odd["level-width"]).toBe("wallMouth: width taken level, from the rabbet's wall");
    expect(odd["opening-across-flats"]).toBe("wallMouth: opening, in the rabbet, corner to opposite side");
    expect(odd["opening-across-corners"]).toBe("wallMouth: opening, in the rabbet, corner to farthest corner");
    expect(odd["glued-across-flats"]).toBe(
      "wallMouth: opening again, before the panel is cut, corner to opposite side",
    );
    expect(odd["overall-across-flats"]).toMatch(/^outer(?:Face|Back): overall, corner to opposite side$/);
    expect(odd["miter-sum"]).toBe("-: 5 corners, two plan miters each, add up to");
    expect(said(planOf({ sides: 8 }))["overall-across-flats"]).toMatch(/ side to opposite side$/);
    expect(said(planOf({ sides: 9 }))["overall-across-flats"]).toMatch(/ corner to opposite side$/);
    expect(checkOf(planOf({ sides: 5 }), "miter-sum").value).toBe(360);
    const along = planOf({ sides: 5, slope: 20 }).checks.filter(({ arris }) => arris === null);
    expect(along.map(({ code }) => code)).toEqual([
      "miter-sum",
      "corner-angle",
      "last-joint",
      "flatness",
      "slope",
      "glued-flatness",
    ]);
    const bare = said(planOf({ profile: plain }));
    expect(bare["level-width"]).toMatch(/^sight(?:Face|Back): width taken level, from the inside$/);
    expect(bare["opening-across-flats"]).toMatch(/^sight(?:Face|Back): opening, inside, side to opposite side$/);
    const { checks, geometry } = planOf({ slope: 20 });
    const fromMouth = geometry.pieces[0].longest.out - geometry.arrises["wallMouth"]!.out;
    expect(checks.find(({ code }) => code === "level-width")!.value).toBeCloseTo(fromMouth, 9);
    const sloping = said(planOf({ slope: 20 }));
    expect(sloping["level-width"]).toBe("wallMouth: width taken level, from the rabbet wall at the back");
    expect(sloping["opening-across-flats"]).toBe(
      "wallMouth: opening, at the rabbet wall at the back, side to opposite side",
    );
    expect(sloping["glued-across-corners"]).toBe(
      "wallMouth: opening again, at the rabbet wall at the back, corner to farthest corner",
    );
    // By a slope that no tape can find, the wall's edge is not moved.
    expect(said(planOf({ slope: 1e-9 }))["opening-across-flats"]).toBe(
      "wallMouth: opening, in the rabbet, side to opposite side",
    );
    const level: FrameBrief = { sides: 6, opening: { side: 200 }, measured: { levelWidth: 40, lap: 6 } };
    expect(said(planFrame(level))["opening-across-flats"]).toBe("wall: opening, in the rabbet, side to opposite side");
  });

  test("keeps the opening of a flat frame to the last digit", () => {
    for (let sides = 3; sides <= 24; sides += 1) {
      const plan = planOf({ sides, opening: { acrossCorners: 300 } });
      const { acrossFlats, acrossCorners } = plan.geometry.opening;
      expect(checkOf(plan, "opening-across-flats").value).toBe(acrossFlats);
      expect(checkOf(plan, "opening-across-corners").value).toBe(acrossCorners);
    }
  });

  test("of a molding known by level measures has what follows without a section", () => {
    const brief: FrameBrief = { sides: 8, slope: -30, opening: { side: 200 }, measured: { levelWidth: 40, lap: 6 } };
    const plan = planFrame(brief);
    expect(checkOf(plan, "flatness").tolerance).toBeNull();
    expect(checkOf(plan, "glued-flatness").tolerance).toBeNull();
    // The lip is part of the joint.
    expect(plan.assembly.jointWidth).toBe(46);
    const ring = ringChecks({
      sides: 8,
      slope: -30,
      width: 46,
      acceptedGap: 0.25,
      apothem: plan.geometry.opening.apothem,
    });
    expect(checkOf(plan, "slope").tolerance).toBe(ring.find(({ code }) => code === "slope")!.tolerance);
  });

  test("has no tolerance from a gap as wide as the joint", () => {
    const plan = planFrame({ sides: 9, measured: { levelWidth: 0.25 }, opening: { side: 1e6 } });
    const none = ["corner-angle", "opening-across-flats", "overall-across-corners", "glued-across-flats"] as const;
    for (const code of none) expect(checkOf(plan, code).tolerance).toBeNull();
    expect(checkOf(plan, "last-joint").tolerance).toBe(0.25);
    const sloping = planFrame({ sides: 9, slope: 20, measured: { levelWidth: 0.25 }, opening: { side: 1e6 } });
    expect(checkOf(sloping, "slope").tolerance).toBeNull();
  });

  test.each<[string, Partial<ProfileBrief>]>([
    ["three sides", { sides: 3, opening: { side: 500 } }],
    ["a thousand", { sides: 1000, opening: { acrossFlats: 1e5 } }],
    ["upright", { slope: 90 }],
    ["nearly upright", { slope: 89.9 }],
    ["nearly upright, the sight edge up", { slope: -89.9 }],
    ["tiny", { profile: molding({ width: 1e-98, thickness: 1e-99 }), opening: { side: 1e-97 }, acceptedGap: 1e-100 }],
    ["huge", { profile: molding({ width: 1e98, thickness: 1e97 }), opening: { side: 1e99 }, acceptedGap: 1e95 }],
    ["a hair of a gap", { acceptedGap: 1e-100 }],
  ])("of a frame with %s is finite, positive, and survives JSON", (_, brief) => {
    const { checks } = planOf({ profile: plain, ...brief });
    expect(throughJson(checks)).toEqual(checks);
    for (const { value, tolerance, code } of checks) {
      expect(Number.isFinite(value) && !Object.is(value, -0)).toBe(true);
      if (tolerance !== null) expect([code, tolerance >= 0 && Number.isFinite(tolerance)]).toEqual([code, true]);
    }
    const codes = checks.map(({ code }) => code);
    expect(new Set(codes).size).toBe(codes.length);
  });

  test("scales with the frame and halves with the gap", () => {
    const one = planOf({ sides: 7, slope: 20, acceptedGap: 0.2 });
    const half = planOf({ sides: 7, slope: 20, acceptedGap: 0.1 });
    const large = planFrame({
      sides: 7,
      slope: 20,
      acceptedGap: 1.6,
      opening: { side: 3200 },
      profile: molding({ width: 52 * 8, thickness: 19 * 8, rabbet: { width: 72, depth: 88 } }),
    });
    for (const [index, { value, tolerance, kind }] of one.checks.entries()) {
      const factor = kind === "length" ? 8 : 1;
      expect(large.checks[index]!.value).toBeCloseTo(value * factor, 8);
      if (tolerance === null) continue;
      expect(large.checks[index]!.tolerance! / tolerance).toBeCloseTo(factor, 8);
      expect(half.checks[index]!.tolerance! / tolerance).toBeCloseTo(0.5, 2);
    }
  });
});
