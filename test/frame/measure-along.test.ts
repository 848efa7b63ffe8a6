import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { frameGeometry, sawPlan, type MeasureAlong, type ProfileBrief } from "miterwright/frame";
import { molding, type Profile } from "miterwright/profile";
import { tableSaw } from "miterwright/saw";
import { briefs, plain } from "./briefs.js";

/** A saw that cuts every frame. */
const saw = tableSaw({
  miter: { left: 90, right: 90, reads: "from-square", step: 0.5 },
  bevel: { left: 90, right: 90, reads: "from-vertical", step: 0.5 },
});

function measureOf(brief: ProfileBrief): MeasureAlong {
  return sawPlan(frameGeometry(brief), { saw }).operations.at(-1)!.measure!;
}

/** A section with a level face and one named corner at the back of its outer edge, whose two sides are rolled clockwise by an angle. */
function cornered(angle: number, roll: number): Profile {
  const at = (length: number, degrees: number): { x: number; y: number } => {
    const direction = ((degrees - roll) * Math.PI) / 180;
    return { x: 60 + length * Math.cos(direction), y: length * Math.sin(direction) };
  };
  return {
    outline: [at(60, 180), { x: 60, y: 0 }, at(30, 180 - angle), { x: 70, y: 40 }, { x: 20, y: 40 }],
    arrises: { corner: { x: 60, y: 0 } },
  };
}

describe("the angle of the long point", () => {
  test("is the sharpest that the finished lengths give on the two surfaces beside it", () => {
    let checked = 0;
    fc.assert(
      fc.property(briefs, (brief) => {
        const { pieces } = frameGeometry(brief);
        const { lengths, longest } = pieces[0];
        const { pointAngle, arris, length } = measureOf(brief);
        expect([arris, length]).toEqual([longest.arris, longest.length]);
        const { outline, arrises } = brief.profile;
        const here = arrises[longest.arris!]!;
        const index = outline.findIndex(({ x, y }) => x === here.x && y === here.y);
        const beside = [outline[(index + 1) % outline.length]!, outline.at(index - 1)!];
        // On a surface, the end recedes by half of what the piece loses from one of its arrises to the other.
        const angles = beside.map((there) => {
          const name = Object.keys(arrises).find((key) => arrises[key]!.x === there.x && arrises[key]!.y === there.y)!;
          const loss = (length - lengths[name]!) / 2;
          return (Math.atan2(Math.hypot(there.x - here.x, there.y - here.y), loss) * 180) / Math.PI;
        });
        expect(pointAngle).toBeCloseTo(Math.min(...angles), 6);
        checked += 1;
      }),
    );
    expect(checked).toBeGreaterThan(50);
  });

  test("is half the corner's angle in a flat frame, whatever surface comes first in the outline", () => {
    // A regular polygon's inside angle is 180 - 360 / n (Euclid, Elements, I.32), and its miter halves it.
    for (const sides of [3, 4, 6, 12]) {
      for (const shift of [0, 1, 2, 3]) {
        const outline = [...plain.outline.slice(shift), ...plain.outline.slice(0, shift)];
        const profile: Profile = { outline, arrises: plain.arrises };
        expect(measureOf({ sides, profile, opening: { side: 400 } }).pointAngle).toBeCloseTo(90 - 180 / sides, 10);
      }
    }
  });
});

describe("a tape's hook", () => {
  const hooks = (brief: Partial<ProfileBrief>): boolean =>
    measureOf({ sides: 6, slope: 20, profile: plain, opening: { side: 400 }, ...brief }).hook;

  test("holds on a point more than a degree sharper than square", () => {
    const flat = (sides: number): boolean => hooks({ slope: 0, sides });
    // Half of what a corner of n sides turns is 180 / n: 1.01 degrees of 178 sides, 0.99 of 182.
    expect([flat(178), flat(182)]).toEqual([true, false]);
  });

  test("does not hold where the section's corner is blunter than 150 degrees, nor on a point without a name", () => {
    for (const roll of [0, 10]) {
      const held = [149, 151].map((angle) => hooks({ sides: 4, profile: cornered(angle, roll), slope: 75 }));
      expect(held).toEqual([true, false]);
    }
    expect(hooks({ profile: { ...plain, arrises: {} } })).toBe(false);
    expect(measureOf({ sides: 6, profile: { ...plain, arrises: {} }, opening: { side: 400 } }).pointAngle).toBeNull();
  });

  test("is taken to hold where only level measures are known", () => {
    const frame = frameGeometry({ sides: 6, measured: { levelWidth: 40 }, opening: { side: 400 } });
    expect(sawPlan(frame, { saw }).operations.at(-1)!.measure).toEqual({
      arris: "outer",
      length: frame.pieces[0].longest.length,
      hook: true,
      pointAngle: null,
    });
  });

  test("is told apart by both coordinates of an arris that has a name", () => {
    // A name at another point of the same height, or of the same width, is not that of the longest line.
    const near = molding({ width: 60, thickness: 20, rabbet: { width: 8, depth: 10 } });
    for (const slope of [-50, -20, 20, 50]) {
      const { arris, hook } = measureOf({ sides: 5, slope, profile: near, opening: { side: 400 } });
      expect([arris, hook]).toEqual([slope > 0 ? "outerBack" : "outerFace", true]);
    }
  });
});
