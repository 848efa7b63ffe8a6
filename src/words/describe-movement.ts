import { checkObject, refuse } from "../core/check.js";
import { orNull, readStored } from "../core/stored.js";
import { isolate } from "../core/isolate.js";
import type { DescribeOptions } from "./describe-operation.js";
import type { LayerRoom } from "../frame/contents-room.js";
import type { FrameMovement, SeasonMovement } from "../frame/frame-movement.js";
import type { FramePlan } from "../frame/plan-frame.js";
import { rangeOf } from "../frame/range-of.js";
import { filledBrief } from "../frame/stored/brief.js";
import { frameContents } from "../frame/stored/contents.js";
import { frameMovement } from "../frame/stored/materials.js";

/** What {@link describeMovement} reads of a plan. */
export type MovingPlan = Pick<FramePlan, "brief" | "movement" | "contents">;

/** Percents and temperatures to a tenth: their figures are no better. */
function tenth(value: number): string {
  return String(Math.round(value * 10) / 10 + 0);
}

/** The season that opens the joints most in one direction; `undefined` when none does. */
function worstSeason({ seasons }: FrameMovement, opens: SeasonMovement["opens"]): SeasonMovement | undefined {
  return seasons
    .filter((season) => season.opens === opens)
    .reduce<SeasonMovement | undefined>(
      (worst, season) => (worst === undefined || season.jointGap > worst.jointGap ? season : worst),
      undefined,
    );
}

function jointLine(movement: FrameMovement, length: DescribeOptions["length"]): string {
  const parts = (["inside", "outside"] as const)
    .flatMap((opens) => worstSeason(movement, opens) ?? [])
    .map(({ opens, moisture, jointGap }, index) => {
      const [start, joints] = index === 0 ? ["In", "the joints"] : ["in", "they"];
      const season = moisture < movement.made ? "dry" : "damp";
      return `${start} the ${season} season, at ${tenth(moisture)}% moisture, ${joints} open ${opens} by ${length(jointGap)}`;
    });
  const made = `${tenth(movement.made)}%`;
  if (parts.length === 0) return `The joints are fitted at ${made} moisture, and no season moves them.`;
  return `${parts.join("; ")}, as far as glue does not hold them. They are fitted at ${made}; a gap of ${length(movement.acceptedGap)} is accepted.`;
}

function openingLines({ seasons, sightOpens }: FrameMovement, length: DescribeOptions["length"]): string[] {
  if (!(sightOpens > 0)) return [];
  const [least, most] = rangeOf([0, ...seasons.map(({ lipChange }) => lipChange)]);
  const lip =
    most > least ? `; its lip shrinks by up to ${length(-least + 0)} and swells by up to ${length(most)}` : "";
  return [
    `The molding's inner edge draws back by up to ${length(sightOpens)} at every side${lip}. Along their grain the pieces hardly move.`,
  ];
}

function roomLine(
  { name, with: by, made, least, most, needed, enough, retreat, lapLeft }: LayerRoom,
  clearance: number,
  length: DescribeOptions["length"],
): string {
  const unit = by === "moisture" ? "% moisture" : "\u00a0°C";
  const when = `from ${tenth(least)} to ${tenth(most)}${unit}, put in at ${tenth(made)}`;
  const kept = `the clearance of ${length(clearance)} is ${enough ? "enough" : "too little"}`;
  const lap =
    lapLeft === null
      ? ""
      : lapLeft > 0
        ? `; the lip still laps it by ${length(lapLeft)}`
        : `; the lip then no longer laps it and falls short by ${length(-lapLeft)}`;
  return `${isolate(name)}, ${when}: it grows by up to ${length(needed)} at a side, and ${kept}. It draws back by up to ${length(retreat)}${lap}.`;
}

/**
 * What a year does to a frame and to what is in it, in sentences.
 *
 * The joints come first, with the direction in which each season opens them, then the opening, then every layer whose movement is known.
 *
 * @param plan - a plan, or its brief, movement and contents
 * @param options - how to write lengths
 * @returns the sentences; none for a plan that knows of nothing that moves
 * @throws {InputError} when the plan has not the shape of one, or the formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { describeMovement } from "miterwright/words";
 * import { molding } from "miterwright/profile";
 * import { formatLength } from "miterwright/units";
 *
 * const plan = planFrame({
 *   sides: 4,
 *   profile: molding({ width: 50, thickness: 20 }),
 *   opening: { side: 400 },
 *   species: "black cherry",
 * });
 * const lines = describeMovement(plan, { length: (value) => formatLength(value, "mm") });
 * lines[1]; //=> "The molding's inner edge draws back by up to 0.25 mm at every side. Along their grain the pieces hardly move."
 * ```
 */
export function describeMovement(plan: MovingPlan, options: Pick<DescribeOptions, "length">): string[] {
  const given = checkObject(plan, "plan");
  const brief = readStored(given["brief"], "brief", filledBrief);
  const movement = readStored(given["movement"], "movement", (value, path) => orNull(value, path, frameMovement));
  const contents = readStored(given["contents"], "contents", frameContents);
  const { length } = checkObject(options) as unknown as Pick<DescribeOptions, "length">;
  if (typeof length !== "function") refuse("type", "length", length, "a function that writes a length");
  return [
    ...(movement === null ? [] : [jointLine(movement, length), ...openingLines(movement, length), ...movement.unknown]),
    ...contents.room.map((room) => roomLine(room, brief.clearance, length)),
  ];
}
