import { englishDryFit, type DryFitWords } from "./dry-fit-words.js";
import { englishErrors, type ErrorWords } from "./error-words.js";
import { englishExample, type ExampleWords } from "./example-words.js";
import type { AllListWords } from "./field-words.js";
import { englishFullSize, type FullSizeWords } from "./full-size-words.js";
import { englishLists } from "./lists.js";
import { englishOpened, type OpenedWords } from "./opened-words.js";
import { englishRack, type RackWords } from "./rack-words.js";
import { englishStatus, type StatusWords } from "./status-words.js";

/**
 * Every text that the page itself says while it is used. What is told of a plan comes from the library's own catalog, `Words`, and what was written when the
 * page was built stands in `FormWords`.
 *
 * Values come formatted; counts come as numbers.
 */
export interface PageWords {
  /** The language of the catalog, as a tag of BCP 47. */
  readonly language: string;
  /** What the lists say. */
  readonly lists: AllListWords;
  /** How far a plan is, and what buttons did. */
  readonly status: StatusWords;
  /** What is wrong with a field. */
  readonly errors: ErrorWords;
  /** What is said of links and files. */
  readonly opened: OpenedWords;
  /** How the sticks are fitted. */
  readonly rack: RackWords;
  /** What is said of a gap at the dry fit. */
  readonly dryFit: DryFitWords;
  /** The profile at full size. */
  readonly fullSize: FullSizeWords;
  /** Names in the example. */
  readonly example: ExampleWords;
  /** What opens the meanings of the trade words. */
  readonly meanings: string;
}

/** The page's texts in English. */
export const pageEnglish: PageWords = {
  language: "en",
  lists: englishLists,
  status: englishStatus,
  errors: englishErrors,
  opened: englishOpened,
  rack: englishRack,
  dryFit: englishDryFit,
  fullSize: englishFullSize,
  example: englishExample,
  meanings: "What the words mean",
};
