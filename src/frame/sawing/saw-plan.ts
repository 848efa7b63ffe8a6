import type { Filled, LengthUnit } from "../../core/geometry-types.js";
import { checkLength, checkLengthOrZero, checkObject, checkWord, inOrder } from "../../core/check.js";
import { checkUnit } from "../../core/unit-sizes.js";
import { joinCorner, layRotation, type EndCut, type Lay, type LayName } from "../../miter/index.js";
import { parseSaw, stopContact, tableSaw, type CutPlacement, type Saw, type ShowingSide } from "../../saw/index.js";
import { SQUARE_SIDES, sideSurfaces, type SideSurfaces } from "../../saw/internal.js";
import type { RoughMethod } from "../brief/brief.js";
import { checkGeometry } from "../check-geometry.js";
import { SAWING_RULES } from "../hazards/hazard-rules.js";
import type { RaisedHazard, SawingFacts } from "../hazards/hazard-rule.js";
import type { SawPlan, SawPlanOptions } from "./saw-plan-types.js";
import type { FrameGeometry } from "../frame-geometry.js";
import { layResult, type LayResult } from "./lay-result.js";
import { preferredLay } from "./lay-preference.js";
import { measureAlong } from "./measure-along.js";
import type { Operation, OperationKind } from "./operation.js";
import { readRough } from "../brief/read-rough.js";
import { roughPiece, type RoughPiece } from "./rough-length.js";
import { stopRule } from "./stop-rule.js";
import { graduationsFor } from "./graduations.js";
import { testCuts } from "./test-cuts.js";
import { usualAcceptedGap, usualKerf } from "./usual-lengths.js";

/** Among lays that give up as much the first is chosen: low ones that need nothing to be made come first. */
const LAYS: readonly LayName[] = ["flat", "face-down", "propped", "sight-edge-down", "outer-edge-down"];
/** Rotations that differ by less are the same, in degrees: far below what a saw can be set to, far above what rounding leaves of a difference. */
const SAME_ROTATION: number = 1e-9;
/** With level measures alone it is not known what the other lays would rest on. */
const LAYS_WITHOUT_SECTION: readonly LayName[] = ["flat", "propped"];

/** The named lay that a rotation is, full turns apart; the rotation itself where it is none. */
function namedLay(rotation: number, slope: number, names: readonly LayName[]): Lay {
  return (
    names.find((name) => Math.abs(((rotation - layRotation(name, slope)) / 360) % 1) * 360 < SAME_ROTATION) ?? rotation
  );
}

/** A square cut at the end of a stick, for roughs. */
function squareCut(slope: number): EndCut {
  const board = { slope, thickness: 1 };
  return joinCorner({ turn: 0, first: board, second: board }).first;
}

/** What every operation of a plan shares. */
interface Work {
  readonly geometry: FrameGeometry;
  readonly saw: Saw;
  readonly rough: RoughMethod;
  readonly unit: LengthUnit;
  readonly shows: ShowingSide;
  readonly sides: SideSurfaces;
  /** The graduations to set for the ends. */
  readonly graduations: Operation["graduations"];
}

function operationsFor(work: Work, result: LayResult, piece: RoughPiece): Operation[] {
  const { geometry, saw, rough, unit, graduations, shows, sides } = work;
  const { method } = rough;
  const ringPiece = geometry.pieces[0];
  const { profile, slope } = geometry;
  const { lay } = result;
  const contact = profile === null ? null : stopContact(ringPiece.end, profile, { slope, lay });
  const measure = measureAlong(ringPiece, profile);
  const operations: Operation[] = [];
  const add = (
    kind: OperationKind,
    at: LayResult,
    placement: CutPlacement,
    { graduations, move, stop, measure }: Pick<Operation, "graduations" | "move" | "stop" | "measure">,
  ): void => {
    operations.push({
      step: operations.length + 1,
      kind,
      times: ringPiece.count,
      placement,
      graduations,
      move,
      stop,
      measure,
      stopRule: stopRule({ kind, method, placement, stop, lying: at.lying, saw }),
      size: at.size,
      bladeHeight: at.bladeHeight,
      hazards: [],
    });
  };
  if (method === "square") {
    const cut = squareCut(slope);
    const cuts = { start: cut, end: cut };
    const square = layResult({ lay, cuts, profile, saw, unit, shows, sides });
    const roughMeasure = { arris: null, length: piece.length, hook: false, pointAngle: null };
    const { miter, bevel } = square.first;
    const upright = { miter: miter.nearest, bevel: bevel.nearest };
    add("crosscut", square, square.first, { graduations: upright, move: null, stop: null, measure: roughMeasure });
  }
  const parting = method === "mitered" ? { ...measure, length: piece.length, hook: false } : null;
  add("first-end", result, result.first, { graduations, move: null, stop: null, measure: parting });
  const move = result.first.kept === result.second.kept ? "flip-end-for-end" : "slide-past-the-blade";
  add("second-end", result, result.second, { graduations, move, stop: contact, measure });
  return operations;
}

/** Plans the sawing of checked input, but for its hazards. */
export function planSawing(
  geometry: FrameGeometry,
  options: Filled<Omit<SawPlanOptions, "lay">> & { readonly lay: Lay | undefined },
): SawingFacts {
  const { saw, kerf, rough, lay, unit, acceptedGap, shows } = options;
  const ringPiece = geometry.pieces[0];
  const { profile } = geometry;
  const names = profile === null ? LAYS_WITHOUT_SECTION : LAYS;
  const asked = typeof lay === "number" ? namedLay(lay, geometry.slope, names) : lay;
  const wanted: readonly Lay[] =
    asked === undefined || names.some((name) => name === asked) ? names : [...names, asked];
  const sides = profile === null ? SQUARE_SIDES : sideSurfaces(profile);
  const lays = wanted.map((name) => layResult({ lay: name, cuts: ringPiece, profile, saw, unit, shows, sides }));
  const chosen = preferredLay(asked === undefined ? lays : lays.filter((result) => result.lay === asked));
  const piece = roughPiece(ringPiece.longest.length, ringPiece.end, kerf, rough);
  const graduations = chosen === null ? null : graduationsFor(geometry, acceptedGap, saw, chosen);
  const best = graduations === null ? null : { miter: graduations.best.miter, bevel: graduations.best.bevel };
  const operations =
    chosen === null || best === null
      ? []
      : operationsFor({ geometry, saw, rough, unit, shows, sides, graduations: best }, chosen, piece);
  const sawing = {
    saw,
    lays,
    lay: chosen,
    graduations,
    testCuts: chosen === null ? null : testCuts(geometry, chosen, { pitch: piece.pitch, acceptedGap, kerf, unit }),
    order: rough.method === "none" ? ("piece-by-piece" as const) : ("step-by-step" as const),
    stop: operations.at(-1)?.stop ?? null,
    cradle: chosen?.cradle ?? null,
    rough: piece,
    operations,
  };
  const cutSteps = operations.filter(({ kind }) => kind !== "crosscut").map(({ step }) => step);
  return { geometry, sawing, wantedLay: asked, unit, acceptedGap, cutSteps };
}

/** The plan of sawing with those of the hazards that come with it, each named by its steps. */
export function withHazards({ sawing }: SawingFacts, raised: readonly RaisedHazard[]): SawPlan {
  const operations = sawing.operations.map((operation) => ({
    ...operation,
    hazards: raised.filter(({ steps }) => steps?.includes(operation.step)).map(({ hazard }) => hazard.code),
  }));
  return { ...sawing, operations, hazards: raised.filter(({ steps }) => steps !== null).map(({ hazard }) => hazard) };
}

/**
 * Plans how a frame's pieces are cut: every lay with its settings and whether it can be done, then the instructions in order of work.
 *
 * Among the lays that the saw can cut, one that it surely cuts deep enough comes first. Then the plan takes the lay that gives up least, in this order: the
 * stick lies steady by itself, the piece lies on the open side of a leaning blade, the side that shows lies up (common practice, no printed source).
 *
 * The stick's `end` is cut first and its `start` against a stop. On a saw whose blade leans one way, the stick is flipped end for end between the two, so that
 * the other edge is at the fence and the miter swings the other way. On a saw whose blade leans both ways, miter and bevel are mirrored and the stick slides
 * past the blade.
 *
 * @param geometry - from `frameGeometry`
 * @param options - saw, kerf, rough, lay, unit, the accepted gap and the side that shows
 * @returns the plan, in the geometry's unit and degrees
 * @throws {InputError} when an option is not sound
 * @example
 * ```ts
 * import { sawPlan, frameGeometry } from "miterwright/frame";
 * import { molding } from "miterwright/profile";
 *
 * const profile = molding({ width: 40, thickness: 20 });
 * const plan = sawPlan(frameGeometry({ sides: 6, slope: 30, profile, opening: { side: 200 } }), { kerf: 3 });
 * plan.lay?.lay; //=> "face-down"
 * plan.operations.length; //=> 2
 * plan.operations[0]?.placement.miter.nearest; //=> 26.5
 * plan.operations[1]?.move; //=> "flip-end-for-end"
 * ```
 */
export function sawPlan(geometry: FrameGeometry, options: SawPlanOptions = {}): SawPlan {
  const given = checkObject(options);
  const unit = checkUnit(given["unit"] ?? "mm");
  const facts = planSawing(checkGeometry(geometry), {
    saw: parseSaw(given["saw"] ?? tableSaw()),
    kerf: checkLengthOrZero(given["kerf"] ?? usualKerf(unit), "kerf"),
    rough: readRough(given["rough"] ?? { method: "none" }, "rough", inOrder),
    lay: options.lay,
    unit,
    acceptedGap: checkLength(given["acceptedGap"] ?? usualAcceptedGap(unit), "acceptedGap"),
    shows: checkWord(given["shows"] ?? "face", "shows", ["face", "back"]),
  });
  return withHazards(
    facts,
    SAWING_RULES.flatMap((rule) => rule(facts)),
  );
}
