import type { AskedStep } from "../field-table.js";
import { englishDictionary, type Word } from "./dictionary.js";
import { englishDryFitFields } from "./dry-fit-fields.js";
import type { AllFieldWords } from "./field-words.js";
import { englishMoldingFields } from "./molding-fields.js";
import { englishRackFields } from "./rack-fields.js";
import { englishSawFields } from "./saw-fields.js";
import { englishSizeFields } from "./size-fields.js";
import { englishSteps, type StepQuestion } from "./steps.js";
import { englishTemplate, type TemplateWords } from "./template-words.js";
import { englishWoodFields } from "./wood-fields.js";

/** What is written into the page when it is built: its form, and the frame round it. No script holds these texts a second time. */
export interface FormWords {
  /** What stands round the form. */
  readonly template: TemplateWords;
  /** The question of every step, and a hint below it. */
  readonly steps: Readonly<Record<AskedStep, StepQuestion>>;
  /** What opens the fields that are rarely needed. */
  readonly finer: string;
  /** What the fields say. */
  readonly fields: AllFieldWords;
  /** The meanings of the trade words. */
  readonly dictionary: readonly Word[];
}

/** All fields in one table. It is a function, so that a bundle that does not use the table can leave it out. */
function englishFields(): AllFieldWords {
  return {
    ...englishSizeFields,
    ...englishMoldingFields,
    ...englishSawFields,
    ...englishWoodFields,
    ...englishRackFields,
    ...englishDryFitFields,
  };
}

/** In English. */
export const formEnglish: FormWords = {
  template: englishTemplate,
  steps: englishSteps,
  finer: "Finer points",
  fields: /* @__PURE__ */ englishFields(),
  dictionary: englishDictionary,
};
