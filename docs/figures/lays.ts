import { layLabel } from "miterwright/words";
import { joinCorner, sawSetting, type LayName } from "miterwright/miter";
import { lieSection } from "miterwright/saw";
import { angle, defineFigure, sides, type Figure } from "./figure.js";
import { plainMolding } from "./molding.js";
import { finish, line, shape, text, type Pad, type Point } from "./pad.js";

const SIZE = { width: 440, height: 330 };
const CELL = { width: 146, height: 165 };
const LAYS: readonly LayName[] = ["propped", "flat", "face-down", "sight-edge-down", "outer-edge-down"];
const SCALE = 1.4;

/** One section in its five named lays, with the setting of the saw for each. */
export const laysFigure: Figure = defineFigure({
  name: "lays",
  legend: "Change the frame",
  hasLengths: false,
  size: SIZE,
  controls: { sides: sides(8), slope: angle("Slope", 35, -85, 85) },
  draw: ({ sides: n, slope }, reader) => {
    const profile = plainMolding(58, 24);
    const board = { slope, thickness: 24 };
    const { first } = joinCorner({ turn: 360 / n, first: board, second: board });
    const pad: Pad = [];
    const facts = LAYS.map((lay, index): readonly [string, string] => {
      // Two in the first row, three in the second.
      const [row, column] = index < 2 ? [0, index + 0.5] : [1, index - 2];
      const middle = CELL.width * (column + 0.5);
      const table = CELL.height * row + 106;
      const { outline, width } = lieSection(profile, { slope, lay });
      const left = Math.min(...outline.map((point) => point.across));
      const place = (point: { readonly across: number; readonly up: number }): Point => ({
        x: middle + (point.across - left - width / 2) * SCALE,
        y: table - point.up * SCALE,
      });
      shape(pad, "wood", outline.map(place));
      // The lip's edge: the outline starts at its lower end and comes back to its upper one.
      line(pad, "accent", place(outline[0]!), place(outline.at(-1)!));
      line(pad, "ink", { x: middle - 62, y: table }, { x: middle + 62, y: table });
      const { miter, bevel } = sawSetting(first, lay);
      const name = layLabel(lay);
      text(pad, { x: middle, y: table + 17 }, name, { anchor: "middle" });
      text(pad, { x: middle, y: table + 32 }, `miter ${reader.angle(miter)}`, { anchor: "middle", accent: true });
      text(pad, { x: middle, y: table + 47 }, `bevel ${reader.angle(bevel)}`, { anchor: "middle", accent: true });
      return [`${name}, miter and bevel`, `${reader.angle(miter)} and ${reader.angle(bevel)}`];
    });
    return {
      svg: finish(
        pad,
        SIZE,
        "A molding on the saw in five lays, and the setting for each",
        `${facts.map(([lay, setting]) => `${lay}: ${setting}`).join("; ")}.`,
      ),
      facts,
    };
  },
});
