import type { FramePlan } from "../frame/index.js";
import { element, list, type Markup } from "./html.js";
import { quantityText } from "./quantity-text.js";
import type { Words } from "./sheet-options.js";

type Hung = Extract<FramePlan["hanging"], { possible: true }>;

/** Where the hangers go, in the words of somebody with a tape who has the frame's back before them. */
function placeText({ by, fixings, below, apart }: Hung, { length }: Words): string {
  const [one, other] = fixings;
  const kind = by === "wire" ? "By a wire between two hangers" : "On two hooks, by two hangers";
  return `${kind}, on sides ${one.side} and ${other.side} (numbered counter-clockwise from the bottom, as in the view from above): ${length(below)} below the top, ${length(apart)} apart, which is ${length(one.fromCorner)} from the upper corner along the outermost line.`;
}

function seatTexts({ seat }: Hung, { length, angle }: Words): string[] {
  if (seat === null) return [];
  const { width, lean, opens, standoff, wood, deepest, screwDepth } = seat;
  const lies =
    opens === "nowhere"
      ? `lie flat to the wall on a surface ${length(width)} wide`
      : `lie on a surface ${length(width)} wide that leans ${angle(Math.abs(lean))} from the wall, opening ${opens}, its middle ${length(standoff)} off the wall`;
  const screws = screwDepth === null ? "" : `; these go in ${length(screwDepth)}`;
  return [
    `The hangers ${lies}. Behind it is ${length(wood)} of wood: screws ${length(deepest)} deep at the most${screws}.`,
  ];
}

function wireTexts({ wire }: Hung, { length, angle }: Words): string[] {
  if (wire === null) return [];
  const hook =
    wire.belowTop < 0
      ? `${length(-wire.belowTop)} above the frame's top, where it shows`
      : `${length(wire.belowTop)} below the frame's top`;
  return [
    `The wire is ${length(wire.length)} from hanger to hanger, knots besides; at ${angle(wire.angle)} its hook is ${hook}.`,
  ];
}

function loadText({ by, load }: Hung, words: Words): string {
  const { mass, complete, weight, share, pull, factor, strength } = load;
  const each = by === "wire" ? "Each half of the wire and each hanger" : "Each hook and hanger";
  if (mass === null || weight === null || pull === null || strength === null) {
    return `${each} carries ${quantityText(100 * share, "percent", words)} of the weight, which is not known: weigh the frame.`;
  }
  const least = complete ? "" : "at least ";
  const kg = quantityText(mass, "mass", words);
  const newtons = (force: number): string => quantityText(force, "force", words);
  return `It weighs ${least}${kg} (${newtons(weight)}). ${each} carries ${newtons(pull)}; common practice, which is no advice, takes what holds ${factor} times that, ${newtons(strength)}.`;
}

/**
 * How the frame hangs: where the hangers go, what they lie on, the wire and the load.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns blocks that stand below the molding; none where the frame does not hang
 */
export function hangingBlock(plan: FramePlan, words: Words): Markup[] {
  const { hanging } = plan;
  if (hanging === null) return [];
  const lines = hanging.possible
    ? [placeText(hanging, words), ...seatTexts(hanging, words), ...wireTexts(hanging, words), loadText(hanging, words)]
    : [hanging.why];
  return [element('div class="keep"', element("h3", "Hanging"), list("ul", lines))];
}
