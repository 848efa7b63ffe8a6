import type { TellOptions } from "../../words/index.js";

/** What the tables of a frame have to be told. */
export interface FrameTableOptions extends TellOptions {
  /** What the table shows, in a few words; default words for what it always shows. */
  readonly caption?: string | undefined;
}
