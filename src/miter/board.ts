import { checkLength, checkObject, checkSlope } from "../core/check.js";

/** A side of a frame as far as its corners go: a flat board of even thickness, at a slope. */
export interface Board {
  /** Slope in degrees, -90 to 90: 0 lies flat, 90 stands upright, negative has the sight edge higher. */
  readonly slope: number;
  /** Thickness from back to face, 1e-100 to 1e100, in the unit of the other board. */
  readonly thickness: number;
  /** Width on the flat board from sight edge to outer edge, 1e-100 to 1e100. Only corners that meet at edges need it. */
  readonly width?: number | undefined;
}

/** A board that was checked. */
export interface CheckedBoard {
  /** Slope in degrees. */
  readonly slope: number;
  /** Thickness. */
  readonly thickness: number;
  /** Width, if it was given. */
  readonly width: number | undefined;
}

/** Checks a board. */
export function checkBoard(value: unknown, path: string): CheckedBoard {
  const given = checkObject(value, path);
  return {
    slope: checkSlope(given["slope"], `${path}.slope`),
    thickness: checkLength(given["thickness"], `${path}.thickness`),
    width: given["width"] === undefined ? undefined : checkLength(given["width"], `${path}.width`),
  };
}
