import { isInputError } from "miterwright/errors";
import { planFrame, stockJob, type FramePlan } from "miterwright/frame";
import { issueField } from "./issue-field.js";
import { issueWords } from "./issue-words.js";
import type { JobState } from "./job-state.js";
import { LANGUAGE, type Language } from "./language.js";
import type { FieldIssue } from "./read-fields.js";
import { readJob } from "./read-job.js";
import { penOf } from "./writers.js";

/** A form and the plan that follows from it. */
export interface PlannedJob {
  /** The plan; `null` while a field is wrong or needed. Its stock job is for all frames that are made. */
  readonly plan: FramePlan | null;
  /** How many such frames are made. */
  readonly frames: number;
  /** What is wrong, field by field. */
  readonly issues: readonly FieldIssue[];
  /** The fields that are empty and needed, by key. */
  readonly needed: readonly string[];
}

/**
 * Plans the job that a form describes.
 *
 * @param state - the form
 * @param language - what is wrong is told in; default the page's own language
 * @returns the plan, or what is wrong or needed
 */
export function planJob(state: JobState, language: Language = LANGUAGE): PlannedJob {
  const pen = penOf(state.values, language);
  const { brief, frames, keep, issues, needed } = readJob(state, pen);
  if (brief === null) return { plan: null, frames, issues, needed };
  try {
    const plan = planFrame(brief);
    const { kerf, rough, sticks } = plan.brief;
    if (sticks === undefined) return { plan, frames, issues, needed };
    const job = stockJob(plan.geometry, { kerf, rough, sticks, frames, ...(keep > 0 ? { keep } : {}) });
    return { plan: { ...plan, stockJobs: [job] }, frames, issues, needed };
  } catch (error) {
    if (!isInputError(error)) throw error;
    const field = issueField(error.path, state.values.holds);
    return { plan: null, frames, issues: [{ field, words: issueWords(error, field, pen) }], needed };
  }
}
