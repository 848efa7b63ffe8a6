import type { LayWish } from "../../frame/index.js";

/** What the words for a wish that a lay does not meet may tell of. */
export interface GivenUpValues {
  /** What holds a stick that is not steady: a clamp, a cradle, or a cradle that has to be widened or clamped itself. */
  readonly hold: "clamp" | "cradle" | "widened-cradle";
  /** Where the showing side tears out: all of it lies on the table, or it meets the fence. */
  readonly tearsAt: "table" | "fence";
}

/** How the stick lies, and which wishes a lay does not meet. */
export interface LayWords {
  /** How the stick lies, by the name of the lay. */
  readonly lies: (values: { readonly lay: string }) => string;
  /** What to do where a wish is given up. */
  readonly givenUp: Readonly<Record<LayWish, (values: GivenUpValues) => string>>;
}

/** In English. */
export const englishLays: LayWords = {
  lies: ({ lay }) => `The stick lies ${lay}.`,
  givenUp: {
    steady: ({ hold }) =>
      ({
        clamp: "It stands high on a narrow surface: clamp it upright.",
        cradle: "It does not lie there by itself: a cradle holds it.",
        "widened-cradle": "It does not lie there by itself: a cradle holds it, which has to be widened or clamped.",
      })[hold],
    "open-side": () => "The piece lies under the leaning blade: clamp it.",
    "showing-side-up": ({ tearsAt }) =>
      tearsAt === "table"
        ? "Its showing side lies on the table, where the teeth leave the wood: back it with scrap, or score the line."
        : "Its showing side does not lie up, so it can tear out where it meets the fence: back it with scrap, or score the line.",
  },
};
