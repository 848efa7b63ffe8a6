import { tanDeg } from "../core/degrees.js";
import type { FrameGeometry } from "../frame/index.js";
import { layRotation, type Lay } from "../miter/index.js";
import { rolledOutline } from "./rolled-outline.js";

/** One line along a piece, through a corner of its section. */
export interface SolidLine {
  /** Level distance away from the frame's center, as the piece lies. */
  readonly across: number;
  /** Height above the table. */
  readonly up: number;
  /** How much each end of the line falls short of the piece's longest line. */
  readonly short: number;
  /** Whether the surfaces meet at an angle there, so that an edge is seen. */
  readonly sharp: boolean;
}

/** A piece, as it lies: lines round its section, counter-clockwise as seen against its direction. */
export interface LyingPiece {
  /** The lines. */
  readonly lines: readonly SolidLine[];
  /** Size across. */
  readonly width: number;
  /** Height above the table. */
  readonly height: number;
  /** How much each end of the shortest line falls short of the longest. */
  readonly wedge: number;
}

function raise(lines: readonly SolidLine[]): LyingPiece {
  const acrosses = lines.map(({ across }) => across);
  const ups = lines.map(({ up }) => up);
  const [inner, low] = [Math.min(...acrosses), Math.min(...ups)];
  return {
    lines: lines.map((line) => ({ ...line, across: line.across - inner, up: line.up - low })),
    width: Math.max(...acrosses) - inner,
    height: Math.max(...ups) - low,
    wedge: Math.max(...lines.map(({ short }) => short)),
  };
}

/**
 * A piece of a frame as it lies on the saw.
 *
 * A line that runs `d` inside the outermost one of the finished frame is d tan(180/n) shorter at each end, however the piece lies.
 */
export function lyingPiece(geometry: FrameGeometry, lay: Lay): LyingPiece | null {
  const { profile, slope, pieces, corners } = geometry;
  if (profile === null) return null;
  const { outline } = profile;
  const tilt = slope - layRotation(lay, slope);
  const rise = tanDeg(corners[0].planMiter);
  const farthest = pieces[0].longest.out;
  const standing = rolledOutline(outline, slope);
  const lines = rolledOutline(outline, tilt).map(({ at, sharp }, index) => ({
    across: at.x,
    up: at.y,
    short: Math.max(0, farthest - standing[index]!.at.x) * rise,
    sharp,
  }));
  return raise(lines);
}

/** A piece of which only level measures are known, as it stands in the frame: a strip seen from above, of no height. */
export function pieceStrip(geometry: FrameGeometry): LyingPiece {
  const rise = tanDeg(geometry.corners[0].planMiter);
  const { longest } = geometry.pieces[0];
  const outs = Object.values(geometry.arrises).map(({ out }) => out);
  const lines = [...new Set(outs)]
    .sort((a, b) => a - b)
    .map((out) => ({ across: out, up: 0, short: (longest.out - out) * rise, sharp: true }));
  return raise(lines);
}
