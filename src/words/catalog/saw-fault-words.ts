import type { SawErrors, SawFault, SawFaultEffect } from "../../frame/index.js";

/** What the words for a fault of the saw may tell of. */
export type SawFaultValues = Pick<SawFaultEffect, "effect" | "outcomes">;

/** What every fault of a saw does to a frame. */
export type SawFaultWords = { readonly [F in SawFault]: (values: SawFaultValues) => string };

/** How the stick comes from the cut of one end to that of the other, and what goes to the other hand. */
export type SawMoveWords = { readonly [M in SawErrors["move"]]: () => string };

/** What comes of a fault that adds up, as the rest of its sentence. */
function outcomeText({ outcomes }: SawFaultValues): string {
  return [
    ...(outcomes.includes("opens-last-joint") ? [" and opens the last one"] : []),
    ...(outcomes.includes("dishes-frame") ? [" and dishes the frame"] : []),
    ...(outcomes.includes("changes-slope") ? [" and changes its slope"] : []),
  ].join("");
}

/** The sentence for a fault of something that is set. */
function faultText(subject: string, values: SawFaultValues): string {
  if (values.effect === "cancels") {
    const stair = values.outcomes.includes("leaves-step")
      ? ", but the pieces climb like a stair and leave a step at the last one"
      : "";
    return `${subject}: the two ends are off opposite ways, which cancels in every joint${stair}.`;
  }
  return `${subject}: both ends are off alike, which adds up in every joint${outcomeText(values)}.`;
}

/** In English. */
export const englishSawFaults: SawFaultWords = {
  square: (values) => faultText("A gauge off square where it reads 0", values),
  swing: (values) =>
    values.effect === "idle"
      ? "The gauge stays square, so its scale does not matter."
      : faultText("A gauge that swings too far or too little", values),
  upright: (values) => faultText("A blade off upright where it reads upright", values),
  lean: (values) =>
    values.effect === "idle"
      ? "The blade stays upright, so its scale does not matter."
      : faultText("A blade that leans too far or too little", values),
};

/** In English. */
export const englishSawMoves: SawMoveWords = {
  "flip-end-for-end": () =>
    "The stick is flipped between its ends: the gauge swings to the other hand, the blade stays as it is.",
  "slide-past-the-blade": () =>
    "The stick slides past the blade between its ends: gauge and blade both go to the other hand.",
};
