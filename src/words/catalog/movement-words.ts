import type { LayerRoom, MovementUnknown } from "../../frame/index.js";

/** A season in which the joints stand open. */
export interface OpenSeason {
  /** Whether the wood is drier or damper then than when the joints were fitted. */
  readonly season: "dry" | "damp";
  /** Moisture of the wood in percent, a share. */
  readonly moisture: string;
  /** Where the joints open. */
  readonly opens: "inside" | "outside";
  /** By how much, a length. */
  readonly gap: string;
}

/** What the words for open joints may tell of. */
export interface OpenJointsValues {
  /** The worst season for each way in which the joints open, one or two: inside first. */
  readonly seasons: readonly OpenSeason[];
  /** Moisture when the joints are fitted, in percent, a share. */
  readonly made: string;
  /** The accepted gap, a length. */
  readonly acceptedGap: string;
}

/** What the words for the molding's inner edge may tell of. */
export interface SightEdgeValues {
  /** How far it draws back at every side, a length. */
  readonly retreat: string;
  /** By how much the lip shrinks and swells at most, lengths; `null` where it does neither. */
  readonly lip: {
    /** By how much it shrinks. */
    readonly shrinks: string;
    /** By how much it swells. */
    readonly swells: string;
  } | null;
}

/** What the words for the room of a layer may tell of. */
export interface LayerRoomValues {
  /** The layer's name. */
  readonly name: string;
  /** What it moves with: moisture in percent, or temperature in degrees Celsius. */
  readonly with: LayerRoom["with"];
  /** The least of it, a share or a temperature. */
  readonly least: string;
  /** The most of it, a share or a temperature. */
  readonly most: string;
  /** What it was when the layer was put in, a share or a temperature. */
  readonly made: string;
  /** The most that the layer grows at a side, a length. */
  readonly needed: string;
  /** The clearance at a side, a length. */
  readonly clearance: string;
  /** Whether the clearance is as much as it grows. */
  readonly enough: boolean;
  /** The most that it draws back at a side, a length. */
  readonly retreat: string;
  /** Whether the lip still laps it, and by how much it does or falls short, a length; `null` where no lip laps it at all. */
  readonly lap: {
    /** Whether the lip still laps it. */
    readonly holds: boolean;
    /** By how much it laps, or falls short. */
    readonly by: string;
  } | null;
}

/** What a year does to a frame and to what is in it. */
export interface MovementWords {
  /** How far the joints open, and when. */
  readonly openJoints: (values: OpenJointsValues) => string;
  /** That no season moves the joints, which are fitted at a moisture in percent, a share. */
  readonly stillJoints: (values: { readonly made: string }) => string;
  /** What the molding's inner edge does. */
  readonly sightEdge: (values: SightEdgeValues) => string;
  /** What is not known of the molding, and what is taken instead. */
  readonly unknown: Readonly<Record<MovementUnknown, () => string>>;
  /** What a layer of the contents needs, and whether it gets it. */
  readonly layerRoom: (values: LayerRoomValues) => string;
}

function lapText(lap: LayerRoomValues["lap"]): string {
  if (lap === null) return "";
  return lap.holds
    ? `; the lip still laps it by ${lap.by}`
    : `; the lip then no longer laps it and falls short by ${lap.by}`;
}

/** In English. */
export const englishMovement: MovementWords = {
  openJoints: ({ seasons, made, acceptedGap }) => {
    const parts = seasons.map(({ season, moisture, opens, gap }, index) => {
      const [start, joints] = index === 0 ? ["In", "the joints"] : ["in", "they"];
      return `${start} the ${season} season, at ${moisture} moisture, ${joints} open ${opens} by ${gap}`;
    });
    return `${parts.join("; ")}, as far as glue does not hold them. They are fitted at ${made}; a gap of ${acceptedGap} is accepted.`;
  },
  stillJoints: ({ made }) => `The joints are fitted at ${made} moisture, and no season moves them.`,
  sightEdge: ({ retreat, lip }) => {
    const change = lip === null ? "" : `; its lip shrinks by up to ${lip.shrinks} and swells by up to ${lip.swells}`;
    return `The molding's inner edge draws back by up to ${retreat} at every side${change}. Along their grain the pieces hardly move.`;
  },
  unknown: {
    section: () =>
      "Only level measures of the molding are known: the joints are taken to open as if all of the width taken level moved like the faster of width and thickness, which is the most that it can.",
    "lip-width": () => "The lip's width is not known: what it adds to the open joints is not counted.",
  },
  layerRoom: ({ name, with: by, least, most, made, needed, clearance, enough, retreat, lap }) => {
    const unit = by === "moisture" ? " moisture" : "";
    const kept = `the clearance of ${clearance} is ${enough ? "enough" : "too little"}`;
    return `${name}, from ${least} to ${most}${unit}. It was put in at ${made}. It grows by up to ${needed} at a side, and ${kept}. It draws back by up to ${retreat}${lapText(lap)}.`;
  },
};
