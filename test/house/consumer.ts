/**
 * A program that uses the package as its users do. It is compiled under every supported compiler from the packed file,
 * as an ES module and as CommonJS, run in both forms, and its answers are compared with those of the sources.
 *
 * To cover a new module, import from its entry and add an answer. Wrong calls that must not compile go below.
 */
import { compoundMiter, regularPolygon, type RegularPolygon } from "miterwright";
import { correctSetting, ringClosure, type MeasuredPiece } from "miterwright/closure";
import { tabulate, tabulateLengths, type Table } from "miterwright/report";
import { InputError, isInputError } from "miterwright/errors";
import { planFrame, type FramePlan } from "miterwright/frame";
import { joinCorner, type Board, type Corner } from "miterwright/miter";
import { planPanel } from "miterwright/panel";
import { onePolygonMeasure, polygonCorners } from "miterwright/polygon";
import { precisePolygon } from "miterwright/precise";
import { levelWidth, molding, type Profile } from "miterwright/profile";
import { tableSaw } from "miterwright/saw";
import { verifyFit, fitStock, type StockFit, type StockJob } from "miterwright/stock";
import { formatLength, formatters, nearestFraction, parseLength } from "miterwright/units";
import { miterMovement, type Wood } from "miterwright/wood";
import { correctionLines } from "miterwright/words";

const octagon: RegularPolygon = regularPolygon({ sides: 8, side: 100 });
const board: Board = { slope: 30, thickness: 18 };
const corner: Corner = joinCorner({ turn: 45, first: board, second: board });
const rabbeted = molding({ width: 45, thickness: 18, rabbet: { width: 8, depth: 10 } });
const ownProfile: Profile<"sight" | "back"> = {
  outline: [
    { x: 0, y: 0 },
    { x: 30, y: 0 },
    { x: 30, y: 15 },
    { x: 0, y: 15 },
  ],
  arrises: { sight: { x: 0, y: 15 }, back: { x: 30, y: 0 } },
};
const plan: FramePlan = planFrame({
  sides: 5,
  slope: 20,
  opening: { contains: { width: 200, height: 150 } },
  profile: rabbeted,
  contents: [{ name: "glass", thickness: 2 }],
  clearance: 1.5,
  saw: tableSaw({}),
  kerf: 3,
  sticks: [{ id: "stick", length: 2400 }],
});
const wood: Wood = "white oak";
const cut = { miter: 22.4, bevel: 0 };
const cutPiece: MeasuredPiece = { length: 200, start: cut, end: cut };
const job: StockJob = plan.stockJobs[0]!;
const fit: StockFit = fitStock(job, { stepLimit: 10_000 });

const lengthsTable: Table = tabulateLengths(plan, {
  formats: formatters({ unit: "mm" }),
});

/** Calls something that must refuse its input. */
function refusal(call: () => unknown): string {
  try {
    return `accepted: ${String(call())}`;
  } catch (error) {
    if (!isInputError(error) || !(error instanceof InputError)) throw error;
    return `${error.code} at ${error.path}: ${error.message}`;
  }
}

/** What the program found out. */
export const answers: Readonly<Record<string, unknown>> = {
  octagon,
  corners: polygonCorners(octagon, "corner-down"),
  sameOctagon: regularPolygon({ sides: 8, ...onePolygonMeasure("apothem", octagon.apothem) }),
  precise: precisePolygon({ sides: 8, side: "100", digits: 30 }),
  miter: compoundMiter({ sides: 8, slope: 30 }),
  corner,
  widths: [levelWidth(rabbeted, { slope: 20, from: "wallLedge" }), levelWidth(ownProfile, { slope: 20, to: "back" })],
  lengths: [parseLength("5 7/16", "in"), formatLength(138.1, "in"), nearestFraction(5.44, 16).text],
  panel: planPanel({ polygon: octagon, clearance: 1 }),
  closure: ringClosure({ pieces: Array.from({ length: 8 }, () => cutPiece), at: "outside", width: 40 }),
  correction: correctionLines(correctSetting({ sides: 8, width: 40, seenGap: 1.2, open: "outside" })),
  plan,
  movement: miterMovement({ sides: 8, species: wood, grain: "flat-sawn", width: 45, from: 9, to: 6 }),
  lengthsTable: [lengthsTable, String(lengthsTable), lengthsTable.toHtml(), lengthsTable.toMarkdown()],
  fit: { ...fit, checked: verifyFit(job, fit) },
  tooFew: refusal(() => regularPolygon({ sides: 2, side: 100 })),
  // @ts-expect-error -- two measures at once
  twoMeasures: refusal(() => regularPolygon({ sides: 8, side: 100, apothem: 120 })),
  // @ts-expect-error -- no measure at all
  noMeasure: refusal(() => regularPolygon({ sides: 8 })),
  // @ts-expect-error -- an arris that the profile has not
  noArris: refusal(() => levelWidth(ownProfile, { slope: 20, from: "wallLedge" })),
  // @ts-expect-error -- a wood that is not in the table
  noWood: refusal(() => miterMovement({ sides: 8, species: "iron", grain: "flat-sawn", width: 45, from: 9, to: 6 })),
  // @ts-expect-error -- a column of a kind that is none
  noKind: refusal(() => tabulate({ caption: "lengths", columns: [{ label: "length", kind: "inches" }], rows: [[5]] })),
  // @ts-expect-error -- a unit that is none
  noUnit: refusal(() => parseLength("5", "ell")),
};
