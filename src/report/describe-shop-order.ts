import { isolate } from "../core/isolate.js";
import { readStored } from "../core/stored.js";
import type { ShopCut, ShopGroup, ShopOrder, ShopRound } from "../frame/index.js";
import { storedShopOrder } from "../frame/internal.js";
import { arrisLabel, obstacleText, surfaceLabel, type TellOptions } from "../words/index.js";
import { listOf, paragraph, penOf, sectionOf, tellWith, type Pen } from "./pen.js";
import type { Block, Report } from "./report.js";

function cutLine({ name, step, kind, times, atFence, kept, move, length, arris }: ShopCut, pen: Pen): string {
  return pen.words.shop.cut({
    name: isolate(name),
    step,
    kind,
    times,
    atFence: surfaceLabel(atFence, pen),
    kept,
    move,
    length: length === null ? null : { length: pen.formats.length(length), edge: arrisLabel(arris, pen) },
  });
}

/** One setting and what is cut at it. */
function groupBlocks(group: ShopGroup, name: string, pen: Pen): Block[] {
  const { miter, bevel, down, cradled, changes, cuts } = group;
  const { words, formats } = pen;
  const set = words.shop.group({
    miter: formats.angle(miter.reading),
    miterToward: miter.toward,
    bevel: formats.angle(bevel.reading),
    bevelToward: bevel.toward,
    down: surfaceLabel(down, pen),
    cradled,
  });
  const lead = [words.shop.saw({ saw: group.saw + 1 }), words.shop.changes({ changes }), set].join(" ");
  return [
    ...listOf(`${name}-setting`, [lead], { marker: "none", isStrong: true }),
    ...listOf(
      `${name}-cuts`,
      cuts.map((cut) => cutLine(cut, pen)),
    ),
  ];
}

function roundBlocks({ times, groups, again }: ShopRound, index: number, pen: Pen): Block[] {
  return [
    ...(times > 1 ? paragraph(`round-${index + 1}`, [pen.words.shop.repeat({ times, again })]) : []),
    ...groups.flatMap((group, place) => groupBlocks(group, `round-${index + 1}-${place + 1}`, pen)),
  ];
}

/**
 * Tells in which order the jobs of several frames are done at the saw, setting by setting.
 *
 * @param order - from `shopOrder`; also one that was read back from JSON
 * @param options - formatters and words
 * @returns the report
 * @throws {InputError} when the order is none, or an option is not sound
 * @example
 * ```ts
 * import { planFrame, shopOrder } from "miterwright/frame";
 * import { describeShopOrder } from "miterwright/report";
 * import { formatters } from "miterwright/units";
 *
 * const plan = planFrame({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 } });
 * const order = shopOrder([{ name: "harbor", plan }]);
 * describeShopOrder(order, { formats: formatters({ unit: "mm" }) }).sections[0]!.title; //=> "Rounds"
 * ```
 */
export function describeShopOrder(order: ShopOrder, options: TellOptions): Report {
  const { rounds, changes, left } = readStored(order, "order", storedShopOrder);
  const pen = penOf(options);
  const { words } = pen;
  const leftOut = left.map(({ name, obstacles }) => {
    const reasons = obstacles.map((obstacle) => obstacleText(obstacle, tellWith(pen))).join(" ");
    return words.shop.left({ name: isolate(name), reasons });
  });
  return {
    title: words.reports.titles.shopOrder,
    sections: sectionOf("rounds", pen, [
      ...listOf("left", leftOut, { marker: "none", isStrong: true }),
      ...rounds.flatMap((round, index) => roundBlocks(round, index, pen)),
      ...paragraph("sum", [words.shop.sum(changes)]),
    ]),
  };
}
