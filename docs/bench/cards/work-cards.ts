import { drawCradle, drawCut } from "miterwright/drawing";
import { numberHazards, type FramePlan, type LayResult } from "miterwright/frame";
import {
  frameCheckText,
  hazardText,
  layLines,
  obstacleText,
  operationText,
  testCutsText,
  arrisLabel,
  layLabel,
} from "miterwright/words";
import { heedText } from "../../../src/words/texts/heed-text.js";
import { html, trusted, type Markup, type Part } from "../html.js";
import type { Writers } from "../writers.js";
import type { Card } from "./card.js";
import { bullets, facts, table } from "./tables.js";

/** What every lay is called. */
function layName({ lay, first }: LayResult, angle: Writers["angle"]): string {
  const name = layLabel(lay, angle);
  return lay === "propped" && first.cradled ? `${name}, in a cradle` : name;
}

/** The numbers that are looked for first. */
export const answerCard: Card = {
  id: "answer",
  heading: "At a glance",
  column: "work",
  write: ({ plan, writers }) => {
    const { length, angle } = writers;
    const { sawing, geometry, materials } = plan;
    const piece = geometry.pieces[0];
    const option = sawing.lay;
    if (option === null)
      return html`<p><strong>No way to lay the stick suits this saw.</strong> The table below says why.</p>`;
    const { arris, length: longest } = piece.longest;
    return html`${facts([
        ["miter scale", html`<span class="figure">${angle(option.first.miter.reading)}</span>`],
        ["bevel scale", html`<span class="figure">${angle(option.first.bevel.reading)}</span>`],
        [`${piece.count} pieces, each`, html`<span class="figure">${length(longest)}</span>`],
      ])}
      <p>
        The stick lies ${[`${layName(option, angle)}.`, ...layLines(option, writers).slice(1)].join(" ")} The length
        is taken along the ${arrisLabel(arris)}, from end to end. All pieces together use up
        ${length(materials.moldingLength)} of one stick, saw cuts included.
      </p>`;
  },
};

function cradle(plan: FramePlan, writers: Writers, width: number): Markup | null {
  const { cradle: wedge } = plan.sawing;
  if (wedge === null) return null;
  const drawing = drawCradle(plan, { ...writers, width: Math.min(width, 360) });
  return html`<h3>Before: make the cradle</h3>
    <figure>${trusted(drawing.svg)}</figure>`;
}

/** How the setting is proved before the molding is cut. */
function testCuts(plan: FramePlan, writers: Writers): Markup | null {
  if (plan.sawing.testCuts === null) return null;
  const { title, lines } = testCutsText(plan.sawing.testCuts, writers);
  return html`<h3>${title}</h3>
    ${bullets(lines)}`;
}

/** The steps at the saw, in order. */
export const stepsCard: Card = {
  id: "steps",
  heading: "At the saw, step by step",
  column: "work",
  write: ({ plan, writers, width }) => {
    const { operations, order } = plan.sawing;
    if (operations.length === 0) return null;
    const how =
      order === "piece-by-piece"
        ? "The steps follow each other for every single piece."
        : "Each step is done for all pieces before the next.";
    const hazards = numberHazards(plan);
    const steps = operations.map((operation) => {
      const { title, lines } = operationText(operation, writers);
      const drawing = drawCut(plan, { ...writers, step: operation.step, width: Math.min(width, 400) });
      return html`<li>
        <h3>${title}</h3>
        ${bullets([...heedText(hazards, operation.step), ...lines])}
        <figure>${trusted(drawing.svg)}</figure>
      </li>`;
    });
    return html`<p>${how} Left and right are yours as you stand in front of the saw.</p>
      ${cradle(plan, writers, width)}${testCuts(plan, writers)}
      <ol class="steps">
        ${steps}
      </ol>`;
  },
};

/** Said of a lay that a usual saw would not cut, where this one's depth is not given. */
function doubt({ depthInDoubt }: LayResult): string {
  return depthInDoubt ? ", depth not known" : "";
}

/** Every way to lay the stick. */
export const laysCard: Card = {
  id: "lays",
  heading: "Ways to lay the stick",
  column: "work",
  write: ({ plan, writers }) => {
    const { lays, lay } = plan.sawing;
    const { angle, length } = writers;
    const isSized = lays.some(({ size }) => size !== null);
    const rows = lays.map((option): Part[] => [
      layName(option, angle),
      angle(option.first.miter.reading),
      angle(option.first.bevel.reading),
      ...(isSized ? [option.size?.height, option.size?.depth].map((size) => (size == null ? "" : length(size))) : []),
      option.lay === lay?.lay
        ? html`<strong>used here${doubt(option)}</strong>`
        : option.possible
          ? `possible${doubt(option)}`
          : option.obstacles.map((obstacle) => obstacleText(obstacle, { angle })).join(" "),
    ]);
    return table(
      "What the scales must show, and whether this saw can do it",
      [
        "the stick lies",
        "miter scale",
        "bevel scale",
        ...(isSized ? ["height of the work", "depth along the blade"] : []),
        "possible",
      ],
      rows,
    );
  },
};

/** A tolerance, never broken between its parts. */
function withinText(tolerance: string): string {
  return `± ${tolerance}`.replaceAll(" ", "\u00a0");
}

const WHEN: Readonly<Record<FramePlan["checks"][number]["when"], string>> = {
  pieces: "on the pieces",
  dry: "on the dry frame",
  glued: "on the glued frame",
};

/** What to measure, when, and how far it may be off. */
export const checksCard: Card = {
  id: "checks",
  heading: "Checks",
  column: "frame",
  write: ({ plan, writers }) => {
    const { acceptedGap } = plan.brief;
    return html`<p>
        Put all pieces together without glue before gluing any. What is within these bounds keeps the last joint within
        a gap of ${writers.small(acceptedGap)}.
      </p>
      ${(["pieces", "dry", "glued"] as const).map((when) => {
        const rows = plan.checks
          .filter((check) => check.when === when)
          .map((check): Part[] => {
            const { kind, value, tolerance } = check;
            return [
              frameCheckText(check, plan.geometry),
              // Rounded to the marks of a rule, a length could be off by more than its tolerance.
              html`<span class="figure"
                >${kind === "length" && tolerance !== null ? writers.small(value) : writers[kind](value)}</span
              >`,
              tolerance === null
                ? ""
                : withinText(kind === "length" ? writers.small(tolerance) : writers.angle(tolerance)),
            ];
          });
        return table(`Measure ${WHEN[when]}`, ["what", "must be", "within"], rows);
      })}`;
  },
};

/** What to beware of, the gravest first, with the numbers that raised it and where the rule is printed. */
export const hazardsCard: Card = {
  id: "hazards",
  heading: "Hazards",
  column: "work",
  write: ({ plan, writers }) => {
    const items = numberHazards(plan).map(({ hazard }) => {
      const { title, sentence, numbers, source } = hazardText(hazard, writers);
      const behind = [numbers, source].filter((part) => part !== "").join("; ");
      return html`<li class="signal-${hazard.signal}">
        <strong>${title}.</strong> ${sentence}${behind === "" ? null : html` <small>(${behind})</small>`}
      </li>`;
    });
    return html`<p>
        Saws and glass hurt people. This page is arithmetic, not advice: the manual of your saw, local codes for glazing
        and hanging, and qualified advice come first. A hazard that names no source is common practice.
      </p>
      <ol class="hazards">
        ${items}
      </ol>`;
  },
};
