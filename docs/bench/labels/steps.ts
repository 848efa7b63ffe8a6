import type { AskedStep } from "../field-table.js";

/** What a step of the form asks. */
export interface StepQuestion {
  /** The question. */
  readonly question: string;
  /** A hint below it. */
  readonly hint: string;
}

/** The questions of the form, in English. */
export const englishSteps: Readonly<Record<AskedStep, StepQuestion>> = {
  inside: {
    question: "What goes in?",
    hint: "The picture, mirror or tray bottom that decides how large the frame has to be.",
  },
  shape: { question: "Which shape?", hint: "A frame of equal sides and equal corners." },
  molding: {
    question: "Which molding?",
    hint: "The strip of wood that the sides are cut from, looked at from its end.",
  },
  slope: {
    question: "How steep?",
    hint: "A picture frame lies flat. A splayed frame, such as a tray, has sides that slope.",
  },
  saw: { question: "Which saw?", hint: "Left and right are yours as you stand in front of it." },
  wood: {
    question: "Which wood, and does it hang?",
    hint: "For what the frame weighs, what a year does to it, and how it is held on a wall. Leave it as it is and none of that is computed.",
  },
  rack: {
    question: "What is in the rack?",
    hint: "The lengths of molding that you have or can buy. Leave it empty and only the need is computed.",
  },
  paper: { question: "What stands on the sheet?", hint: "The heading of the shop sheet that you print." },
};
