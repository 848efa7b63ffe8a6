/**
 * For the author of a calculator: crown molding round rooms of any number of corners, from the `miter` module alone.
 */
import { compoundMiterTable, joinCorner, sawSetting, slopeFromSpring, type LayName } from "miterwright/miter";

const SPRING = 38;
const ROOMS: readonly number[] = [3, 4, 5, 6, 8, 12];
const LAYS: readonly LayName[] = ["flat", "propped", "sight-edge-down", "outer-edge-down", "face-down"];

const angle = (degrees: number): string => `${Math.abs(degrees).toFixed(2)}°`;

/** People are told which part of the stick stays longer, not a sign. */
function longer(degrees: number, positive: string, negative: string): string {
  // The arithmetic can leave a trace of a degree where the cut is square.
  if (Math.abs(degrees) < 1e-9) return "square";
  return degrees > 0 ? positive : negative;
}

function print(...cells: readonly string[]): void {
  console.log(cells.map((cell, column) => (column === 0 ? cell.padEnd(16) : cell.padStart(11))).join(""));
}

const slope = slopeFromSpring(SPRING);
console.log(`Crown of spring angle ${SPRING}°, lying flat on the saw`);
print("corners", "miter", "bevel", "dihedral");
for (const { sides, miter, bevel, dihedral } of compoundMiterTable({ sides: ROOMS, slopes: [slope] })) {
  print(String(sides), angle(miter), angle(bevel), angle(dihedral));
}

// One end of a piece is enough: in a ring of equal corners the other is its mirror image.
const board = { slope, thickness: 18 };
const { first: end } = joinCorner({ turn: 90, first: board, second: board });
console.log("\nOne of four corners, by how the stick lies");
print("lay", "miter", "longer", "bevel", "longer");
for (const lay of LAYS) {
  const { miter, bevel } = sawSetting(end, lay);
  print(lay, angle(miter), longer(miter, "far edge", "near edge"), angle(bevel), longer(bevel, "below", "above"));
}
console.log("Far and near: from the middle of the room, as the stick lies.");
