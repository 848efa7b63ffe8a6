import { isInputError } from "miterwright/errors";
import { correctFromGap, type FramePlan } from "miterwright/frame";
import type { LengthUnit } from "miterwright/units";
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

/** The slope as it stands, or as planned where nothing is said. */
function readSlope(text: string, planned: number): Reading {
  if (text.trim() === "") return { ok: true, value: planned };
  const read = readField(text, "angle", "mm");
  if (read.ok && !(Math.abs(read.value) <= 90)) return { ok: false, words: "This has to be degrees from -90 to 90." };
  return read;
}

/**
 * The new setting that follows from a gap at the dry fit.
 *
 * @param values - the form's answers
 * @param plan - the plan of the frame that was put together
 * @returns what to do in sentences, or what is wrong
 */
export function readDryFit(values: Values, plan: FramePlan): DryFit {
  if (plan.cutting.lay === null) return NOTHING;
  const { slope } = plan.geometry;
  const seen = readSlope(values.seenSlope, slope);
  if (!seen.ok) return refused("seenSlope", seen.words);
  if (values.gap.trim() === "") return NOTHING;
  const gap = readField(values.gap, "length", values.unit as LengthUnit);
  if (!gap.ok) return refused("gap", gap.words);
  try {
    const { words } = correctFromGap(plan, {
      gap: gap.value,
      open: values.open as "inside" | "outside",
      slope: seen.value,
      hold: values.hold === "slope" ? slope : (values.hold as "bevel" | "miter"),
    });
    return {
      lines: [...words, "Cut all pieces anew from roughs, or a ring of scrap first, and look again."],
      issues: [],
    };
  } catch (error) {
    if (!isInputError(error)) throw error;
    if (error.path === "gap") {
      return refused(
        "gap",
        error.code === "range" ? "The gap can't be as wide as the molding." : "So wide a gap leaves no corner at all.",
      );
    }
    return refused(
      error.path === "hold" ? "hold" : "seenSlope",
      error.path === "hold" ? "What is held alone can't close this frame: hold the slope." : issueWords(error),
    );
  }
}
