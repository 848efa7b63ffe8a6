/** A cutting problem whose optimum is printed. */
export interface PublishedJob {
  readonly name: string;
  readonly stick: number;
  /** Length and count of each piece. */
  readonly pieces: readonly (readonly [length: number, count: number])[];
  /** Fewest sticks. */
  readonly sticks: number;
}

export const PUBLISHED_JOBS: readonly PublishedJob[] = [
  {
    // Wikipedia, "Cutting stock problem", the example of a paper machine (value from memory): 73 rolls, 0.401 % waste.
    name: "paper machine",
    stick: 5600,
    pieces: [
      [1380, 22],
      [1520, 25],
      [1560, 12],
      [1710, 14],
      [1820, 18],
      [1880, 18],
      [1930, 20],
      [2000, 10],
      [2050, 12],
      [2100, 14],
      [2140, 16],
      [2150, 18],
      [2200, 20],
    ],
    sticks: 73,
  },
];
