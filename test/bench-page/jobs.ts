import { emptyJob, type JobState, type Row } from "../../docs/bench/job-state.js";
import type { FieldName } from "../../docs/bench/fields.js";

/** A form in which only some fields are filled in. */
export function jobOf(
  values: Partial<Record<FieldName, string>>,
  lists: { readonly sticks?: readonly Row[]; readonly layers?: readonly Row[] } = {},
): JobState {
  const empty = emptyJob();
  return {
    values: { ...empty.values, ...values },
    lists: { sticks: lists.sticks ?? [], layers: lists.layers ?? [] },
  };
}

/** The fewest answers that make a plan: a splayed tray of six sides round a rectangle. */
export const TRAY: Partial<Record<FieldName, string>> = {
  width: "300",
  height: "200",
  sides: "6",
  moldingWidth: "52",
  thickness: "19",
  rabbetWidth: "9",
  rabbetDepth: "11",
  slope: "20",
};
