import { checkArray, checkNumber, checkObject } from "../core/check.js";
import { layRotation, type Lay } from "../miter/index.js";
import type { FrameTableOptions } from "./frame-table-options.js";
import { layLabel } from "../frame/lay-label.js";
import { obstacleText } from "../frame/obstacle-text.js";
import { readCutting, type CuttingToDraw } from "./read-frame.js";
import type { Table } from "./table.js";
import { formatterOf } from "./table-options.js";
import { tabulate } from "./tabulate.js";

function readingOf(first: Readonly<Record<string, unknown>>, scale: "miter" | "bevel", path: string): number {
  const at = `${path}.first.${scale}`;
  return checkNumber(checkObject(first[scale], at)["reading"], `${at}.reading`, 0, 180, "degrees from 0 to 180");
}

function reasonOf(option: Readonly<Record<string, unknown>>, path: string, angle: (degrees: number) => string): string {
  return checkArray(option["obstacles"], `${path}.obstacles`, "an array of obstacles")
    .map((value, index) => {
      const at = `${path}.obstacles[${index}]`;
      const { sentence, degrees } = checkObject(value, at);
      const scale = degrees === undefined ? undefined : checkObject(degrees, `${at}.degrees`);
      const read = (name: string): number =>
        checkNumber(scale![name], `${at}.degrees.${name}`, 0, 180, "degrees from 0 to 180");
      return obstacleText(
        {
          sentence: String(sentence),
          ...(scale === undefined ? {} : { degrees: { reach: read("reach"), needs: read("needs") } }),
        },
        angle,
      );
    })
    .join(" ");
}

/**
 * A table of every way to lay a frame's stick on the saw: how far it is rolled for that, what the scales must show, and whether it can be done.
 *
 * The readings are those of the saw's own scales, and hold for either end.
 *
 * @param plan - the plan, or the geometry and the cutting of one
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
export function tabulateLays(plan: CuttingToDraw, options: FrameTableOptions): Table {
  const { geometry, cutting } = readCutting(plan);
  const angle = formatterOf(checkObject(options), "angle");
  const used = cutting.lay === null ? null : checkObject(cutting.lay, "cutting.lay")["lay"];
  const rows = checkArray(cutting.lays, "cutting.lays", "an array of lays").map((value, index) => {
    const path = `cutting.lays[${index}]`;
    const option = checkObject(value, path);
    const lay = option["lay"] as Lay;
    const rotation = layRotation(lay, geometry.slope);
    const first = checkObject(option["first"], `${path}.first`);
    const doubt = option["depthInDoubt"] === true ? ", depth not known" : "";
    const possible = option["possible"] === true ? `yes${doubt}` : reasonOf(option, path, angle);
    return [
      layLabel(lay, angle),
      rotation,
      readingOf(first, "miter", path),
      readingOf(first, "bevel", path),
      lay === used ? `used here${doubt}` : possible,
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
