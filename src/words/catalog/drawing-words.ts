import type { Pose } from "../../core/geometry-types.js";
import type { Operation } from "../../frame/index.js";
import type { PanelCut } from "../../panel/index.js";
import type { Hand } from "../../saw/index.js";
import type { BlankEdge } from "./panel-words.js";

/** A label with a measure, a length or an angle, as a text. */
export type MeasuredLabel = (values: { readonly value: string }) => string;

/** The frame seen from above. Lengths come as texts. */
export interface AboveWords {
  /** The drawing's title. */
  readonly title: (values: { readonly sides: number }) => string;
  /** What is seen, in a sentence. */
  readonly seen: (values: { readonly sides: number; readonly pose: Pose }) => string;
  /** The dimensions of the outermost edge, in a sentence; each is one of the labels below. */
  readonly outermost: (values: { readonly measures: readonly string[] }) => string;
  /** The opening's size, in a sentence. */
  readonly openingSize: (values: { readonly width: string; readonly height: string }) => string;
  /** A side of the outermost edge. */
  readonly side: MeasuredLabel;
  /** The outermost edge across flats. */
  readonly acrossFlats: MeasuredLabel;
  /** The outermost edge across corners. */
  readonly acrossCorners: MeasuredLabel;
  /** The opening's height. */
  readonly opening: MeasuredLabel;
  /** The dashed line of an opening under the lip. */
  readonly openingUnderLip: (values: { readonly side: string }) => string;
  /** What the frame must hold. */
  readonly contained: (values: {
    readonly width: string;
    readonly height: string;
    readonly isDrawn: boolean;
  }) => string;
  /** The sheet that the panel is cut from. */
  readonly sheet: (values: { readonly width: string; readonly height: string; readonly isDrawn: boolean }) => string;
  /** Joints of which not all are drawn. */
  readonly joints: (values: { readonly sides: number; readonly every: number }) => string;
}

/** A side cut across. Lengths and angles come as texts. */
export interface SectionDrawingWords {
  /** The drawing's title. */
  readonly title: string;
  /** What is seen, in a sentence; `slope` is `null` where the side lies flat. */
  readonly seen: (values: { readonly slope: string | null }) => string;
  /** The level width, in a sentence. */
  readonly width: (values: { readonly levelWidth: string }) => string;
  /** What lies in the rabbet, in a sentence. */
  readonly layers: (values: {
    readonly layers: readonly { readonly name: string; readonly thickness: string }[];
  }) => string;
  /** The level width. */
  readonly levelWidth: MeasuredLabel;
  /** The lap. */
  readonly lap: MeasuredLabel;
  /** From the innermost to the outermost point. */
  readonly jointWidth: MeasuredLabel;
  /** The height on the bench. */
  readonly height: MeasuredLabel;
  /** The rabbet's depth. */
  readonly depth: MeasuredLabel;
  /** The slope. */
  readonly slope: MeasuredLabel;
  /** What stands above a section that is not known. */
  readonly notKnown: string;
  /** What is to scale where the section is not known. */
  readonly onlyLevel: (values: { readonly slope: string }) => string;
  /** How deep the rabbet is along its wall, whose ends have letters in the drawing, and what its contents leave; `left` and `proud` are `null` where they do not. */
  readonly rabbet: (values: {
    readonly depth: string;
    readonly wall: readonly [ledge: string, mouth: string];
    readonly left: string | null;
    readonly proud: string | null;
  }) => string;
}

/** How an end of a piece is cut. Angles come as texts. */
export interface EndValues {
  /** Which end it is. */
  readonly end: "start" | "end";
  /** Its miter. */
  readonly miter: string;
  /** Its bevel; `null` where the blade is upright, `undefined` where no lay suits the saw. */
  readonly bevel: string | null | undefined;
}

/** A finished piece. Lengths and angles come as texts. */
export interface PieceDrawingWords {
  /** The drawing's title. */
  readonly title: (values: { readonly count: number }) => string;
  /** What is seen: with a view from the side where the blade leans; `lay` is `null` where the piece is drawn as it stands in the frame. */
  readonly seen: (values: { readonly isLeaning: boolean; readonly lay: string | null }) => string;
  /** For which lay the angles are, where the piece is not drawn as it lies. */
  readonly anglesFor: (values: { readonly lay: string }) => string;
  /** The longest and the shortest line, in a sentence. */
  readonly lines: (values: { readonly longest: string; readonly shortest: string }) => string;
  /** Both ends, in a sentence. */
  readonly ends: (values: { readonly ends: readonly EndValues[] }) => string;
  /** An end, in short lines one below the other. */
  readonly end: (values: EndValues) => readonly string[];
  /** The longest line. */
  readonly longest: MeasuredLabel;
  /** The shortest line. */
  readonly shortest: MeasuredLabel;
  /** Which surfaces of the stick are at the fence along an edge of the drawing, and at which cuts. */
  readonly atFence: (values: {
    readonly surfaces: readonly { readonly surface: string; readonly cuts: readonly Operation["kind"][] }[];
  }) => string;
  /** How the tape is laid: hooked over a long point, or between two pencil lines. `letter` names the edge in other drawings. */
  readonly tape: (values: {
    readonly hook: boolean;
    readonly edge: string;
    readonly letter: string | null;
    readonly length: string;
  }) => string;
}

/** A step at the saw. Angles come as texts. */
export interface CutDrawingWords {
  /** The drawing's title. */
  readonly title: (values: { readonly step: number; readonly title: string }) => string;
  /** The fence. */
  readonly fence: string;
  /** The stop. */
  readonly stop: string;
  /** The part that is kept. */
  readonly kept: string;
  /** The other part. */
  readonly offcut: string;
  /** Where the person at the saw stands. */
  readonly youStandHere: string;
  /** Which way one looks at the leaning blade. */
  readonly lookingAway: string;
  /** The line of cut. */
  readonly miter: (values: { readonly toward: Hand | "none"; readonly value: string }) => string;
  /** How the blade leans, in short lines one below the other. */
  readonly bevel: (values: { readonly toward: Hand | "none"; readonly value: string }) => readonly string[];
}

/** The cradle, cut across. Lengths and angles come as texts. */
export interface CradleDrawingWords {
  /** The drawing's title. */
  readonly title: (values: { readonly angle: string }) => string;
  /** The wedge's height. */
  readonly rise: MeasuredLabel;
  /** The wedge's width, taken level. */
  readonly levelRun: MeasuredLabel;
  /** What keeps the stick from sliding. */
  readonly ledge: string;
}

/** A panel in its blank. Lengths come as texts. */
export interface PanelDrawingWords {
  /** The drawing's title. */
  readonly title: (values: { readonly sides: number }) => string;
  /** What is seen, in a sentence. */
  readonly seen: (values: { readonly sides: number; readonly width: string; readonly height: string }) => string;
  /** Which of its sides, numbered from 1, are edges of the blank, in a sentence. */
  readonly onEdges: (values: { readonly sides: readonly number[] }) => string;
  /** A cut by its number. */
  readonly cut: (values: { readonly step: number }) => string;
  /** The outline of the blank. */
  readonly blank: string;
  /** The heavy sides. */
  readonly existing: string;
  /** How far a corner lies from two edges of the blank. */
  readonly corner: (values: {
    readonly fromSide: { readonly distance: string; readonly edge: BlankEdge };
    readonly fromBase: { readonly distance: string; readonly edge: BlankEdge };
  }) => string;
}

/** A cut of the panel. The gauge's angle comes as a text. */
export interface PanelCutDrawingWords {
  /** The drawing's title. */
  readonly title: (values: { readonly step: number }) => string;
  /** What is done, in sentences; sides are numbered from 1. */
  readonly done: (values: {
    readonly against: number;
    readonly side: number;
    readonly up: PanelCut["up"];
    readonly setting: string;
    readonly swing: PanelCut["swing"];
  }) => string;
  /** Which face of the panel is up. */
  readonly up: Readonly<Record<PanelCut["up"], string>>;
  /** What angle gauge and blade make on the side of the kept part. */
  readonly swing: Readonly<Record<PanelCut["swing"], string>>;
  /** The gauge's angle from square. */
  readonly setting: MeasuredLabel;
}

/** Every text in drawings that no other area has. */
export interface DrawingWords {
  /** The frame seen from above. */
  readonly above: AboveWords;
  /** A side cut across. */
  readonly section: SectionDrawingWords;
  /** A finished piece. */
  readonly piece: PieceDrawingWords;
  /** A step at the saw. */
  readonly cut: CutDrawingWords;
  /** The cradle. */
  readonly cradle: CradleDrawingWords;
  /** A panel in its blank. */
  readonly panel: PanelDrawingWords;
  /** A cut of the panel. */
  readonly panelCut: PanelCutDrawingWords;
}

/** The frame seen from above, in English. */
export const englishAbove: AboveWords = {
  title: ({ sides }) => `Frame of ${sides} sides seen from above`,
  seen: ({ sides, pose }) =>
    `A frame of ${sides} sides that stands on a ${pose === "side-down" ? "side" : "corner"}, seen from above.`,
  outermost: ({ measures }) => `Outermost edge: ${measures.join(", ")}.`,
  openingSize: ({ width, height }) => `Opening: ${width} wide and ${height} high.`,
  side: ({ value }) => `side ${value}`,
  acrossFlats: ({ value }) => `across flats ${value}`,
  acrossCorners: ({ value }) => `across corners ${value}`,
  opening: ({ value }) => `opening ${value}`,
  openingUnderLip: ({ side }) => `Opening where the contents touch, under the lip: side ${side}.`,
  contained: ({ width, height, isDrawn }) =>
    `The frame must hold ${width} × ${height}${isDrawn ? "" : ", which is not drawn"}.`,
  sheet: ({ width, height, isDrawn }) =>
    `The panel is cut from a sheet of ${width} × ${height}${isDrawn ? "" : ", which is not drawn"}.`,
  joints: ({ sides, every }) => `Of ${sides} joints one in ${every} is drawn.`,
};

/** A side cut across, in English. */
export const englishSectionDrawing: SectionDrawingWords = {
  title: "Profile of a side, as it stands in the frame",
  seen: ({ slope }) =>
    `A side of the frame cut across, ${slope === null ? "lying flat" : `sloping ${slope}`}; the frame's center is to the left.`,
  width: ({ levelWidth }) => `Width taken level ${levelWidth}.`,
  layers: ({ layers }) =>
    `In its rabbet, from the front: ${layers.map(({ name, thickness }) => `${name} ${thickness}`).join(", ")}.`,
  levelWidth: ({ value }) => `width taken level ${value}`,
  lap: ({ value }) => `lap ${value}`,
  jointWidth: ({ value }) => `overall ${value}`,
  height: ({ value }) => `height ${value}`,
  depth: ({ value }) => `depth ${value}`,
  slope: ({ value }) => `slope ${value}`,
  notKnown: "profile not known",
  onlyLevel: ({ slope }) => `The profile is not known: only its level measures are to scale. Slope ${slope}.`,
  rabbet: ({ depth, wall: [ledge, mouth], left, proud }) => {
    const deep = `Rabbet ${depth} deep along its wall (${ledge}–${mouth})`;
    if (proud !== null) return `${deep}: its contents stand ${proud} proud of it.`;
    return left === null ? `${deep}.` : `${deep}, ${left} of it left behind its contents.`;
  },
};

function endLines({ end, miter, bevel }: EndValues): string[] {
  if (bevel === undefined) return [end, `miter ${miter}`];
  return [end, `miter ${miter}`, bevel === null ? "no bevel" : `bevel ${bevel}`];
}

/** A finished piece, in English. */
export const englishPieceDrawing: PieceDrawingWords = {
  title: ({ count }) => `Finished piece, one of ${count}`,
  seen: ({ isLeaning, lay }) =>
    `Seen from above${isLeaning ? " and, below it, from its outer edge" : ""}, ${lay === null ? "as it stands in the frame" : `as it lies on the saw, ${lay}`}; the frame's center is toward the top.`,
  anglesFor: ({ lay }) => `The angles are the saw's for the stick ${lay}.`,
  lines: ({ longest, shortest }) => `Longest line ${longest}, shortest ${shortest}.`,
  ends: ({ ends }) => `Its ends: ${ends.map((values) => endLines(values).join(", ")).join("; ")}.`,
  end: endLines,
  longest: ({ value }) => `longest ${value}`,
  shortest: ({ value }) => `shortest ${value}`,
  atFence: ({ surfaces }) => {
    const names = { crosscut: "crosscut", "first-end": "first end", "second-end": "second end" };
    return surfaces
      .map(({ surface, cuts }) => `${surface} at the fence: ${cuts.map((cut) => names[cut]).join(", ")}`)
      .join("; ");
  },
  tape: ({ hook, edge, letter, length }) => {
    const line = letter === null ? edge : `${edge} (${letter})`;
    return hook
      ? `Tape: hook it over a long point of the ${line} and read ${length} at the other.`
      : `Tape: square a pencil line to the piece at both long points of the ${line} and measure ${length} between the lines.`;
  },
};

/** A step at the saw, in English. */
export const englishCutDrawing: CutDrawingWords = {
  title: ({ step, title }) => `Step ${step}: ${title}`,
  fence: "fence",
  stop: "stop",
  kept: "kept",
  offcut: "offcut",
  youStandHere: "you stand here",
  lookingAway: "looking away from you",
  miter: ({ toward, value }) => (toward === "none" ? "square" : `miter ${value} to the ${toward}`),
  bevel: ({ toward, value }) => (toward === "none" ? ["blade upright"] : [`bevel ${value}`, `top to the ${toward}`]),
};

/** The cradle, in English. */
export const englishCradleDrawing: CradleDrawingWords = {
  title: ({ angle }) => `Cradle of ${angle}, cut across`,
  rise: ({ value }) => `rise ${value}`,
  levelRun: ({ value }) => `run ${value}`,
  ledge: "ledge",
};

/** A panel in its blank, in English. */
export const englishPanelDrawing: PanelDrawingWords = {
  title: ({ sides }) => `Panel of ${sides} sides in its panel blank`,
  seen: ({ sides, width, height }) =>
    `A panel of ${sides} sides, front up, in a panel blank ${width} wide and ${height} high.`,
  onEdges: ({ sides }) => {
    if (sides.length === 0) return "None of its sides is an edge of the panel blank.";
    return sides.length === 1
      ? `Its side ${sides[0]!} is an edge of the panel blank.`
      : `Its sides ${sides.slice(0, -1).join(", ")} and ${sides.at(-1)!} are edges of the panel blank.`;
  },
  cut: ({ step }) => `cut ${step}`,
  blank: "panel blank",
  existing: "sides that the panel blank has already",
  corner: ({ fromSide, fromBase }) =>
    `${fromSide.distance} from the ${fromSide.edge} edge, ${fromBase.distance} from the ${fromBase.edge}`,
};

/** A cut of the panel, in English. */
export const englishPanelCutDrawing: PanelCutDrawingWords = {
  title: ({ step }) => `Cut ${step} of the panel at the miter gauge`,
  done: ({ against, side, up, setting, swing }) =>
    `Side ${against} of the panel lies against the gauge, ${up} up. The gauge is swung ${setting} from square, so that the kept part between gauge and blade has ${swing === "closed" ? "less" : "more"} than a right angle. The blade makes side ${side}.`,
  up: { front: "front up", back: "back up" },
  swing: { closed: "less than square", open: "more than square" },
  setting: ({ value }) => `gauge ${value}`,
};

/** In English. */
export const englishDrawings: DrawingWords = {
  above: englishAbove,
  section: englishSectionDrawing,
  piece: englishPieceDrawing,
  cut: englishCutDrawing,
  cradle: englishCradleDrawing,
  panel: englishPanelDrawing,
  panelCut: englishPanelCutDrawing,
};
