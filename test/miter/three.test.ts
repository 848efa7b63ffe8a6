import fc from "fast-check";
import { MathUtils, Matrix4, Plane, Vector3 } from "three";
import { describe, expect, test } from "vitest";
import { compoundMiter, joinCorner } from "miterwright/miter";

/** The plane of a side's face, as three.js has it: a level face tilted about its sight edge, then carried round to its side. */
function facePlane(slope: number, heading: number): Plane {
  const sightEdge = new Vector3(1, 0, 0);
  // Side 0 lies at the bottom, its outward direction -y; a positive slope raises the outer edge.
  const tilt = new Matrix4().makeRotationAxis(sightEdge, MathUtils.degToRad(-slope));
  const round = new Matrix4().makeRotationZ(MathUtils.degToRad(heading));
  const normal = new Vector3(0, 0, 1).applyMatrix4(tilt).applyMatrix4(round);
  return new Plane(normal, 0);
}

const slopes = fc.double({ min: 0.5, max: 89.5, noNaN: true });
const turns = fc.double({ min: 1, max: 170, noNaN: true });

describe("against three.js, a general library of vectors", () => {
  test("the dihedral is 180 less the angle between the faces' normals", () => {
    fc.assert(
      fc.property(turns, slopes, (turn, slope) => {
        const [first, second] = [facePlane(slope, 0), facePlane(slope, turn)];
        const between = MathUtils.radToDeg(first.normal.angleTo(second.normal));
        expect(compoundMiter({ turn, slope }).dihedral).toBeCloseTo(180 - between, 6);
      }),
    );
  });

  test("so it is between boards of different slopes", () => {
    fc.assert(
      fc.property(turns, slopes, slopes, (turn, one, other) => {
        const [first, second] = [facePlane(one, 0), facePlane(other, turn)];
        const between = MathUtils.radToDeg(first.normal.angleTo(second.normal));
        const corner = joinCorner({
          turn,
          first: { slope: one, thickness: 18 },
          second: { slope: other, thickness: 25 },
        });
        expect(corner.dihedral).toBeCloseTo(180 - between, 6);
      }),
    );
  });

  test("the bevel of a stick that lies flat is what its end's normal rises over the table", () => {
    fc.assert(
      fc.property(turns, slopes, (turn, slope) => {
        // The joint's plane holds the upright and the bisector of the corner; its normal, seen from the stick lying on its back.
        const normal = new Vector3(1, 0, 0).applyMatrix4(new Matrix4().makeRotationZ(MathUtils.degToRad(turn / 2)));
        const laidFlat = normal.applyMatrix4(new Matrix4().makeRotationX(MathUtils.degToRad(slope)));
        const { miter, bevel } = compoundMiter({ turn, slope });
        expect(MathUtils.radToDeg(Math.asin(laidFlat.z))).toBeCloseTo(bevel, 9);
        expect(MathUtils.radToDeg(Math.atan2(laidFlat.y, laidFlat.x))).toBeCloseTo(miter, 9);
      }),
    );
  });
});
