/** What is said of links and files. */
export interface OpenedWords {
  /** Names that a job had and the page can't take, and how many more. */
  readonly leftOut: (values: { readonly names: readonly string[]; readonly more: number }) => string;
  /** It was made by a newer page. */
  readonly newer: (values: {
    readonly what: "link" | "file";
    readonly version: number;
    readonly known: number;
  }) => string;
  /** It does not say which version it is. */
  readonly noVersion: (values: { readonly what: "link" | "file"; readonly known: number }) => string;
  /** A file is not JSON. */
  readonly notJson: string;
  /** A file is none of ours: it does not begin with our format. */
  readonly otherFormat: (values: { readonly format: string }) => string;
  /** A file has no fields. */
  readonly noFields: string;
  /** A list of a file is none, or too long. */
  readonly badList: (values: { readonly most: number }) => string;
  /** Name of a file without a heading, in plain letters and without its ending. */
  readonly fileName: string;
}

/** In English. */
export const englishOpened: OpenedWords = {
  leftOut: ({ names, more }) =>
    `Left out, since this page can't take it: ${names.join(", ")}${more === 0 ? "" : ` and ${more} more`}.`,
  newer: ({ what, version, known }) =>
    `This ${what} was made by a newer bench page (version ${version}); this one reads version ${known}. Reload the page, or open it where it was made.`,
  noVersion: ({ what, known }) =>
    `This ${what} does not say which version it is, so it can't be read: version ${known} is expected.`,
  notJson: "This file is no job of the bench page: it is not JSON.",
  otherFormat: ({ format }) => `This file is no job of the bench page: it does not begin with the format ${format}.`,
  noFields: "This file is damaged: its fields are missing.",
  badList: ({ most }) => `This file is damaged: a list in it is none, or has more than ${most} rows.`,
  fileName: "frame",
};
