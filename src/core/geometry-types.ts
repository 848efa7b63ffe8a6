/** A point of the plane, in the caller's length unit. */
export interface Point {
  /** Abscissa. */
  readonly x: number;
  /** Ordinate. */
  readonly y: number;
}

/** Width and height of an upright rectangle, in the caller's length unit. */
export interface Box {
  /** Horizontal size. */
  readonly width: number;
  /** Vertical size. */
  readonly height: number;
}

/** How a polygon stands: on a side, or on a corner. */
export type Pose = "side-down" | "corner-down";

/** Unit of a length, where one matters: millimeter, centimeter, meter, inch, foot. */
export type LengthUnit = "mm" | "cm" | "m" | "in" | "ft";

/** Exactly one of the fields of `T`: any other is forbidden, so that a wrong call does not compile. */
export type OneOf<T> = {
  [K in keyof T]: { readonly [P in K]: T[P] } & { readonly [P in Exclude<keyof T, K>]?: undefined };
}[keyof T];

/** The same fields, each of them given: options after their defaults are filled in. */
export type Filled<T> = { readonly [K in keyof T]-?: Exclude<T[K], undefined> };
