import { movementLines } from "miterwright/words";
import type { Card } from "./card.js";
import { bullets } from "./tables.js";

/** What a year does to the frame and to what is in it. */
export const yearCard: Card = {
  id: "year",
  heading: "Over the year",
  column: "work",
  write: ({ plan, writers }) => {
    const lines = movementLines(plan, { length: writers.small });
    return lines.length === 0 ? null : bullets(lines);
  },
};
