import type { Quantity } from "../fields.js";
import { englishReadReasons, type ReadReasonWords } from "./read-reason-words.js";

/** The least and the most that a field takes, as texts. */
export interface BoundValues {
  /** The least. */
  readonly from: string;
  /** The most. */
  readonly to: string;
}

/** What cannot be made, though every number by itself can be read. */
export type Impossible =
  | "opening-too-small"
  | "rabbet-too-wide"
  | "rabbet-too-deep"
  | "molding-too-narrow"
  | "molding-too-thin"
  | "milled-too-steep"
  | "unsuitable";

/** What is said beside a field that can't be used. */
export interface ErrorWords {
  /** A text that can't be read, and why, a clause. */
  readonly unreadable: Readonly<Record<"length" | "angle", (values: { readonly reason: string }) => string>>;
  /** Why a text can't be read, a clause for every fault. */
  readonly reasons: ReadReasonWords;
  /** What is counted in whole numbers. */
  readonly notCount: string;
  /** What takes a plain number. */
  readonly notNumber: string;
  /** What has to be more than zero. */
  readonly notPositive: string;
  /** What can't be less than zero. */
  readonly negative: string;
  /** A whole number out of bounds. */
  readonly wholeNumber: (values: BoundValues) => string;
  /** An angle out of bounds, in degrees. */
  readonly angle: (values: BoundValues) => string;
  /** A number out of bounds, by what it counts. */
  readonly number: Readonly<Record<Quantity, (values: BoundValues) => string>>;
  /** A length that no arithmetic can use: a positive one, or one that may be zero. */
  readonly length: Readonly<Record<"positive" | "zero", string>>;
  /** What cannot be made. */
  readonly impossible: Readonly<Record<Impossible, string>>;
  /** Two rows have one name. */
  readonly sameName: string;
  /** The wood of the molding is needed. */
  readonly woodNeeded: string;
  /** The density of a sheet is needed. */
  readonly densityNeeded: string;
  /** No frame is to be made. */
  readonly noFrames: string;
}

/** In English. */
export const englishErrors: ErrorWords = {
  unreadable: {
    length: ({ reason }) => `This can't be read as a length: ${reason}.`,
    angle: ({ reason }) => `This can't be read as an angle: ${reason}.`,
  },
  reasons: englishReadReasons,
  notCount: "This is counted in whole numbers, such as 6.",
  notNumber: "This has to be a plain number, such as 12 or 12.50.",
  notPositive: "This has to be more than zero.",
  negative: "This can't be less than zero.",
  wholeNumber: ({ from, to }) => `This has to be a whole number from ${from} to ${to}.`,
  angle: ({ from, to }) => `This has to be degrees from ${from} to ${to}.`,
  number: {
    percent: ({ from, to }) => `This has to be a moisture in percent from ${from} to ${to}.`,
    kilograms: ({ from, to }) => `This has to be kilograms from ${from} to ${to}.`,
    density: ({ from, to }) => `This has to be kilograms per cubic meter from ${from} to ${to}.`,
    amount: ({ from, to }) => `This has to be an amount from ${from} to ${to}.`,
  },
  length: {
    positive: "This has to be a positive length.",
    zero: "This has to be zero or a positive length.",
  },
  impossible: {
    "opening-too-small":
      "The opening is too small for this molding and number of sides: the sides would have no length at the inside.",
    "rabbet-too-wide": "This is too wide for the molding: the rabbet's wall needs wood behind it.",
    "rabbet-too-deep": "This is too deep for the molding: a lip has to be left.",
    "molding-too-narrow": "This is too narrow: the outer edge and the sight edge have to reach the face apart.",
    "molding-too-thin": "This is too thin: the back and the rabbet take up all of it at this slope.",
    "milled-too-steep": "No molding can be milled for so steep a slope.",
    unsuitable: "This can't be taken together with the other answers.",
  },
  sameName: "Another row has this name already.",
  woodNeeded: "Say which wood the molding is of.",
  densityNeeded: "Say how dense the sheet is.",
  noFrames: "At least one frame has to be made.",
};
