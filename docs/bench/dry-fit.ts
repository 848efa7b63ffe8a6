import { correctSetting } from "miterwright/closure";
import { isInputError } from "miterwright/errors";
import type { FramePlan } from "miterwright/frame";
import type { ScaleSetting } from "miterwright/saw";
import type { LengthUnit } from "miterwright/units";
import type { Values } from "./fields.js";
import { issueWords } from "./issue-words.js";
import { readField, type Reading } from "./read-field.js";
import type { FieldIssue } from "./read-fields.js";
import type { Writers } from "./writers.js";

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

/** A roll of half a turn changes both signs of a setting and no size, so any lay has a twin from -90 to 90. */
function nearestTwin(rotation: number): number {
  return rotation > 90 ? rotation - 180 : rotation < -90 ? rotation + 180 : rotation;
}

/** What a scale that shows the planned setting has to show instead. */
function scaleLine(name: string, setting: ScaleSetting, grows: number, runsDown: boolean, { angle }: Writers): string {
  const reading = setting.reading + (runsDown ? -grows : grows);
  return `If the ${name} scale stood at ${angle(setting.reading)}, set it to ${angle(reading)}.`;
}

/**
 * The new setting that follows from a gap at the dry fit.
 *
 * The saw holds a stick at a tilt that stays, so a ring that closes at another slope was cut as if rolled by the difference. In a lay rolled by r a cut is what it would be
 * in a frame of slope r lying flat, which is what the correction is computed for.
 *
 * @param values - the form's answers
 * @param plan - the plan of the frame that was put together
 * @param writers - how angles are written
 * @returns what to do in sentences, or what is wrong
 */
export function readDryFit(values: Values, plan: FramePlan, writers: Writers): DryFit {
  const { lay, saw } = plan.cutting;
  if (lay === null) return NOTHING;
  const { sides, slope, levelWidth } = plan.geometry;
  const seen = readSlope(values.seenSlope, slope);
  if (!seen.ok) return refused("seenSlope", seen.words);
  if (values.gap.trim() === "") return NOTHING;
  const gap = readField(values.gap, "length", values.unit as LengthUnit);
  if (!gap.ok) return refused("gap", gap.words);
  const planned = nearestTwin(lay.rotation);
  const asSeen = planned + seen.value - slope;
  if (!(Math.abs(asSeen) <= 90))
    return refused("seenSlope", "This is too far from the planned slope to be put right by a setting.");
  const hold = values.hold === "slope" ? planned : (values.hold as "bevel" | "miter");
  try {
    const {
      cut,
      wanted,
      correction,
      slope: reached,
      words,
    } = correctSetting({
      sides,
      width: levelWidth,
      gap: gap.value,
      open: values.open as "inside" | "outside",
      slope: asSeen,
      hold,
    });
    const { miter, bevel } = lay.first;
    const grows = (name: "miter" | "bevel"): number => Math.abs(wanted[name]) - Math.abs(cut[name]);
    const lines = [...words];
    if (Math.abs(correction.miter) >= 0.005) {
      lines.push(scaleLine("miter", miter, grows("miter"), saw.miter.reads === "from-blade", writers));
    }
    if (Math.abs(correction.bevel) >= 0.005) {
      lines.push(scaleLine("bevel", bevel, grows("bevel"), saw.bevel.reads === "from-table", writers));
    }
    const closes = slope + reached - planned;
    if (Math.abs(closes - slope) >= 0.005) lines.push(`The frame then closes at a slope of ${writers.angle(closes)}.`);
    lines.push("Cut all pieces anew from roughs, or a ring of scrap first, and look again.");
    return { lines, issues: [] };
  } catch (error) {
    if (!isInputError(error)) throw error;
    if (error.path === "gap") {
      return refused(
        "gap",
        error.code === "range" ? "The gap can't be as wide as the molding." : "So wide a gap leaves no corner at all.",
      );
    }
    return refused(
      error.path === "slope" ? "seenSlope" : "hold",
      error.path === "hold" ? "What is held alone can't close this frame: hold the slope." : issueWords(error),
    );
  }
}
