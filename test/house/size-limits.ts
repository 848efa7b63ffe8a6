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
  { entry: "miterwright", limit: 141_000 },
  { entry: "miterwright/errors", limit: 400 },
  { entry: "miterwright/units", limit: 7400 },
  { entry: "miterwright/polygon", limit: 5000 },
  { entry: "miterwright/miter", limit: 4400 },
  { entry: "miterwright/profile", limit: 8000 },
  { entry: "miterwright/wood", limit: 7500 },
  { entry: "miterwright/stock", limit: 23_500 },
  { entry: "miterwright/saw", limit: 8000 },
  { entry: "miterwright/panel", limit: 5000 },
  { entry: "miterwright/closure", limit: 9000 },
  { entry: "miterwright/frame", limit: 57_000 },
  { entry: "miterwright/words", limit: 34_000 },
  { entry: "miterwright/drawing", limit: 38_000 },
  { entry: "miterwright/report", limit: 57_000 },
  { entry: "miterwright/sheet", limit: 75_000 },
  { entry: "miterwright/precise", limit: 22_000, packages: ["decimal.js"] },

  { entry: "miterwright/miter", name: "compoundMiter", limit: 1510 },
  { entry: "miterwright", name: "compoundMiter", limit: 1510 },
  { entry: "miterwright/polygon", name: "regularPolygon", limit: 1600 },
  { entry: "miterwright/profile", name: "levelWidth", limit: 2450 },
  { entry: "miterwright/units", name: "nearestFraction", limit: 1700 },
  { entry: "miterwright/units", name: "parseLength", limit: 3900 },
  { entry: "miterwright/units", name: "formatLength", limit: 2250 },
  { entry: "miterwright/wood", name: "seasonalMovement", limit: 5000 },
  { entry: "miterwright/wood", name: "equilibriumMoisture", limit: 1000 },
  { entry: "miterwright/stock", name: "fitStock", limit: 17_500 },
  { entry: "miterwright/frame", name: "frameGeometry", limit: 12_500 },
  { entry: "miterwright/frame", name: "planFrame", limit: 43_000 },
  // A picture must not bring the tables along, nor a table the pictures.
  { entry: "miterwright/drawing", name: "drawPlanView", limit: 13_500 },
  { entry: "miterwright/report", name: "tabulate", limit: 3700 },
];
