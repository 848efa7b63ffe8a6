import { drawCradle, drawCut, drawPiece } from "../drawing/index.js";
import { heedText } from "../words/internal.js";
import { numberHazards, type FramePlan, type LayResult } from "../frame/index.js";
import {
  describeLay,
  describeObstacle,
  describeOperation,
  describeTestCuts,
  layLabel,
  surfaceLabel,
} from "../words/index.js";
import type { ObstacleCode, Saw, ScaleSetting } from "../saw/index.js";
import { element, join, list, table, type Content, type Markup } from "./html.js";
import { finely, type Words } from "./sheet-options.js";

/** In which order steps and pieces follow each other. */
const ORDERS: Readonly<Record<FramePlan["sawing"]["order"], string>> = {
  "step-by-step": "Do every step for all pieces before the next step.",
  "piece-by-piece": "Do all steps for one piece before the next piece, since every piece is cut on the stick itself.",
};

function sawText({ fence, miter, bevel }: Saw, { angle }: Words): string {
  const where = fence === "near" ? "pushes the stick from your side" : "is behind the stick";
  const tilts = [
    bevel.left > 0 ? `${angle(bevel.left)} to the left` : "",
    bevel.right > 0 ? `${angle(bevel.right)} to the right` : "",
  ]
    .filter((text) => text !== "")
    .join(" and ");
  const blade = tilts === "" ? "whose blade does not lean" : `whose blade's top leans ${tilts}`;
  return `Planned for a saw whose fence ${where}, whose miter goes to ${angle(miter.left)} left and ${angle(miter.right)} right, and ${blade}. Left and right are yours as you stand in front of it and look away from yourself. Another saw needs another sheet.`;
}

function reading(setting: ScaleSetting, graduation: number, step: number, { angle }: Words): string {
  const [exact, best] = [angle(setting.reading), angle(graduation)];
  return exact === best ? exact : `${exact} (best mark ${best}, marks every ${angle(step)})`;
}

/** The settings of the chosen lay, large enough to be read from a distance. */
function settingsTable({ sawing }: FramePlan, result: LayResult, words: Words): Markup {
  const { miter, bevel } = result.first;
  const { saw } = sawing;
  const graduations = sawing.operations.at(-1)!.graduations;
  return table({
    caption: "What the scales must show for either end",
    heads: ["scale", "must show", "it reads"],
    rows: [
      [
        "miter",
        reading(miter, graduations.miter, saw.miter.step, words),
        saw.miter.reads === "from-square" ? "degrees from a square cut" : "degrees between blade and fence",
      ],
      [
        "bevel",
        reading(bevel, graduations.bevel, saw.bevel.step, words),
        saw.bevel.reads === "from-vertical" ? "degrees from an upright blade" : "degrees between blade and table",
      ],
    ],
  });
}

/** Why a lay is not used, in short. */
const SHORT: Readonly<Record<ObstacleCode, string>> = {
  "miter-range-left": "miter too far",
  "miter-range-right": "miter too far",
  "bevel-range-left": "bevel too far",
  "bevel-range-right": "bevel too far",
  depth: "too high for the blade",
  crosscut: "too wide for the saw",
  "no-flat-back": "tips over",
  rocks: "tips over",
  "tips-over": "tips over",
  "needs-cradle": "needs a wedge",
};

function whyNot({ obstacles }: LayResult, isShort: boolean, { angle }: Words): string {
  if (!isShort) return obstacles.map((obstacle) => describeObstacle(obstacle, { angle })).join(" ");
  return [...new Set(obstacles.map(({ code }) => SHORT[code]))].join(", ");
}

function laysTable({ sawing }: FramePlan, words: Words): Markup {
  const { angle, length } = words;
  const sized = sawing.lays.some(({ size }) => size !== null);
  const rows = sawing.lays.map((result): Content[] => {
    const { lay, first, possible, size, depthInDoubt } = result;
    const doubt = depthInDoubt ? ", depth not known" : "";
    return [
      // The table is half as wide as the paper: a name that takes two lines makes it too high.
      layLabel(lay, angle).replace(/^standing /, ""),
      angle(first.miter.reading),
      angle(first.bevel.reading),
      ...(sized ? [size === null ? "" : length(size.height), size === null ? "" : length(size.depth)] : []),
      lay === sawing.lay?.lay
        ? element("strong", `used${doubt}`)
        : possible
          ? `yes${doubt}`
          : whyNot(result, sawing.lay !== null, words),
    ];
  });
  return table({
    caption: "Every way to lay the stick",
    heads: ["the stick lies", "miter", "bevel", ...(sized ? ["height", "depth"] : []), "works?"],
    rows,
  });
}

/** The steps, each beside its picture; below the last one the finished piece. */
function steps(plan: FramePlan, words: Words): Markup {
  const { operations } = plan.sawing;
  const hazards = numberHazards(plan);
  return join(
    operations.map((operation, index) => {
      const { title, lines } = describeOperation(operation, words);
      const { step } = operation;
      const pictures = [drawCut(plan, { ...words, step, width: 310 })];
      if (index === operations.length - 1) pictures.push(drawPiece(plan, { ...words, width: 325, key: false }));
      return element(
        'article class="step"',
        element("div", element("h3", `${step}. ${title}`), list("ul", [...heedText(hazards, step), ...lines])),
        element("div", ...pictures.map(({ svg }) => element("figure", { html: svg }))),
      );
    }),
  );
}

/** How the setting is proved before the molding is cut. */
function proofBlock({ sawing }: FramePlan, words: Words): Markup {
  if (sawing.testCuts === null) return { html: "" };
  const { title, lines } = describeTestCuts(sawing.testCuts, { ...finely(words), length: words.length });
  return element("div", element("h3", title), list("ol", lines));
}

function cradleBlock(plan: FramePlan, words: Words): Markup {
  const { cradle, lay } = plan.sawing;
  const { length, angle } = words;
  const { slope } = plan.geometry;
  if (cradle !== null) {
    const drawing = drawCradle(plan, { ...words, width: 300, key: false });
    const lines = [
      `Make a cradle as long as the saw's table allows: a wedge of ${angle(cradle.angle)}, ${length(cradle.levelRun)} wide and ${length(cradle.rise)} high, its sloping top ${length(cradle.top)}.`,
      `The stick's ${surfaceLabel(cradle.high)} lies at its high side. Fix a ledge at the thin end that keeps the stick from sliding.`,
      ...(cradle.base > 0
        ? [
            `The stick reaches ${length(cradle.base)} below the wedge's thin end: set the wedge on a base as high, with the stick's edge free beside it.`,
          ]
        : []),
      cradle.steady
        ? "The dash-dotted line goes through the stick's center of gravity, which is above the wedge."
        : `The stick's center of gravity (dash-dotted line) is not above the wedge: widen its base by ${length(cradle.widenBy)} at least, or clamp the stick.`,
      "Keep screws, nails and clamps out of the blade's path. Prove the angle on a piece of scrap.",
    ];
    return element(
      'article class="step"',
      element("div", element("h3", "The cradle"), list("ul", lines)),
      element("figure", { html: drawing.svg }),
    );
  }
  if (lay?.first.cradled !== true) return { html: "" };
  const size = angle(Math.abs(slope));
  return element(
    "p",
    `The stick lies in a cradle: a wedge of ${size} under its back, its ${slope > 0 ? "outer" : "sight"} edge the higher. Its size follows from the back's width, which was not given.`,
  );
}

/**
 * The work at the saw: the finished piece, settings, cradle and steps in shop order.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns the section
 */
export function sawSection(plan: FramePlan, words: Words): Markup {
  const { sawing } = plan;
  const result = sawing.lay;
  if (result === null) {
    const piece = element("figure", { html: drawPiece(plan, { ...words, width: 660 }).svg });
    const refused = element("p", element("strong", "No way to lay the stick suits this saw; the table says why."));
    return element(
      "section",
      element("h2", "At the saw"),
      element("p", sawText(sawing.saw, words)),
      refused,
      laysTable(plan, words),
      piece,
    );
  }
  const [lies, ...givenUp] = describeLay(result, words);
  return element(
    "section",
    element("h2", "At the saw"),
    element(
      "p",
      `${sawText(sawing.saw, words)} `,
      element("strong", lies!),
      ` ${[...givenUp, ORDERS[sawing.order]].join(" ")} Where a step names tear-out, back the wood with scrap or score the line.`,
    ),
    element(
      'div class="two"',
      element("div", settingsTable(plan, result, words), laysTable(plan, words)),
      proofBlock(plan, words),
    ),
    cradleBlock(plan, words),
    steps(plan, words),
  );
}
