/**
 * A program that uses the package as its users do. It is compiled under every supported compiler from the packed file,
 * as an ES module and as CommonJS, run in both forms, and its answers are compared with those of the sources.
 *
 * To cover a new module, import from its entry and add an answer. Wrong calls that must not compile go below.
 */
import { compoundMiter, regularPolygon, type RegularPolygon } from "miterwright";
import { InputError, isInputError } from "miterwright/errors";
import { joinCorner, type Board, type Corner } from "miterwright/miter";
import { givenMeasure, polygonCorners } from "miterwright/polygon";

const octagon: RegularPolygon = regularPolygon({ sides: 8, side: 100 });
const board: Board = { slope: 30, thickness: 18 };
const corner: Corner = joinCorner({ turn: 45, first: board, second: board });

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
  sameOctagon: regularPolygon({ sides: 8, ...givenMeasure("apothem", octagon.apothem) }),
  miter: compoundMiter({ sides: 8, slope: 30 }),
  corner,
  tooFew: refusal(() => regularPolygon({ sides: 2, side: 100 })),
  // @ts-expect-error -- two measures at once
  twoMeasures: refusal(() => regularPolygon({ sides: 8, side: 100, apothem: 120 })),
  // @ts-expect-error -- no measure at all
  noMeasure: refusal(() => regularPolygon({ sides: 8 })),
};
