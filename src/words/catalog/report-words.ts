/** The parts of a report. */
export type SectionName =
  | "glance"
  | "hazards"
  | "frame"
  | "contents"
  | "materials"
  | "hangers"
  | "stock"
  | "saw"
  | "cradle"
  | "proof"
  | "steps"
  | "checks"
  | "gluing"
  | "trueness"
  | "year"
  | "panel"
  | "pane"
  | "correction"
  | "rounds";

/** What a report is headed with, and what comes before all else. */
export interface ReportWords {
  /** The language of the catalog, as a tag of BCP 47. */
  readonly language: string;
  /** The title of a plan's report; `slope` is `null` where the frame lies flat. */
  readonly planTitle: (values: { readonly sides: number; readonly slope: string | null }) => string;
  /** Titles of other reports. */
  readonly titles: Readonly<Record<"fit" | "correction" | "panel" | "shopOrder", string>>;
  /** The heading of every section. */
  readonly sections: Readonly<Record<SectionName, string>>;
  /** What has to be mended before anything is cut. */
  readonly notReady: (values: { readonly reason: string }) => string;
  /** What always holds of hazards. */
  readonly hazards: string;
  /** A sentence, and the numbers behind it. */
  readonly withNumbers: (values: { readonly sentence: string; readonly numbers: string }) => string;
  /** Table of the settings. */
  readonly settings: {
    /** What it shows. */
    readonly caption: string;
    /** Heads of its columns. */
    readonly heads: Readonly<Record<"scale" | "mustShow" | "reads", string>>;
    /** Names of the scales. */
    readonly scales: Readonly<Record<"miter" | "bevel", string>>;
  };
  /** Table of the ways to lay the stick. */
  readonly lays: {
    /** What it shows. */
    readonly caption: string;
    /** Heads of its columns. */
    readonly heads: Readonly<Record<"lay" | "miter" | "bevel" | "height" | "depth" | "works", string>>;
  };
}

/** In English. */
export const englishReports: ReportWords = {
  language: "en",
  planTitle: ({ sides, slope }) =>
    `Shop sheet: frame of ${sides} sides, ${slope === null ? "lying flat" : `sloping ${slope}`}`,
  titles: {
    fit: "Cutting up the sticks",
    correction: "Correcting the setting",
    panel: "Cutting the panel",
    shopOrder: "Several frames at one saw",
  },
  sections: {
    glance: "At a glance",
    hazards: "Hazards",
    frame: "The frame",
    contents: "Contents",
    materials: "Molding",
    hangers: "Hanging",
    stock: "Sticks",
    saw: "At the saw",
    cradle: "The cradle",
    proof: "Prove the setting on scrap",
    steps: "Step by step",
    checks: "Dry fit and checks",
    gluing: "Gluing up",
    trueness: "How true the saw must be",
    year: "Over the year",
    panel: "The panel",
    pane: "The pane",
    correction: "Correction",
    rounds: "Rounds",
  },
  notReady: ({ reason }) => `Not ready to cut. ${reason}`,
  hazards:
    "Saws and glass hurt people. What is written here is arithmetic, not advice: it defers to the saw's manual, to local codes for glazing and hanging, and to qualified advice. Keep guards on and hands out of the blade's path, and prove settings on scrap. What names no source is common practice or computed.",
  withNumbers: ({ sentence, numbers }) => `${sentence} (${numbers})`,
  settings: {
    caption: "What the scales must show for either end",
    heads: { scale: "scale", mustShow: "must show", reads: "it reads" },
    scales: { miter: "miter", bevel: "bevel" },
  },
  lays: {
    caption: "Every way to lay the stick",
    heads: {
      lay: "the stick lies",
      miter: "miter",
      bevel: "bevel",
      height: "height",
      depth: "depth",
      works: "works?",
    },
  },
};
