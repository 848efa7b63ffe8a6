import { checkObject } from "../../core/check.js";
import { orNull, readStored } from "../../core/stored.js";
import { isolate } from "../../core/isolate.js";
import type { LayerRoom, FrameMovement, SeasonMovement, FramePlan } from "../../frame/index.js";
import { rangeOf, filledBrief, frameContents, frameMovement } from "../../frame/internal.js";
import { englishMovement, type MovementWords, type OpenSeason } from "../catalog/movement-words.js";
import type { Formats } from "../../units/index.js";
import { checkTellOptions, type TellOptions } from "../tell-options.js";

/** What {@link movementLines} reads of a plan. */
export type MovingPlan = Pick<FramePlan, "brief" | "movement" | "contents">;

/** The season that opens the joints most in one direction; `undefined` when none does. */
function worstSeason({ seasons }: FrameMovement, opens: SeasonMovement["opens"]): SeasonMovement | undefined {
  return seasons
    .filter((season) => season.opens === opens)
    .reduce<SeasonMovement | undefined>(
      (worst, season) => (worst === undefined || season.jointGap > worst.jointGap ? season : worst),
      undefined,
    );
}

/** What writes the sentences. */
interface Pen {
  readonly formats: Formats;
  readonly words: MovementWords;
}

function jointLine(movement: FrameMovement, { formats: { small: length, percent }, words }: Pen): string {
  const made = percent(movement.made);
  const seasons = (["inside", "outside"] as const).flatMap((opens): OpenSeason[] => {
    const worst = worstSeason(movement, opens);
    if (worst === undefined) return [];
    const { moisture, jointGap } = worst;
    const season = moisture < movement.made ? "dry" : "damp";
    return [{ season, moisture: percent(moisture), opens, gap: length(jointGap) }];
  });
  if (seasons.length === 0) return words.stillJoints({ made });
  return words.openJoints({ seasons, made, acceptedGap: length(movement.acceptedGap) });
}

function sightEdgeLines({ seasons, sightOpens }: FrameMovement, { formats: { small: length }, words }: Pen): string[] {
  if (!(sightOpens > 0)) return [];
  const [least, most] = rangeOf([0, ...seasons.map(({ lipChange }) => lipChange)]);
  const lip = most > least ? { shrinks: length(-least + 0), swells: length(most) } : null;
  return [words.sightEdge({ retreat: length(sightOpens), lip })];
}

function roomLine(room: LayerRoom, clearance: number, { formats, words }: Pen): string {
  const { lapLeft } = room;
  const { small: length, percent, temperature } = formats;
  const write = room.with === "moisture" ? percent : temperature;
  return words.layerRoom({
    name: isolate(room.name),
    with: room.with,
    least: write(room.least),
    most: write(room.most),
    made: write(room.made),
    needed: length(room.needed),
    clearance: length(clearance),
    enough: room.enough,
    retreat: length(room.retreat),
    lap: lapLeft === null ? null : { holds: lapLeft > 0, by: length(Math.abs(lapLeft)) },
  });
}

/**
 * What a year does to a frame and to what is in it, in sentences.
 *
 * The joints come first, with the direction in which each season opens them, then the opening, then every layer whose movement is known.
 *
 * @param plan - a plan, or its brief, movement and contents
 * @param options - formatters and words; lengths are written as small ones
 * @returns the sentences; none for a plan that knows of nothing that moves
 * @throws {InputError} when the plan has not the shape of one, or a formatter is missing
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { movementLines } from "miterwright/words";
 * import { molding } from "miterwright/profile";
 * import { formatters } from "miterwright/units";
 *
 * const plan = planFrame({
 *   sides: 4,
 *   profile: molding({ width: 50, thickness: 20 }),
 *   opening: { side: 400 },
 *   species: "black cherry",
 * });
 * const lines = movementLines(plan, { formats: formatters({ unit: "mm" }) });
 * lines[1]; //=> "The molding's inner edge draws back by up to 0.25 mm at every side. Along their grain the pieces hardly move."
 * ```
 */
export function movementLines(plan: MovingPlan, options: TellOptions): string[] {
  const given = checkObject(plan, "plan");
  const brief = readStored(given["brief"], "brief", filledBrief);
  const movement = readStored(given["movement"], "movement", (value, path) => orNull(value, path, frameMovement));
  const contents = readStored(given["contents"], "contents", frameContents);
  const { formats, words } = checkTellOptions(options);
  const pen: Pen = { formats, words: words?.movement ?? englishMovement };
  const lines = contents.room.map((room) => roomLine(room, brief.clearance, pen));
  if (movement === null) return lines;
  const unknown = movement.unknown.map((code) => pen.words.unknown[code]());
  return [jointLine(movement, pen), ...sightEdgeLines(movement, pen), ...unknown, ...lines];
}
