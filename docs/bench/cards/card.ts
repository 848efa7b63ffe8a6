import type { FramePlan } from "miterwright/frame";
import type { Markup } from "../html.js";
import type { Writers } from "../writers.js";

/** What a card is made from. */
export interface CardFacts {
  /** The plan. */
  readonly plan: FramePlan;
  /** How lengths and angles are written. */
  readonly writers: Writers;
  /** Width to aim at for drawings, in pixels. */
  readonly width: number;
}

/** A part of the plan on the page. */
export interface Card {
  /** Its name in the page. */
  readonly id: string;
  /** Its heading. */
  readonly heading: string;
  /** Which of the two columns it stands in on a wide page. */
  readonly column: "frame" | "work";
  /** Writes it; `null` where the plan has nothing of the kind. */
  readonly write: (facts: CardFacts) => Markup | null;
}
