/**
 * The main job: plan a splayed nine-sided frame, fit its sticks and write its shop sheet.
 *
 * The (invented) Saltmarsh Observatory wants a nine-sided tray frame, sides rising at 35 degrees, round a relief model that is 340 mm wide and 260 mm deep.
 * Its bench mills the molding from ash, and has full sticks and two offcuts in the rack.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import {
  verifyFit,
  hazardText,
  layLines,
  fitStock,
  formatters,
  molding,
  numberHazards,
  planFrame,
  shopSheet,
  tableSaw,
} from "miterwright";

/** How good the fit of the sticks is. */
const GOOD = {
  optimal: "no cheaper way exists",
  feasible: "a cheaper way may exist",
  short: "not enough for all pieces",
} as const;

const formats = formatters({ unit: "mm" });
const { length, angle } = formats;

const plan = planFrame({
  sides: 9,
  slope: 35,
  unit: "mm",
  opening: { contains: { width: 340, height: 260, allowance: 2 } },
  clearance: 1.5,
  profile: molding({ width: 60, thickness: 24, rabbet: { width: 8, depth: 16 } }),
  contents: [
    { name: "glass", thickness: 2 },
    { name: "relief model", thickness: 3 },
  ],
  saw: tableSaw({ depth: 75, miter: { left: 60, right: 60, reads: "from-square", step: 0.1 } }),
  kerf: 3.2,
  rough: { method: "square", allowance: 12 },
  sticks: [
    { id: "ash, full stick", length: 2400 },
    { id: "ash, offcut in the rack", length: 1150, count: 2, cost: 300 },
  ],
});

const job = plan.stockJobs[0]!;
const fit = fitStock(job);
const verdict = verifyFit(job, fit);
if (!verdict.ok) throw new Error(`The fit does not hold: ${JSON.stringify(verdict.faults)}`);

const { geometry, sawing, contents } = plan;
const piece = geometry.pieces[0];
console.log(`Nine sides at ${angle(geometry.slope)}, round ${length(340)} x ${length(260)}`);
console.log(
  `  opening where the contents touch: side ${length(geometry.opening.side)}, ${length(geometry.opening.acrossFlats)} high`,
);
console.log(`  whole frame: ${length(geometry.overall.extent.width)} x ${length(geometry.overall.extent.height)}`);
console.log(`  molding, width taken level: ${length(geometry.levelWidth)}`);
console.log(
  `  each piece: ${length(piece.longest.length)} at the long points, ${length(piece.shortest.length)} at the short ones`,
);
console.log(
  `  ${layLines(sawing.lay!, { formats })[0]!} Miter ${angle(sawing.lay!.miter)}, bevel ${angle(sawing.lay!.bevel)}; dihedral ${angle(geometry.corners[0].dihedral)}`,
);
console.log(`  panel: side ${length(contents.panel!.side)}, ${length(contents.hidden)} of it under the lip`);
console.log(
  `  sticks: ${fit.sticks.map(({ stick: id, count }) => `${count} x ${id}`).join(", ")} (${GOOD[fit.status]})`,
);
for (const { number, hazard } of numberHazards(plan)) {
  const { title, sentence } = hazardText(hazard, { formats });
  console.log(`  hazard ${number}: ${title}. ${sentence}`);
}

mkdirSync("out", { recursive: true });
const path = "out/nine-sided-tray.html";
writeFileSync(path, shopSheet(plan, { fits: [fit], formats, title: "Nine-sided tray for the relief model" }));
console.log(`Shop sheet written to ${path}`);
