import { planPanel, simulatePanel } from "miterwright/panel";
import { angle, choice, defineFigure, factor, length, sides, type Figure } from "./figure.js";
import { dimension, dot, fitInto, finish, line, shape, text, type Pad, type Point } from "./pad.js";

const SIZE = { width: 440, height: 340 };

/** A panel in its squared blank, with what an error of the gauge makes of it. */
export const panelFigure: Figure = defineFigure({
  name: "panel",
  legend: "Change the panel",
  size: SIZE,
  controls: {
    sides: sides(9),
    opening: length("Opening across flats", 300, 50, 1000),
    clearance: length("Clearance", 1, 0, 5, 0.1),
    pose: choice("It stands", "side-down", { "side-down": "on a side", "corner-down": "on a corner" }),
    error: angle("Gauge off by", 0.2, -1, 1, 0.05),
    exaggerated: factor("Error drawn times", 8, 1, 20),
  },
  draw: ({ sides: n, opening, clearance, pose, error, exaggerated }, reader) => {
    const across = n % 2 === 0 ? opening / 2 : opening / (1 + 1 / Math.cos(Math.PI / n));
    const plan = planPanel({ polygon: { sides: n, apothem: across }, clearance, pose });
    const { blank } = plan;
    const box = [
      { x: 0, y: 0 },
      { x: blank.width, y: 0 },
      { x: blank.width, y: blank.height },
      { x: 0, y: blank.height },
    ];
    const { place } = fitInto(box, { x: 50, y: 16, width: 300, height: 260 });
    const corners = plan.corners.map(({ point }) => place(point));
    const center = place(plan.center);
    const pad: Pad = [];
    shape(pad, "wood", corners);
    line(pad, "dashed", ...[...box, box[0]!].map(place));
    for (const side of plan.existing) line(pad, "ink", corners[side]!, corners[(side + 1) % n]!);
    const drawn = Math.max(-20, Math.min(20, error * exaggerated));
    const wrong = plan.cuts.length === 0 ? [] : simulatePanel(plan, { settingError: drawn });
    if (drawn !== 0 && wrong.length > 0) line(pad, "accent-dashed", ...[...wrong, wrong[0]!].map(place));
    corners.forEach((from, side) => {
      const to = corners[(side + 1) % n]!;
      const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
      const size = Math.hypot(center.x - middle.x, center.y - middle.y);
      const inward = (by: number): Point => ({
        x: middle.x + (by * (center.x - middle.x)) / size,
        y: middle.y + (by * (center.y - middle.y)) / size,
      });
      const cut = plan.cuts.find((one) => one.side === side);
      text(pad, { x: inward(15).x, y: inward(15).y + 4 }, cut === undefined ? "-" : String(cut.step), {
        anchor: "middle",
        small: true,
      });
    });
    const inside = plan.corners.filter((corner) => corner.inside);
    for (const corner of inside) dot(pad, place(corner.point));
    const shown = inside.find((corner) => corner.fromSide.edge === "right" && corner.fromBase.edge === "bottom");
    if (shown !== undefined) {
      const at = place(shown.point);
      const edge = place({ x: blank.width, y: 0 });
      dimension(pad, "level", at, { x: edge.x, y: edge.y }, edge.y + 22, "a");
      dimension(pad, "plumb", at, { x: edge.x, y: edge.y }, edge.x + 22, "b");
    }
    const multiple = Math.max(0, ...plan.cuts.map((cut) => cut.errorMultiple));
    return {
      svg: finish(
        pad,
        SIZE,
        `A panel of ${n} sides in its squared blank`,
        `Each side has the number of the step that cuts it, or a dash where the blank has it already. ${inside.length} corners lie inside the blank. The dashed colored outline is what a gauge that is off makes of it, exaggerated.`,
      ),
      facts: [
        ["blank's width", reader.length(blank.width)],
        ["blank's height", reader.length(blank.height)],
        ["cuts", String(plan.cuts.length)],
        ["gauge, from square", reader.angle(plan.setting)],
        ["corners inside", String(inside.length)],
        ["a", shown === undefined ? "none" : reader.length(shown.fromSide.distance)],
        ["b", shown === undefined ? "none" : reader.length(shown.fromBase.distance)],
        ["last side off by", reader.angle(multiple * Math.abs(error))],
      ],
    };
  },
});
