import { type FramePlan } from "miterwright/frame";
import { hangingLines } from "miterwright/words";
import { html, type Part } from "../html.js";
import { about } from "../writers.js";
import type { Card } from "./card.js";
import { bullets, facts, table } from "./tables.js";

/** A total, and what is not in it. */
function totalText({ total, missing }: FramePlan["materials"]["mass"], write: (value: number) => string): string {
  if (total === null) return "not known";
  return missing.length === 0 ? write(total) : `at least ${write(total)}; not known: ${missing.join(", ")}`;
}

/** What the frame takes, weighs and costs. */
export const materialsCard: Card = {
  id: "materials",
  heading: "What it takes, weighs and costs",
  column: "work",
  write: ({ plan, writers }) => {
    const { materials, contents } = plan;
    const { lumber, parts, mass, cost } = materials;
    const money = (value: number): string => value.toFixed(2);
    const rows = parts.map(({ name, mass: weighs, cost: part }): Part[] => [
      name,
      weighs === null ? "" : writers.mass(weighs),
      part?.total == null ? "" : money(part.total),
    ]);
    const knowsParts = mass.total !== null || cost !== null;
    const { box, panel } = contents;
    return html`${facts([
      ["molding used up, cuts included", writers.length(materials.moldingLength)],
      ...(lumber === null
        ? []
        : [
            [
              "milled from, before waste",
              `${about(lumber.boardFeet)} board feet (${about(1000 * lumber.cubicMeters)} liters) of ${writers.length(lumber.width)} × ${writers.length(lumber.thickness)}`,
            ] as const,
          ]),
      ...(box === null || panel === null
        ? []
        : [["each layer is cut from", `${writers.length(box.width)} × ${writers.length(box.height)}`] as const]),
      ...(mass.total === null ? [] : [["mass in all", totalText(mass, writers.mass)] as const]),
      ...(cost === null ? [] : [["cost in all", totalText(cost, money)] as const]),
    ])}
    ${knowsParts ? table("Part by part", ["part", "mass", "cost"], rows) : null}`;
  },
};

/** Where the hangers go, and what they carry. */
export const hangingCard: Card = {
  id: "hanging",
  heading: "On the wall",
  column: "work",
  write: ({ plan, writers }) => {
    const lines = hangingLines(plan, writers);
    return lines.length === 0 ? null : bullets(lines);
  },
};
