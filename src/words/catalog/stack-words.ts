import type { StackVerdict } from "../../frame/index.js";

/** How the contents fill the rabbet. */
export type StackWords = { readonly [V in StackVerdict]: () => string };

/** In English. */
export const englishStacks: StackWords = {
  roomy: () => "Behind the contents there is room for what holds them.",
  tight: () =>
    "Behind the contents there is just room for what holds them, and not enough when the glass is as thick as its tolerance allows: measure it before the frame is cut.",
  short: () =>
    "The contents leave less depth behind them than what holds them takes: use thinner layers, a deeper rabbet, or fasteners that need less.",
  proud: () =>
    "The contents stand proud of the rabbet: hold them with offset clips, build the back up with strips, or use a deeper rabbet.",
};
