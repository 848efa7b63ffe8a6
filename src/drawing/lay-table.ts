import { checkObject } from "../core/check.js";
import { describeObstacle, layLabel } from "../words/index.js";
import { layRotation } from "../miter/index.js";
import type { FrameTableOptions } from "./frame-table-options.js";
import { readSawing, type SawingToDraw } from "./read-frame.js";
import type { Table } from "./table.js";
import { formatterOf } from "./table-options.js";
import { tabulate } from "./tabulate.js";

/**
 * A table of every way to lay the stick on the saw: how far it is rolled for that, what the scales must show, and whether it can be done.
 *
 * The readings are those of the saw's own scales, and hold for either end.
 *
 * @param plan - the plan, or the geometry and the saw plan of one
 * @param options - formatters and caption
 * @returns the table, in the plan's order; of the lay that the plan uses it says "used here"
 * @throws {InputError} when it is no plan, or a formatter is missing
 * @example
 * ```ts
 * import { tabulateLays } from "miterwright/drawing";
 * import { planFrame } from "miterwright/frame";
 *
 * const plan = planFrame({ sides: 6, slope: 40, opening: { side: 200 }, measured: { levelWidth: 40 } });
 * const words = { length: String, angle: (degrees: number) => `${degrees.toFixed(1)}°` };
 * tabulateLays(plan, words).cells[0];
 * //=> ["flat on its back", "40.0°", "23.9°", "18.7°", "used here"]
 * ```
 */
export function tabulateLays(plan: SawingToDraw, options: FrameTableOptions): Table {
  const { geometry, sawing } = readSawing(plan);
  const angle = formatterOf(checkObject(options), "angle");
  const used = sawing.lay?.lay ?? null;
  const rows = sawing.lays.map(({ lay, first, depthInDoubt, possible, obstacles }) => {
    const doubt = depthInDoubt ? ", depth not known" : "";
    const said = possible
      ? `yes${doubt}`
      : obstacles.map((obstacle) => describeObstacle(obstacle, { angle })).join(" ");
    return [
      layLabel(lay, angle),
      layRotation(lay, geometry.slope),
      first.miter.reading,
      first.bevel.reading,
      lay === used ? `used here${doubt}` : said,
    ];
  });
  return tabulate(
    {
      caption: options.caption ?? "Every way to lay the stick",
      columns: [
        { label: "the stick lies" },
        { label: "rolled by", kind: "angle" },
        { label: "miter scale", kind: "angle" },
        { label: "bevel scale", kind: "angle" },
        { label: "possible" },
      ],
      rows,
    },
    options,
  );
}
