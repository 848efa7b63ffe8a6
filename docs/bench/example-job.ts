import { emptyJob, type JobState } from "./job-state.js";
import type { ExampleWords } from "./labels/example-words.js";
import { LANGUAGE } from "./language.js";

/**
 * The job of our own demo: a nine-sided tray round a relief model.
 *
 * @param names - what it is called; default in the page's own language
 * @returns the job
 */
export function exampleJob(names: ExampleWords = LANGUAGE.page.example): JobState {
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
      title: names.title,
    },
    lists: {
      layers: [
        { name: names.layers.glass, thickness: "2", material: "glass" },
        { name: names.layers.model, thickness: "3" },
      ],
      sticks: [
        { length: "2400", name: names.sticks.full },
        { length: "1150", count: "2", cost: "300", name: names.sticks.offcut },
      ],
    },
  };
}
