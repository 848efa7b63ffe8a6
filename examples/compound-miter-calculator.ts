/**
 * For the author of a calculator: crown molding round rooms of any number of corners, from the `miter` module and the words for how a stick lies.
 */
import { layLabel } from "miterwright/words";
import { compoundMiterTable, joinCorner, sawSetting, slopeFromSpring, type LayName } from "miterwright/miter";

const SPRING = 38;
const ROOMS: readonly number[] = [3, 4, 5, 6, 8, 12];
const LAYS: readonly LayName[] = ["propped", "flat", "face-down", "sight-edge-down", "outer-edge-down"];

const angle = (degrees: number): string => `${Math.abs(degrees).toFixed(2)}°`;

/** People are told which part of the stick stays longer, not a sign. */
function longer(degrees: number, positive: string, negative: string): string {
  // The arithmetic can leave a trace of a degree where the cut is square.
  if (Math.abs(degrees) < 1e-9) return "square";
  return degrees > 0 ? positive : negative;
}

function print(name: string, ...cells: readonly string[]): void {
  console.log(name.padEnd(28) + cells.map((cell) => cell.padStart(11)).join(""));
}

const slope = slopeFromSpring(SPRING);
console.log(`Crown of spring angle ${SPRING}°, flat on its back`);
print("corners", "miter", "bevel", "dihedral");
for (const { sides, miter, bevel, dihedral } of compoundMiterTable({ sides: ROOMS, slopes: [slope] })) {
  print(String(sides), angle(miter), angle(bevel), angle(dihedral));
}

// One end of a piece is enough: in a ring of equal corners the other is its mirror image.
const board = { slope, thickness: 18 };
const { first: end } = joinCorner({ turn: 90, first: board, second: board });
console.log("\nOne of four corners");
print("the stick lies", "miter", "longer", "bevel", "longer");
for (const lay of LAYS) {
  const { miter, bevel } = sawSetting(end, lay);
  print(
    layLabel(lay),
    angle(miter),
    longer(miter, "far edge", "near edge"),
    angle(bevel),
    longer(bevel, "below", "above"),
  );
}
console.log("Far and near: from the middle of the room.");
