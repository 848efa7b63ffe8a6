import type { LayerKind } from "../../frame/index.js";

/** What the words for a stack of layers may tell of. Lengths come as texts. */
export interface StackValues {
  /** The thickness of all layers together. */
  readonly thickness: string;
  /** The depth that is left behind them; `null` where the rabbet is not known. */
  readonly left: string | null;
  /** How far they stand out of the rabbet; `null` where they do not. */
  readonly proud: string | null;
  /** The depth that is left if the glass is as thick as it may be; `null` where that is no other. */
  readonly leftAtLeast: string | null;
  /** The depth that is wanted; `null` where there is as much. */
  readonly wanted: string | null;
}

/** What goes into the frame. Lengths come as texts. */
export interface ContentsWords {
  /** The panel's size. */
  readonly panel: (values: {
    readonly sides: number;
    readonly side: string;
    readonly acrossFlats: string;
    readonly acrossCorners: string;
    /** The rectangle that it is cut from; `null` where nothing is said to go in. */
    readonly box: { readonly width: string; readonly height: string } | null;
  }) => string;
  /** The clearance at every side. */
  readonly clearance: (values: { readonly clearance: string }) => string;
  /** The rectangle that the frame must hold. */
  readonly contained: (values: { readonly width: string; readonly height: string }) => string;
  /** The sheet that the panel is cut from. */
  readonly sheet: (values: { readonly width: string; readonly height: string }) => string;
  /** Contents that cannot be held, with the reason as a sentence. */
  readonly notHeld: (values: { readonly reason: string }) => string;
  /** What the lip hides and what is seen. */
  readonly hidden: (values: { readonly hidden: string; readonly side: string }) => string;
  /** A rabbet's depth that was measured. */
  readonly measuredDepth: (values: { readonly depth: string }) => string;
  /** How deep the rabbet's wall is. */
  readonly wall: (values: { readonly wall: string }) => string;
  /** How much of the rabbet's wall the contents use. */
  readonly wallUsed: (values: { readonly used: string; readonly wall: string }) => string;
  /** What the lean of the rabbet's wall takes from the mouth or gives to the backs. */
  readonly roomLost: (values: { readonly room: string; readonly narrows: boolean }) => string;
  /** How the layers fill the rabbet. */
  readonly stack: (values: StackValues) => string;
  /** Table of the layers. */
  readonly layers: {
    /** What it shows. */
    readonly caption: string;
    /** Heads of its columns. */
    readonly heads: Readonly<Record<"layer" | "thickness" | "behind" | "mass" | "cost", string>>;
    /** A layer of a kind that its name does not tell. */
    readonly named: (values: { readonly name: string; readonly kind: Exclude<LayerKind, "sheet"> }) => string;
  };
}

/** In English. */
export const englishContents: ContentsWords = {
  panel: ({ sides, side, acrossFlats, acrossCorners, box }) => {
    const from = box === null ? "" : `; cut from ${box.width} × ${box.height} as it stands`;
    return `Panel: ${sides} equal sides of ${side}, across flats ${acrossFlats}, across corners ${acrossCorners}${from}.`;
  },
  clearance: ({ clearance }) => `Clearance kept at every side: ${clearance}.`,
  contained: ({ width, height }) => `It must hold ${width} × ${height}.`,
  sheet: ({ width, height }) => `It is cut from a sheet of ${width} × ${height}.`,
  notHeld: ({ reason }) => `The contents can't be held. ${reason}`,
  hidden: ({ hidden, side }) => `Hidden by the lip: ${hidden} at every side; seen: sides of ${side}.`,
  measuredDepth: ({ depth }) => `The rabbet is ${depth} deep, measured plumb.`,
  wall: ({ wall }) => `The rabbet's wall is ${wall} deep.`,
  wallUsed: ({ used, wall }) => `The contents use ${used} of the rabbet's wall of ${wall}.`,
  roomLost: ({ room, narrows }) =>
    narrows
      ? `They go in through a mouth that is ${room} narrower at every side.`
      : `The wall leans away, so that their backs have ${room} of room at every side.`,
  stack: ({ thickness, left, proud, leftAtLeast, wanted }) => {
    if (proud !== null) return `Together ${thickness}: they stand ${proud} proud of the rabbet.`;
    if (left === null) return `Together ${thickness}.`;
    const thick = leftAtLeast === null ? "" : ` (${leftAtLeast} if the glass is as thick as it may be)`;
    return `Together ${thickness}; ${left} of depth, plumb, is left behind them${thick}${wanted === null ? "" : `, ${wanted} is wanted`}.`;
  },
  layers: {
    caption: "Layers from the front",
    heads: { layer: "layer", thickness: "thick", behind: "its back at", mass: "mass", cost: "cost" },
    named: ({ name, kind }) => `${name}, ${kind}`,
  },
};
