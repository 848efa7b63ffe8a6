import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ringClosure } from "miterwright/closure";
import {
  correctFromGap,
  sawPlan,
  frameGeometry,
  planFrame,
  type SawPlanOptions,
  type TestCuts,
} from "miterwright/frame";
import { testCutsText, type OperationText } from "miterwright/words";
import type { Formats } from "miterwright/units";
import { molding } from "miterwright/profile";
import { miterSaw } from "miterwright/saw";
import { formatsWith, loose } from "../formats.js";
import { plain, rabbeted, throughJson } from "./briefs.js";

const own = {
  length: (value: number): string => `${Number(value.toFixed(2))} mm`,
  angle: (degrees: number): string => `${Number(degrees.toFixed(4))}°`,
};

/** The test cuts in words, with spaces that compare easily. */
function told(testCuts: TestCuts, formats: Partial<Formats> = own): OperationText {
  return loose(testCutsText(testCuts, { formats: formatsWith(formats) }));
}

function proofOf(sides: number, slope: number, options: SawPlanOptions = {}): TestCuts {
  const geometry = frameGeometry({ sides, slope, profile: plain, opening: { side: 400 } });
  return sawPlan(geometry, { kerf: 3, ...options }).testCuts!;
}

/** A chain of pieces laid out in a plane from their outer long points: each as long as told, each turned by `turn` against the one before. */
function chainEnd(pieces: number, length: number, turn: number): { x: number; y: number; heading: number } {
  let [x, y, heading] = [0, 0, 0];
  for (let piece = 0; piece < pieces; piece += 1) {
    x += length * Math.cos(heading);
    y += length * Math.sin(heading);
    heading += turn;
  }
  return { x, y, heading };
}

describe("the limits of the test cuts", () => {
  const cases = fc.record({
    sides: fc.integer({ min: 3, max: 24 }),
    width: fc.double({ min: 15, max: 90, noNaN: true }),
    gap: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
  });

  test("are those of rings that are laid out piece by piece with the error", () => {
    fc.assert(
      fc.property(cases, ({ sides, width, gap: acceptedGap }) => {
        const profile = molding({ width, thickness: 15 });
        const geometry = frameGeometry({ sides, profile, opening: { side: 400 } });
        const proof = sawPlan(geometry, { acceptedGap }).testCuts!;
        const half = Math.PI / sides;
        const short = (proof.perEnd * Math.PI) / 180;
        const turn = 2 * half - 2 * short;
        // The whole ring: all turns together fall short of a full one, seen across the joint line.
        const open = 2 * Math.PI - sides * turn;
        expect((width / Math.cos(half)) * open).toBeCloseTo(proof.ring.accept, 9);
        expect(proof.ring).toEqual({ pieces: sides, accept: acceptedGap });
        // Two legs of the told length, one of them off by its share: so far apart are their ends.
        const [leg, planned] = [turn, 2 * half].map((angle) => chainEnd(2, proof.pair.legs, angle)) as [
          ReturnType<typeof chainEnd>,
          ReturnType<typeof chainEnd>,
        ];
        expect(Math.hypot(leg.x - planned.x, leg.y - planned.y) / acceptedGap).toBeCloseTo(1, 2);
        if (sides % 2 === 1) {
          expect(proof.half).toBeNull();
          return;
        }
        // Half the ring, its first end cut lying on the straightedge: how far the far end's outer corner stands off that line.
        const end = chainEnd(proof.half!.pieces, proof.length, turn);
        const edge = half - short;
        // The end cut leaves the outer corner inward, turned from the first piece's direction by a quarter less the plan angle of the end.
        const line = { x: Math.cos(Math.PI / 2 - edge), y: Math.sin(Math.PI / 2 - edge) };
        const off = Math.abs(end.x * line.y - end.y * line.x);
        expect(off / proof.half!.accept).toBeCloseTo(1, 2);
      }),
    );
  });

  test("are those of the ring's closing in space, splayed too", () => {
    for (const [sides, slope] of [
      [8, 0],
      [8, 30],
      [5, -40],
    ] as const) {
      const plan = planFrame({ sides, slope, profile: plain, opening: { side: 400 } });
      const { miter, bevel } = plan.geometry.pieces[0].end;
      const off = plan.assembly.tolerance!.shared.miter!;
      const end = { miter: miter - off, bevel };
      const { jointGap } = ringClosure({
        pieces: Array.from({ length: sides }, () => ({ length: 150, start: end, end })),
        at: "outside",
        width: plan.assembly.jointWidth,
        slope,
      });
      expect(Math.abs(jointGap) / plan.sawing.testCuts!.ring.accept).toBeCloseTo(1, 1);
    }
  });

  test("ask for pieces that a hold-down holds, of which enough is left inside, in the plan's unit", () => {
    const proof = proofOf(6, 0);
    expect(proof.length).toBe(150);
    expect(proof.scrap).toBeCloseTo(6 * 150 + (7 * 3) / Math.cos(Math.PI / 6), 9);
    const wide = molding({ width: 200, thickness: 20 });
    const broad = sawPlan(frameGeometry({ sides: 4, profile: wide, opening: { side: 900 } })).testCuts!;
    expect(broad.length - 2 * 200).toBeCloseTo(200, 9);
    const inch = frameGeometry({ sides: 6, profile: molding({ width: 1.5, thickness: 0.75 }), opening: { side: 12 } });
    expect(sawPlan(inch, { unit: "in" }).testCuts!.length).toBe(6);
  });

  test("are none where the accepted gap is as wide as the joint, or no lay works", () => {
    const geometry = frameGeometry({ sides: 6, profile: plain, opening: { side: 400 } });
    expect(sawPlan(geometry, { acceptedGap: 40 }).testCuts).toBeNull();
    expect(sawPlan(geometry, { lay: 10 }).testCuts).toBeNull();
  });
});

describe("the test is in proportion to the job", () => {
  /** A flat frame of boards 1 in wide, in inches, by the longest line of its pieces. */
  function ofInches(sides: number, longest: number): TestCuts {
    const profile = molding({ width: 1, thickness: 0.75 });
    const geometry = frameGeometry({ sides, profile, at: "outerBack", opening: { side: longest } });
    return sawPlan(geometry, { unit: "in", kerf: 1 / 8 }).testCuts!;
  }
  const cut = (sides: number): number => 1 / 8 / Math.cos(Math.PI / sides);
  const scrapOf = (pieces: number, sides: number): number => pieces * (6 + cut(sides)) + cut(sides);

  test("no ring of 73 in is asked for where the frame takes 40 in of molding", () => {
    const small = ofInches(12, 40 / 12 - cut(12));
    expect(small.molding).toBeCloseTo(40, 9);
    expect(small.ringScrap).toBeCloseTo(scrapOf(12, 12), 9);
    expect(Math.floor(small.ringScrap)).toBe(73);
    expect(small.proof).toBe("own-pieces");
    expect(small.scrap).toBeCloseTo(scrapOf(2, 12), 9);
    expect(small.spare).toBeCloseTo(2 * cut(12), 12);
    const inches = { length: (value: number): string => `${value.toFixed(1)} in`, angle: own.angle };
    expect(told(small, inches).lines.slice(2)).toEqual([
      "A ring of 12 such pieces of 6.0 in would take 73.7 in of scrap, much for a frame that takes 40.0 in of molding. So prove the setting on the frame's own pieces: cut them 0.3 in longer than planned and close them without glue. The last joint shows its gap in full where the others only slide; where they open too, as little as a third of it.",
      expect.stringMatching(/^Open outside by more than .* Cut both ends again with the new setting\.$/) as unknown,
      expect.stringMatching(/^Within .*: leave the setting and cut the pieces to their length\.$/) as unknown,
    ]);
  });

  test("half a ring on a straightedge does for an even number of sides, the pieces themselves for an odd one", () => {
    expect(ofInches(8, 9).proof).toBe("half-ring");
    expect(ofInches(8, 9).scrap).toBeCloseTo(scrapOf(4, 8), 9);
    expect(ofInches(8, 14).proof).toBe("ring");
    expect(ofInches(7, 9).proof).toBe("own-pieces");
    expect(ofInches(7, 14).proof).toBe("ring");
    expect(told(ofInches(8, 9)).lines[2]).toMatch(
      /^A ring of 8 such pieces .* So put 4 of them together \([\d.]+ mm of scrap\), one end tight on a straightedge: /,
    );
  });

  test("no test takes more scrap than half of the frame's molding, but for two pieces", () => {
    const cases = fc.record({
      sides: fc.integer({ min: 3, max: 40 }),
      longest: fc.double({ min: 2.5, max: 60, noNaN: true }),
    });
    fc.assert(
      fc.property(cases, ({ sides, longest }) => {
        fc.pre(longest > 2 * Math.tan(Math.PI / sides) + 0.1);
        const { proof, scrap, molding: own } = ofInches(sides, longest);
        if (proof !== "own-pieces") expect(scrap).toBeLessThanOrEqual(own / 2);
      }),
    );
  });

  test("half a ring that turns too little stands off the straightedge, one that turns too much goes past it", () => {
    for (const sides of [4, 6, 8, 12]) {
      for (const short of [0.01, -0.01]) {
        const [turn, edge] = [(2 * Math.PI) / sides - 2 * short, Math.PI / sides - short];
        const end = chainEnd(sides / 2, 6, turn);
        // The pieces lie to the right of the straightedge, seen along it from the tight end.
        const off = end.x * Math.cos(edge) - end.y * Math.sin(edge);
        expect(Math.sign(off)).toBe(Math.sign(short));
      }
    }
  });
});

describe("the loop of cutting, reading and correcting", () => {
  test.each([
    [8, 0, undefined],
    [8, 30, undefined],
    [5, 20, miterSaw()],
    [12, -35, miterSaw()],
  ])("ends within the accepted gap after a few rings, for %d sides sloping %d", (sides, slope, saw) => {
    const brief = { sides, slope, profile: rabbeted, opening: { side: 400 } };
    const plan = planFrame(saw === undefined ? brief : { ...brief, saw });
    const { accept } = plan.sawing.testCuts!.ring;
    const { miter, bevel } = plan.geometry.pieces[0].end;
    // The scales lie: by so much the saw cuts more than they show.
    const lie = { miter: 0.4, bevel: slope === 0 ? 0 : -0.3 };
    let shown = { miter: Math.abs(miter), bevel: Math.abs(bevel) };
    const gaps: number[] = [];
    for (let ring = 0; ring < 5; ring += 1) {
      const end = {
        miter: shown.miter + lie.miter,
        bevel: (slope < 0 ? -1 : 1) * (shown.bevel + lie.bevel),
      };
      const closed = ringClosure({
        pieces: Array.from({ length: sides }, () => ({ length: 150, start: end, end })),
        at: "outside",
        width: plan.assembly.jointWidth,
        slope,
      });
      gaps.push(Math.abs(closed.jointGap));
      if (gaps.at(-1)! <= accept) break;
      const open = closed.opens === "outside" ? ("outside" as const) : ("inside" as const);
      const correction = correctFromGap(plan, { seenGap: gaps.at(-1)!, open, slope: closed.slope, shown });
      shown = { miter: correction.first.miter.reading, bevel: correction.first.bevel.reading };
    }
    expect(gaps[0]).toBeGreaterThan(accept);
    expect(gaps.at(-1)).toBeLessThanOrEqual(accept);
    expect(gaps.length).toBeLessThanOrEqual(3);
  });
});

describe("the words", () => {
  test("for a flat frame, flipped, with an even number of sides", () => {
    expect(told(proofOf(8, 0))).toEqual({
      title: "Prove the setting on scrap",
      lines: [
        "Cut scrap of the molding's profile as in the steps, in a hold-down: one first end and, flipped and with the gauge swung over, one second end.",
        "Together they make 135° from above, inside. Legs under 346.37 mm do not show there what opens the last joint by 0.25 mm.",
        "So close a ring of 8 such pieces of 150 mm (1229.22 mm of scrap). First lay half of it on a straightedge, one end tight: the outer corner of the other may stand off by 0.57 mm, however the joints give. The last joint shows its gap in full where the others only slide; where they open too, as little as a third of it.",
        "Open outside by more than 0.25 mm: more angle at every end, seen from above 0.0207° for each 0.25 mm; inside: less. Cut new pieces and read again.",
        "Within 0.25 mm: leave the setting and cut the molding.",
      ],
    });
  });

  test("for a splayed frame, slid past the blade, with an odd number of sides", () => {
    const { lines } = told(proofOf(5, 30, { saw: miterSaw() }));
    expect(lines.slice(0, 3)).toEqual([
      "Cut scrap of the molding's profile as in the steps, in a hold-down: one first end and, slid past the blade and with both scales set over, one second end.",
      "Together they make 108° from above, inside, and 145.8177° between the faces. Legs under 275.9 mm do not show there what opens the last joint by 0.25 mm.",
      "So close a ring of 5 such pieces of 150 mm (772.25 mm of scrap); note its slope with the joints tight. The last joint shows its gap in full where the others only slide; where they open too, as little as a third of it.",
    ]);
  });

  test("leave out an angle that is written as none", () => {
    const coarse = { ...own, angle: (degrees: number): string => `${degrees.toFixed(1)}°` };
    expect(told(proofOf(8, 0), coarse).lines[3]).toBe(
      "Open outside by more than 0.25 mm: more angle at every end; inside: less. Cut new pieces and read again.",
    );
  });

  test("write gaps finely where the caller can, and scrap like other lengths", () => {
    const { lines } = told(proofOf(8, 0), {
      length: (value) => `${value.toFixed(0)} mm`,
      small: (value) => `${value.toFixed(3)} mm, finely`,
      angle: (degrees) => `${degrees.toFixed(1)}°`,
    });
    expect(lines[1]).toContain("what opens the last joint by 0.250 mm, finely.");
    expect(lines[2]).toMatch(/pieces of 150 mm \(\d+ mm of scrap\).*may stand off by \d\.\d{3} mm, finely, however/);
  });

  test("come from a plan that was read back from JSON", () => {
    const proof = proofOf(8, 30);
    expect(told(throughJson(proof))).toEqual(told(proof));
  });

  test("are refused for what is no proof", () => {
    expect(() => told(null as never)).toThrow("Expected `testCuts` to be an object, got null");
    expect(() => told({} as never)).toThrow(
      'Expected `testCuts.move` to be one of "flip-end-for-end", "slide-past-the-blade", got undefined',
    );
    expect(() => testCutsText(proofOf(8, 0), {} as never)).toThrow("Expected `formats` to be an object, got undefined");
    expect(() => told(proofOf(8, 0), { small: 3 as never })).toThrow(
      "Expected `formats.small` to be a function that writes a small length as text, got 3 (number)",
    );
  });
});
