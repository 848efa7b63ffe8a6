/**
 * For the author of a calculator: the angles alone, from the `miter` module, for every way in which the stick can lie.
 */
import { compoundMiter, joinCorner, sawSetting, slopeFromSpring, type Lay } from "miterwright/miter";
import { formatAngle } from "miterwright/units";

const show = (degrees: number): string => formatAngle(degrees, { digits: 2 });

// A crown molding with a spring angle of 38 degrees, round an octagonal room.
const slope = slopeFromSpring(38);
const { miter, bevel, dihedral } = compoundMiter({ sides: 8, slope });
console.log(`lying flat: miter ${show(miter)}, bevel ${show(bevel)}; the faces meet at ${show(dihedral)}`);

const board = { slope, thickness: 18 };
const { first } = joinCorner({ turn: 360 / 8, first: board, second: board });
for (const lay of ["propped", "flat", "face-down", "inner-down", "outer-down"] satisfies Lay[]) {
  const setting = sawSetting(first, lay);
  console.log(`${lay}: miter ${show(setting.miter)}, bevel ${show(setting.bevel)}`);
}
