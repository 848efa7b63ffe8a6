import type { Box, Point } from "../../core/geometry-types.js";
import { offsetPolygon, polygonExtent, type RegularPolygon } from "../../polygon/index.js";
import type { RabbetSeating, SeatingReason } from "../../profile/index.js";
import type { FilledBrief } from "../brief/brief.js";
import { type ContentsStack, stackContents } from "./contents-stack.js";
import { contentsRoom, type LayerRoom } from "./contents-room.js";
import type { FrameGeometry } from "../frame-geometry.js";
import type { FrameMovement } from "../materials/frame-movement.js";
import { isPane } from "./layer-names.js";

/** How the polygon that goes in is made: not at all, by a glazier alone, or sawn, with or without panes besides. */
export type PanelWork = "none" | "glass" | "sawn";

/**
 * How the polygon that goes into a frame is made. Glass and mirrors are never sawn; any other layer without a material is taken to be sawn.
 */
function panelWork(brief: FilledBrief, hidden: number): PanelWork {
  const { contents, opening } = brief;
  if (contents.length > 0) return contents.every(isPane) ? "glass" : "sawn";
  return hidden > 0 || opening.cutFrom !== undefined ? "sawn" : "none";
}

/** Why a frame cannot hold its contents: what is wrong with the rabbet or, as `no-contents-left`, that the clearance leaves nothing of the opening. */
export type ContentsReason = SeatingReason | "no-contents-left";

/** What goes into a frame, and its seating. */
export interface FrameContents {
  /** Whether the rabbet can hold it; `null` where there is no rabbet or no section to tell. */
  readonly possible: boolean | null;
  /** Why not; `null` when possible. */
  readonly reason: ContentsReason | null;
  /** How the panel is made: `sawn` from a squared blank as `FramePlan.panel` says, cut by a glazier where all of it is `glass`, or `none` where nothing is said to go in. */
  readonly work: PanelWork;
  /** Whether panes of glass are among it, which a glazier cuts to the panel's size. */
  readonly panes: boolean;
  /** Its seating in the rabbet; `null` where there is no rabbet or no section to tell. */
  readonly seating: RabbetSeating | null;
  /** The polygon that goes in: the opening less the clearance at every side. `null` when the clearance leaves nothing. */
  readonly panel: RegularPolygon | null;
  /** The upright rectangle that it is cut from, as it stands in its pose; `null` when the clearance leaves nothing. */
  readonly box: Box | null;
  /** The layers of the contents in order, held against the rabbet; `null` where the brief names none. */
  readonly stack: ContentsStack | null;
  /** What is seen of it: the polygon at the innermost point of the molding. */
  readonly visible: RegularPolygon;
  /** How much the lip hides of the panel at every side, level, seen square to it; 0 without a lip. */
  readonly hidden: number;
  /**
   * How far the lip laps the panel at every side where that bears, level: from the sight edge's back arris to the panel's edge. On a slope the face may reach farther in, and
   * hide more; 0 without a lip, and where the rabbet can't hold it.
   */
  readonly lap: number;
  /** The rectangle that the opening was made to hold, as given. */
  readonly contained: Box | null;
  /** The sheet that the panel is cut from, as given. */
  readonly sheet: Box | null;
  /** Where the center of that rectangle or sheet lies, seen from the frame's center. */
  readonly center: Point | null;
  /** Area of the sheet that is cut away; `null` when no sheet was given. */
  readonly trimmedArea: number | null;
  /** The room that each layer needs over the seasons; none for a layer whose movement is not known. */
  readonly room: readonly LayerRoom[];
}

/** Plans the contents of a frame. */
export function planContents(
  brief: FilledBrief,
  geometry: FrameGeometry,
  movement: FrameMovement | null,
): FrameContents {
  const { opening, seating, given } = geometry;
  const { clearance } = brief;
  const panel = opening.apothem > clearance ? offsetPolygon(opening, -clearance) : null;
  const shortest = geometry.pieces[0].shortest.out;
  const visible = offsetPolygon(opening, shortest - geometry.deciding.out);
  const { contains, cutFrom } = brief.opening;
  const hidden = panel === null ? 0 : Math.max(0, geometry.deciding.out - shortest - clearance);
  const lap = panel === null ? 0 : seating === null ? hidden : seating.possible ? seating.lap : 0;
  return {
    work: panelWork(brief, hidden),
    panes: brief.contents.some(isPane),
    possible: panel === null ? false : seating === null ? null : seating.possible,
    reason: seating === null || seating.possible ? (panel === null ? "no-contents-left" : null) : seating.reason,
    seating,
    panel,
    box: panel && polygonExtent(panel, brief.pose),
    stack: stackContents(brief, geometry),
    visible,
    hidden,
    lap,
    contained: contains === undefined ? null : { width: contains.width, height: contains.height },
    sheet: cutFrom ?? null,
    center: geometry.center,
    trimmedArea: cutFrom === undefined ? null : cutFrom.width * cutFrom.height - offsetPolygon(given, -clearance).area,
    room: contentsRoom(brief, { panel, lap, sightOpens: movement?.sightOpens ?? 0 }),
  };
}
