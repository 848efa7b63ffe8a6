import type { PanelCut } from "../../panel/index.js";

/** An edge of the panel blank. */
export type BlankEdge = PanelCut["middle"]["fromSide"]["edge"] | PanelCut["middle"]["fromBase"]["edge"];

/** How the panel is cut, or what a glazier has to know. Lengths and angles come as texts. */
export interface PanelWords {
  /** The blank's size. */
  readonly blank: (values: { readonly width: string; readonly height: string }) => string;
  /** The order of the cuts. */
  readonly order: string;
  /** Panes among layers that are sawn. */
  readonly panes: string;
  /** What a glazier has to know of a pane. */
  readonly pane: (values: {
    readonly sides: number;
    readonly side: string;
    readonly interiorAngle: string;
    readonly acrossFlats: string;
    readonly acrossCorners: string;
    readonly width: string;
    readonly height: string;
  }) => string;
  /** Table of the cuts. */
  readonly cuts: {
    /** What it shows; `setting` is the gauge's angle from square. */
    readonly caption: (values: { readonly setting: string; readonly swing: PanelCut["swing"] }) => string;
    /** Heads of its columns. */
    readonly heads: Readonly<Record<"cut" | "side" | "against" | "up" | "middle", string>>;
    /** Which face of the panel is up. */
    readonly up: Readonly<Record<PanelCut["up"], string>>;
  };
  /** How far a point lies from an edge of the blank. */
  readonly fromEdge: (values: { readonly distance: string; readonly edge: BlankEdge }) => string;
  /** Table of the corners inside the blank. */
  readonly corners: {
    /** What it shows where the panel is sawn, and where a glazier cuts a pane. */
    readonly caption: Readonly<Record<"sawn" | "glass", string>>;
    /** Heads of its columns. */
    readonly heads: Readonly<Record<"corner" | "fromSide" | "fromBase", string>>;
  };
  /** Cuts that are not listed. */
  readonly moreCuts: (values: { readonly count: number }) => string;
  /** Corners that are not listed. */
  readonly moreCorners: (values: { readonly count: number }) => string;
}

/** In English. */
export const englishPanel: PanelWords = {
  blank: ({ width, height }) => `Square the panel blank to ${width} × ${height}.`,
  order: "Cut its sides in this order with one setting of the gauge.",
  panes: "Glass is not sawn: have it cut by a glazier to the same sizes.",
  pane: ({ sides, side, interiorAngle, acrossFlats, acrossCorners, width, height }) =>
    `Glass is not sawn. Have it cut by a glazier: ${sides} equal sides of ${side} at ${interiorAngle}, across flats ${acrossFlats}, across corners ${acrossCorners}, out of ${width} × ${height}.`,
  cuts: {
    caption: ({ setting, swing }) =>
      `Cuts at the miter gauge, swung ${setting} from square: gauge and blade stand at ${swing === "closed" ? "less" : "more"} than a right angle`,
    heads: {
      cut: "cut",
      side: "side",
      against: "against",
      up: "up",
      middle: "its middle from the panel blank's edges",
    },
    up: { front: "front", back: "back" },
  },
  fromEdge: ({ distance, edge }) => `${distance} from the ${edge}`,
  corners: {
    caption: {
      sawn: "Corners inside the panel blank, marked before the first cut: P and the number of the side that starts there",
      glass: "Corners inside that rectangle: P and the number of the side that starts there",
    },
    heads: { corner: "corner", fromSide: "from the side", fromBase: "from the base" },
  },
  moreCuts: ({ count }) => `${count} more cuts follow in the same way.`,
  moreCorners: ({ count }) => `${count} more corners follow in the same way.`,
};
