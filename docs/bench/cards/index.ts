import { assemblyCard } from "./assembly-card.js";
import type { Card } from "./card.js";
import { lengthsCard, panelCard, planCard, sectionCard } from "./frame-cards.js";
import { hangingCard, materialsCard } from "./supply-cards.js";
import { answerCard, hazardsCard, checksCard, laysCard, stepsCard } from "./work-cards.js";
import { yearCard } from "./year-card.js";

/** The cards that follow from the plan alone, in the order of reading. */
export const CARDS: readonly Card[] = [
  answerCard,
  hazardsCard,
  stepsCard,
  laysCard,
  planCard,
  sectionCard,
  lengthsCard,
  panelCard,
  checksCard,
  assemblyCard,
  materialsCard,
  hangingCard,
  yearCard,
];
