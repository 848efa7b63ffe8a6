import { formatLength, nearestFraction } from "miterwright/units";
import { choice, defineFigure, length, type Figure } from "./figure.js";
import { finish, line, shape, text, type Pad } from "./pad.js";

const SIZE = { width: 440, height: 200 };
const INCH = 25.4;
const EDGE = { left: 20, right: 420, y: 118 };

/** A stretch of an inch rule with a length on it, and the marks it is rounded to. */
export const rulerFigure: Figure = defineFigure({
  name: "ruler",
  legend: "Change the length and the rule",
  size: SIZE,
  controls: {
    value: length("Length", 69, 5, 300, 0.1),
    denominator: choice("Rule's finest marks", "16", {
      "8": "eighths",
      "16": "sixteenths",
      "32": "thirty-seconds",
      "64": "sixty-fourths",
    }),
  },
  draw: ({ value, denominator }, reader) => {
    const inches = value / INCH;
    const parts = Number(denominator);
    const shown = 16 / parts;
    const from = Math.max(0, Math.floor((inches - shown / 2) * parts)) / parts;
    const place = (at: number): number => EDGE.left + ((at - from) / shown) * (EDGE.right - EDGE.left);
    const pad: Pad = [];
    shape(pad, "wood", [
      { x: EDGE.left - 12, y: EDGE.y },
      { x: EDGE.right + 12, y: EDGE.y },
      { x: EDGE.right + 12, y: EDGE.y + 56 },
      { x: EDGE.left - 12, y: EDGE.y + 56 },
    ]);
    const start = Math.round(from * parts);
    for (let tick = start; tick <= start + 16; tick++) {
      const { denominator: own, text: label } = nearestFraction(tick / parts, parts);
      const high = own === 1 ? 32 : 30 - 5 * Math.log2(own) + (parts === 64 ? 4 : 0);
      const x = place(tick / parts);
      line(pad, "ink", { x, y: EDGE.y }, { x, y: EDGE.y + Math.max(6, high) });
      if (own * 8 <= parts || own === 1) text(pad, { x, y: EDGE.y + 49 }, label, { anchor: "middle", small: true });
    }
    const at = place(inches);
    line(pad, "accent", { x: at, y: 34 }, { x: at, y: EDGE.y });
    text(pad, { x: at, y: 26 }, formatLength(value, "mm", { as: "in", style: "decimal", digits: 4 }), {
      anchor: at > 360 ? "end" : at < 80 ? "start" : "middle",
      accent: true,
    });
    const roundings = ["down", "nearest", "up"] as const;
    const [down, nearest, up] = roundings.map((rounding) => nearestFraction(inches, parts, { rounding }));
    roundings.forEach((rounding, index) => {
      const fraction = [down, nearest, up][index]!;
      const x = place(fraction.value);
      const y = rounding === "nearest" ? 66 : 92;
      line(pad, "accent-dashed", { x, y: y + 4 }, { x, y: EDGE.y });
      const anchor =
        rounding === "down" ? "end" : rounding === "up" ? "start" : fraction.value < inches ? "end" : "start";
      text(pad, { x: x + (anchor === "end" ? -4 : 4), y: y + 6 }, rounding, { anchor, small: true });
    });
    return {
      svg: finish(
        pad,
        SIZE,
        `A length on an inch rule with marks of 1/${parts}`,
        `The length lies between ${down!.text} and ${up!.text}; the nearest mark is ${nearest!.text}.`,
      ),
      facts: [
        ["length", reader.length(value)],
        ["nearest", `${nearest!.text} in`],
        ["down", `${down!.text} in`],
        ["up", `${up!.text} in`],
        ["nearest mark is off by", reader.small(nearest!.error * INCH)],
      ],
    };
  },
});
