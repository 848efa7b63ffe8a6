import type { HangerSeat, HungFrame } from "../../frame/index.js";

/** What the words for the places of the hangers may tell of. */
export interface FixingValues {
  /** What the frame hangs by. */
  readonly by: HungFrame["by"];
  /** Numbers of the two sides, counted from 1. */
  readonly sides: readonly [number, number];
  /** How far the hangers lie below the frame's top, a length. */
  readonly below: string;
  /** How far apart they are, a length. */
  readonly apart: string;
  /** How far each lies from the upper corner along the outermost line, a length. */
  readonly fromCorner: string;
}

/** What the words for the surface that the hangers lie on may tell of. */
export interface SeatValues {
  /** Its width, a length. */
  readonly width: string;
  /** Where it opens from the wall; `nowhere` where it lies flat to it. */
  readonly opens: HangerSeat["opens"];
  /** By how much it leans from the wall, an angle. */
  readonly lean: string;
  /** How far its middle stands off the wall, a length. */
  readonly standoff: string;
  /** How much wood is behind it, a length. */
  readonly wood: string;
  /** How deep screws may go, a length. */
  readonly deepest: string;
  /** How deep they go, a length; `null` where the brief does not say. */
  readonly screwDepth: string | null;
}

/** What the words for a wire may tell of. */
export interface WireValues {
  /** Its length between the hangers. */
  readonly length: string;
  /** The angle of each half above level. */
  readonly angle: string;
  /** Whether its hook shows above the frame's top. */
  readonly shows: boolean;
  /** How far the hook is from the frame's top, a length. */
  readonly fromTop: string;
}

/** What the words for the load may tell of. */
export interface LoadValues {
  /** What the frame hangs by. */
  readonly by: HungFrame["by"];
  /** Whether the mass of all that hangs is known; otherwise it is more than is said. */
  readonly complete: boolean;
  /** Its mass. */
  readonly mass: string;
  /** Its weight, a force. */
  readonly weight: string;
  /** What each fixing carries, a force. */
  readonly pull: string;
  /** How many times that common practice has the fixings hold. */
  readonly factor: number;
  /** The force that they then hold. */
  readonly strength: string;
}

/** How a frame hangs. */
export interface HangingWords {
  /** Where the hangers go, for somebody with a tape who has the frame's back before them. */
  readonly fixings: (values: FixingValues) => string;
  /** What the hangers lie on. */
  readonly seat: (values: SeatValues) => string;
  /** How long the wire is, and where its hook is. */
  readonly wire: (values: WireValues) => string;
  /** What the frame weighs and each fixing carries. */
  readonly load: (values: LoadValues) => string;
  /** The share of the weight, in percent, that each fixing carries where the weight is not known. */
  readonly unknownLoad: (values: { readonly by: HungFrame["by"]; readonly share: string }) => string;
}

function eachFixing(by: HungFrame["by"]): string {
  return by === "wire" ? "Each half of the wire and each hanger" : "Each hook and hanger";
}

/** In English. */
export const englishHanging: HangingWords = {
  fixings: ({ by, sides, below, apart, fromCorner }) => {
    const kind = by === "wire" ? "By a wire between two hangers" : "On two hooks, by two hangers";
    return `${kind}, on sides ${sides[0]} and ${sides[1]} (counted counter-clockwise from 1 at the bottom, as in the view from above): ${below} below the top, ${apart} apart, which is ${fromCorner} from the upper corner along the outermost line.`;
  },
  seat: ({ width, opens, lean, standoff, wood, deepest, screwDepth }) => {
    const lies =
      opens === "nowhere"
        ? `lie flat to the wall on a surface ${width} wide`
        : `lie on a surface ${width} wide that leans ${lean} from the wall, opening ${opens}, its middle ${standoff} off the wall`;
    const screws = screwDepth === null ? "" : `; these go in ${screwDepth}`;
    return `The hangers ${lies}. Behind it is ${wood} of wood: screws ${deepest} deep at the most${screws}.`;
  },
  wire: ({ length, angle, shows, fromTop }) => {
    const hook = shows ? `${fromTop} above the frame's top, where it shows` : `${fromTop} below the frame's top`;
    return `The wire is ${length} from hanger to hanger, knots besides; at ${angle} its hook is ${hook}.`;
  },
  load: ({ by, complete, mass, weight, pull, factor, strength }) => {
    const least = complete ? "" : "at least ";
    return `It weighs ${least}${mass} (${weight}). ${eachFixing(by)} carries ${pull}; common practice, which is no advice, takes what holds ${factor} times that, ${strength}.`;
  },
  unknownLoad: ({ by, share }) =>
    `${eachFixing(by)} carries ${share} of the weight, which is not known: weigh the frame.`,
};
