/** What the words for the molding that a frame takes may tell of. Lengths, masses and amounts come as texts. */
export interface MoldingValues {
  /** How many pieces. */
  readonly pieces: number;
  /** The length of the blank that each comes from; `null` where each is cut straight from the stick. */
  readonly blank: string | null;
  /** The molding used up. */
  readonly molding: string;
  /** What every cut takes. */
  readonly cut: string;
}

/** What the words for lumber may tell of. */
export interface LumberValues {
  /** Board feet, a number. */
  readonly boardFeet: string;
  /** Cubic meters, a number. */
  readonly cubicMeters: string;
  /** Width of the boards, a length. */
  readonly width: string;
  /** Thickness of the boards, a length. */
  readonly thickness: string;
}

/** What a frame takes, weighs and costs. */
export interface MaterialWords {
  /** Names of the sums. */
  readonly facts: Readonly<Record<"molding" | "mass" | "cost", (values: { readonly isOfMany: boolean }) => string>>;
  /** What the molding is called among the parts. */
  readonly moldingPart: string;
  /** A sum that is known in part, and the names of what is not in it. */
  readonly atLeast: (values: { readonly sum: string; readonly missing: string }) => string;
  /** How much molding the pieces take. */
  readonly molding: (values: MoldingValues) => string;
  /** What the molding weighs and costs; either may be `null`. */
  readonly weighsAndCosts: (values: { readonly mass: string | null; readonly cost: string | null }) => string;
  /** The lumber that the molding is milled from. */
  readonly lumber: (values: LumberValues) => string;
  /** What is written where a figure is not known. */
  readonly notKnown: string;
}

/** In English. */
export const englishMaterials: MaterialWords = {
  facts: {
    molding: ({ isOfMany }) => (isOfMany ? "molding needed, a frame" : "molding needed"),
    mass: ({ isOfMany }) => (isOfMany ? "mass, a frame" : "mass"),
    cost: ({ isOfMany }) => (isOfMany ? "cost, a frame" : "cost"),
  },
  moldingPart: "molding",
  atLeast: ({ sum, missing }) => `at least ${sum}, without ${missing}`,
  molding: ({ pieces, blank, molding, cut }) =>
    `Molding: ${pieces} pieces, each ${blank === null ? "cut straight from the stick" : `from a blank of ${blank}`}, use up ${molding} of molding: one cut before the first piece and one after each take ${cut} a cut, and each further stick takes one cut more.`,
  weighsAndCosts: ({ mass, cost }) => {
    const facts = [mass === null ? "" : `weighs ${mass}`, cost === null ? "" : `costs ${cost}`];
    return `It ${facts.filter((fact) => fact !== "").join(" and ")}.`;
  },
  lumber: ({ boardFeet, cubicMeters, width, thickness }) =>
    `Before waste it is ${boardFeet} board feet (${cubicMeters}\u00a0m³) of lumber of ${width} × ${thickness}.`,
  notKnown: "?",
};
