/**
 * For a teacher: one polygon from any of its measures, why an odd one is never as high as it is wide, and compound miters by sides and slope.
 */
import { compoundMiterTable } from "miterwright/miter";
import { onePolygonMeasure, POLYGON_MEASURES, polygonExtent, regularPolygon } from "miterwright/polygon";

const heptagon = regularPolygon({ sides: 7, side: 30 });
console.log("The same heptagon from every one of its measures:");
for (const measure of POLYGON_MEASURES) {
  const again = regularPolygon({ sides: 7, ...onePolygonMeasure(measure, heptagon[measure]) });
  console.log(`  ${measure} ${heptagon[measure].toFixed(3)} gives the side ${again.side.toFixed(9)}`);
}

console.log("Width and height, standing on a side:");
for (const sides of [3, 4, 5, 6, 7, 8, 9]) {
  const { width, height } = polygonExtent(regularPolygon({ sides, side: 30 }));
  console.log(`  ${sides} sides: ${width.toFixed(2)} wide, ${height.toFixed(2)} high`);
}

console.log("Compound miters of sticks lying flat, by sides and slope:");
for (const { sides, slope, miter, bevel, dihedral } of compoundMiterTable({ sides: [4, 5, 6], slopes: [0, 30, 60] })) {
  console.log(
    `  ${sides} sides at ${slope}: miter ${miter.toFixed(2)}, bevel ${bevel.toFixed(2)}, dihedral ${dihedral.toFixed(2)}`,
  );
}
