import { emptyJob, type JobState } from "./job-state.js";

/**
 * The job of our own demo: a nine-sided tray round a relief model.
 *
 * @returns the job
 */
export function exampleJob(): JobState {
  const empty = emptyJob();
  return {
    values: {
      ...empty.values,
      width: "340",
      height: "260",
      allowance: "2",
      clearance: "1.5",
      sides: "9",
      moldingWidth: "60",
      thickness: "24",
      rabbetWidth: "8",
      rabbetDepth: "16",
      slope: "35",
      title: "Nine-sided tray for the relief model",
    },
    lists: {
      layers: [
        { name: "glass", thickness: "2", material: "glass" },
        { name: "relief model", thickness: "3" },
      ],
      sticks: [
        { length: "2400", name: "ash, full stick" },
        { length: "1150", count: "2", cost: "300", name: "ash, offcut in the rack" },
      ],
    },
  };
}
