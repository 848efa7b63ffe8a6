import { isInputError, type InputError } from "miterwright/errors";
import { correctFromGap, type FramePlan } from "miterwright/frame";
import { correctionLines } from "miterwright/words";
import type { LengthUnit } from "miterwright/units";
import type { Values } from "./fields.js";
import { readField, type Reading } from "./read-field.js";
import type { FieldIssue } from "./read-fields.js";
import type { Pen } from "./writers.js";

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

/** Most degrees that a scale shows or a side slopes. */
const MOST: number = 90;

/** An angle that was seen or read, or what is taken for it where nothing is said. */
function readAngle(text: string, otherwise: number, least: number, { page, formats: { number } }: Pen): Reading {
  if (text.trim() === "") return { ok: true, value: otherwise };
  const read = readField(text, "angle", { unit: "mm", page });
  if (read.ok && !(read.value >= least && read.value <= MOST)) {
    return { ok: false, words: page.errors.angle({ from: number(least), to: number(MOST) }) };
  }
  return read;
}

/** Where the scales stood. */
interface Shown {
  readonly miter: number;
  readonly bevel: number;
}

/** What the scales stood at, said beside the result where it was only taken for granted. */
function takenWords({ shownMiter, shownBevel }: Values, shown: Shown, { page, fine }: Pen): string[] {
  const miter = shownMiter.trim() === "" ? fine.angle(shown.miter) : null;
  const bevel = shownBevel.trim() === "" ? fine.angle(shown.bevel) : null;
  return miter === null && bevel === null ? [] : [page.dryFit.taken({ miter, bevel })];
}

/** Why no correction was found, beside the field that can change it. */
function refusal({ code, path }: InputError, shown: Shown, best: Shown, { page }: Pen): DryFit {
  const { tooWide, noCorner, held, shown: shownWords } = page.dryFit.refused;
  if (path === "seenGap") return refused("seenGap", code === "range" ? tooWide : noCorner);
  if (path === "hold") return refused("hold", held);
  if (path !== "shown") return refused("seenSlope", page.errors.impossible.unsuitable);
  const isBevelFarther = Math.abs(shown.bevel - best.bevel) > Math.abs(shown.miter - best.miter);
  return refused(isBevelFarther ? "shownBevel" : "shownMiter", shownWords);
}

/**
 * The new setting that follows from a gap at the dry fit.
 *
 * @param values - the form's answers
 * @param plan - the plan of the frame that was put together
 * @param pen - what the page writes with
 * @returns what to do in sentences, or what is wrong
 */
export function readDryFit(values: Values, plan: FramePlan, pen: Pen): DryFit {
  const { graduations } = plan.sawing;
  if (graduations === null) return NOTHING;
  const { slope } = plan.geometry;
  const seen = readAngle(values.seenSlope, slope, -MOST, pen);
  if (!seen.ok) return refused("seenSlope", seen.words);
  const miter = readAngle(values.shownMiter, graduations.best.miter, 0, pen);
  if (!miter.ok) return refused("shownMiter", miter.words);
  const bevel = readAngle(values.shownBevel, graduations.best.bevel, 0, pen);
  if (!bevel.ok) return refused("shownBevel", bevel.words);
  if (values.seenGap.trim() === "") return NOTHING;
  const gap = readField(values.seenGap, "room", { unit: values.unit as LengthUnit, page: pen.page });
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
        ...takenWords(values, shown, pen),
        ...correctionLines(correction, { words: pen.words, formats: pen.fine }),
        gap.value === 0 ? pen.page.dryFit.good : pen.page.dryFit.again,
      ],
      issues: [],
    };
  } catch (error) {
    if (!isInputError(error)) throw error;
    return refusal(error, shown, graduations.best, pen);
  }
}
