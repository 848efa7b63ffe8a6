/** What an operation does to the stick. */
export type OperationKind =
  /** Crosscuts a rough piece off the stick. */
  | "crosscut"
  /** Cuts the first end of a piece. */
  | "first-end"
  /** Cuts the second end and so gives the piece its length. */
  | "second-end";
