/** What an import may cost a page at most. */
export interface SizeLimit {
  /** The entry that is imported from. */
  readonly entry: string;
  /** The one export that is imported; without it, the whole entry. */
  readonly name?: string;
  /** Most bytes, minified and gzipped. */
  readonly limit: number;
  /** Packages of others that may come along; none where it is missing. */
  readonly packages?: readonly string[];
}

/**
 * The ceilings: every entry whole, and the imports that programs make most. A row whose export disappears fails.
 *
 * A ceiling stands a tenth or two above what `npm run sizes` prints. Raise one only for what is worth its bytes.
 */
export const SIZE_LIMITS: readonly SizeLimit[] = [
  { entry: "miterwright", limit: 60_000 },
  { entry: "miterwright/errors", limit: 500 },
  { entry: "miterwright/units", limit: 8000 },
  { entry: "miterwright/polygon", limit: 3000 },
  { entry: "miterwright/miter", limit: 3000 },
  { entry: "miterwright/profile", limit: 8000 },
  { entry: "miterwright/stock", limit: 15_000 },
  { entry: "miterwright/saw", limit: 8000 },
  { entry: "miterwright/frame", limit: 30_000 },
  { entry: "miterwright/drawing", limit: 12_000 },
  { entry: "miterwright/sheet", limit: 12_000 },
  { entry: "miterwright/precise", limit: 20_000, packages: ["decimal.js"] },

  { entry: "miterwright/miter", name: "compoundMiter", limit: 1500 },
  { entry: "miterwright", name: "compoundMiter", limit: 1500 },
  { entry: "miterwright/polygon", name: "regularPolygon", limit: 1500 },
];
