import { checkDegrees, checkObject, checkSides, checkSlope, checkWord } from "../core/check.js";
import { sinDeg } from "../core/degrees.js";
import { compoundMiterKernel } from "../miter/internal.js";
import type { SawSetting } from "../miter/index.js";
import type { GaugeToleranceOptions } from "./gauge-tolerance.js";
import { regularClosure } from "./regular-closure.js";

/**
 * How the piece comes from the cut of its end to that of its start.
 *
 * `flip`: end for end, the back staying down, so that the other edge comes to the fence; the same side of the blade is kept and the gauge swung
 * to the other hand. `slide`: past the blade, the same edge at the fence; the other side is kept, and gauge and blade go to the other hand.
 * `roll`: half a turn about its length and past the blade, face down, the other edge at the fence; the other side is kept and nothing
 * is set anew. `tumble`: end over end, face down, the same edge at the fence; the same side is kept and only a
 * leaning blade goes to the other hand. The last two are for stock with two good faces.
 */
export type StickMove = "flip-end-for-end" | "slide-past-the-blade" | "roll" | "tumble";

/** Options of {@link machineErrors}. */
export interface MachineErrorsOptions extends Pick<GaugeToleranceOptions, "sides"> {
  /** Slope in degrees, -90 to 90; default 0. The pieces lie flat on the saw. */
  readonly slope?: number | undefined;
  /** How the piece is moved between its two ends. */
  readonly move: StickMove;
  /** Which side of the blade is kept when the end is cut; default `"left"`. */
  readonly kept?: "left" | "right" | undefined;
  /** The gauge stands off square when it reads 0: degrees by which the line of cut runs too far to the left, -5 to 5; default 0. */
  readonly square?: number | undefined;
  /** The gauge's scale is wrong: degrees by which it swings too far at this miter, to either hand, -5 to 5; default 0. */
  readonly swing?: number | undefined;
  /** The blade stands off upright when it reads 0: degrees by which its top leans too far to the left, -5 to 5; default 0. */
  readonly upright?: number | undefined;
  /** The scale of the blade is wrong: degrees by which it leans too far at this bevel, to either hand, -5 to 5; default 0. */
  readonly lean?: number | undefined;
}

/** What the errors of a machine do to the two ends of a piece, and to the ring. */
export interface MachineErrors {
  /** Error of the cut at the piece's end, in degrees of miter and bevel, with the signs of the conventions. */
  readonly end: SawSetting;
  /** Error of the cut at its start. */
  readonly start: SawSetting;
  /** Error of every joint: the sum of the two. */
  readonly joint: SawSetting;
  /** Whether an error of square or scale that both cuts share adds up in the joint, or cancels there. */
  readonly effect: {
    /** The gauge off square at 0. */
    readonly square: "adds" | "cancels";
    /** The gauge's scale. */
    readonly swing: "adds";
    /** The blade off upright at 0. Where it adds, it dishes a flat frame. */
    readonly upright: "adds" | "cancels";
    /** The blade's scale; `idle` in a flat frame, whose blade is not set. */
    readonly lean: "adds" | "idle";
  };
  /** Open angle of the ring in degrees; positive opens outside. Where the errors of start and end differ, to first order in their difference. */
  readonly angle: number;
  /** By how many degrees the slope at which the ring closes is more than planned: how far it is dished. */
  readonly slopeOff: number;
  /**
   * Height of the step at the last joint, as a share of a piece's length: how much lower the first piece starts than the last one ends. Where the miters of
   * start and end differ, the pieces of a splayed ring climb like a stair: n sin s sin((end - start) / 2).
   */
  readonly step: number;
}

/**
 * What an error of the machine does to a ring, by how the piece is moved between its two ends.
 *
 * What a gauge off square does depends on whether it is swung to the other hand for the second end. Swung over (`flip`, `slide`), its error is +g at one end
 * and -g at the other. It cancels in the open angle of every joint, though the pieces of a splayed ring then climb like a stair. Left as it is (`roll`,
 * `tumble`), its error is +g at both ends and opens the ring by 2n g. A wrong scale always adds. A blade off upright by l is +l at both ends after `flip` and
 * `roll`, and dishes the frame; after `slide` and `tumble` it is +l and -l, and the faces still meet, slanted together.
 *
 * @param options - sides, slope, how the piece is moved, and the errors in degrees (-5 to 5)
 * @returns the errors at both ends and in the joint, whether each adds or cancels, and what the ring does
 * @throws {InputError} when a value is missing or out of range
 * @example
 * ```ts
 * import { machineErrors } from "miterwright/closure";
 *
 * // A gauge 0.1 degrees off square and a blade 0.1 degrees off upright, in an octagon.
 * const flipped = machineErrors({ sides: 8, move: "flip-end-for-end", square: 0.1, upright: 0.1 });
 * flipped.effect; //=> { square: "cancels", swing: "adds", upright: "adds", lean: "idle" }
 * flipped.joint; //=> { miter: 0, bevel: 0.2 }
 * machineErrors({ sides: 8, move: "roll", square: 0.1 }).angle.toFixed(3); //=> "-1.600"
 * ```
 */
export function machineErrors(options: MachineErrorsOptions): MachineErrors {
  const given = checkObject(options);
  const sides = checkSides(given["sides"]);
  const slope = checkSlope(given["slope"] ?? 0);
  const move = checkWord(given["move"], "move", ["flip-end-for-end", "slide-past-the-blade", "roll", "tumble"]);
  const kept = checkWord(given["kept"] ?? "left", "kept", ["left", "right"]);
  const [square, swing, upright, lean] = (["square", "swing", "upright", "lean"] as const).map((name) =>
    checkDegrees(given[name] ?? 0, name, -5, 5),
  ) as [number, number, number, number];

  const { miter, bevel } = compoundMiterKernel(180 / sides, slope);
  const facesDown = move === "roll" || move === "tumble";
  const keepsSide = move === "flip-end-for-end" || move === "tumble";
  // The line of an end's cut runs to the left, that of a start's to the right, unless the piece lies on its face.
  const startSquare = facesDown ? square : -square;
  // A positive bevel leans over the kept part, in a piece on its face away from it.
  const overKept = kept === "left" ? upright : -upright;
  const startUpright = keepsSide !== facesDown ? overKept : -overKept;
  const scale = Math.sign(bevel) * lean;
  const end = { miter: square + swing + 0, bevel: overKept + scale + 0 };
  const start = { miter: startSquare + swing + 0, bevel: startUpright + scale + 0 };
  const joint = { miter: end.miter + start.miter, bevel: end.bevel + start.bevel };
  const closure = regularClosure(sides, miter + joint.miter / 2, bevel + joint.bevel / 2);
  return {
    end,
    start,
    joint,
    effect: {
      square: facesDown ? "adds" : "cancels",
      swing: "adds",
      upright: keepsSide !== facesDown ? "adds" : "cancels",
      lean: bevel === 0 ? "idle" : "adds",
    },
    angle: closure.angle,
    slopeOff: closure.slope - slope,
    step: sides * sinDeg(slope) * sinDeg((end.miter - start.miter) / 2) + 0,
  };
}
