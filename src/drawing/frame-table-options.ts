/** What the tables of a frame have to be told. */
export interface FrameTableOptions {
  /** Writes a length in the reader's unit. */
  readonly length: (value: number) => string;
  /** Writes an angle that is given in degrees. */
  readonly angle: (degrees: number) => string;
  /** What the table shows, in a few words; default words for what it always shows. */
  readonly caption?: string | undefined;
}
