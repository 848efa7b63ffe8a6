import { isInputError } from "miterwright/errors";
import { correctFromGap, type FramePlan } from "miterwright/frame";
import { correctionLines } from "miterwright/words";
import { formatAngle, type LengthUnit } from "miterwright/units";
import type { Values } from "./fields.js";
import { issueWords } from "./issue-words.js";
import { readField, type Reading } from "./read-field.js";
import type { FieldIssue } from "./read-fields.js";

/** What follows from a gap at the dry fit. */
export interface DryFit {
  /** What to do, in sentences; empty while nothing is asked. */
  readonly lines: readonly string[];
  /** What is wrong with the fields. */
  readonly issues: readonly FieldIssue[];
}

const NOTHING: DryFit = { lines: [], issues: [] };

function refused(field: string, words: string): DryFit {
  return { lines: [], issues: [{ field, words }] };
}

/** An angle that was seen or read, or what is taken for it where nothing is said. */
function readAngle(text: string, otherwise: number, least: number): Reading {
  if (text.trim() === "") return { ok: true, value: otherwise };
  const read = readField(text, "angle", "mm");
  if (read.ok && !(read.value >= least && read.value <= 90)) {
    return { ok: false, words: `This has to be degrees from ${least} to 90.` };
  }
  return read;
}

/** What the scales stood at, said beside the result where it was only taken for granted. */
function takenWords(values: Values, shown: { readonly miter: number; readonly bevel: number }): string[] {
  const blank = (["miter", "bevel"] as const).filter(
    (name) => values[name === "miter" ? "shownMiter" : "shownBevel"].trim() === "",
  );
  if (blank.length === 0) return [];
  const marks = blank.map((name) => `${formatAngle(shown[name])} on the ${name} scale`).join(" and ");
  return [`It is taken that the pieces were cut at the best mark, ${marks}. If not, say above where it stood.`];
}

/**
 * The new setting that follows from a gap at the dry fit.
 *
 * @param values - the form's answers
 * @param plan - the plan of the frame that was put together
 * @returns what to do in sentences, or what is wrong
 */
export function readDryFit(values: Values, plan: FramePlan): DryFit {
  const { graduations } = plan.sawing;
  if (graduations === null) return NOTHING;
  const { slope } = plan.geometry;
  const seen = readAngle(values.seenSlope, slope, -90);
  if (!seen.ok) return refused("seenSlope", seen.words);
  const miter = readAngle(values.shownMiter, graduations.best.miter, 0);
  if (!miter.ok) return refused("shownMiter", miter.words);
  const bevel = readAngle(values.shownBevel, graduations.best.bevel, 0);
  if (!bevel.ok) return refused("shownBevel", bevel.words);
  if (values.seenGap.trim() === "") return NOTHING;
  const gap = readField(values.seenGap, "room", values.unit as LengthUnit);
  if (!gap.ok) return refused("seenGap", gap.words);
  const shown = { miter: miter.value, bevel: bevel.value };
  try {
    const correction = correctFromGap(plan, {
      seenGap: gap.value,
      open: values.open as "inside" | "outside",
      // Nothing said, it follows from what the scales stood at.
      slope: values.seenSlope.trim() === "" ? undefined : seen.value,
      shown,
      hold: values.hold === "slope" ? undefined : (values.hold as "bevel" | "miter"),
    });
    return {
      lines: [
        ...takenWords(values, shown),
        ...correctionLines(correction),
        ...(gap.value === 0
          ? ["The setting is good: cut and glue with it."]
          : ["Cut all pieces anew from blanks, or a ring of scrap first, and look again."]),
      ],
      issues: [],
    };
  } catch (error) {
    if (!isInputError(error)) throw error;
    if (error.path === "seenGap") {
      return refused(
        "seenGap",
        error.code === "range" ? "The gap can't be as wide as the molding." : "So wide a gap leaves no corner at all.",
      );
    }
    if (error.path === "hold") return refused("hold", "What is held alone can't close this frame: hold the slope.");
    if (error.path === "shown") {
      const [miterOff, bevelOff] = [shown.miter - graduations.best.miter, shown.bevel - graduations.best.bevel].map(
        Math.abs,
      );
      const field = bevelOff! > miterOff! ? "shownBevel" : "shownMiter";
      return refused(field, "From there no setting of this saw closes the frame.");
    }
    return refused("seenSlope", issueWords(error));
  }
}
