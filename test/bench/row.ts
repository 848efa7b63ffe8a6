/** What a number of the benchmark is. */
export type Meaning = "times as long as bare trigonometry" | "times as fast as the other library";

/** One number of the benchmark. */
export interface Row {
  /** What was timed. */
  readonly name: string;
  /** What the value is. */
  readonly meaning: Meaning;
  /** A ratio of two times of one run. */
  readonly value: number;
}
