import { molding, rabbetSeating, sectionAt, type SectionPoint } from "miterwright/profile";
import { reasonText } from "miterwright/words";
import { angle, defineFigure, length, type Figure } from "./figure.js";
import { dimension, dot, fitInto, finish, line, shape, text, type Pad, type Point } from "./pad.js";

const SIZE = { width: 440, height: 345 };
const WIDTH = 62;
const THICKNESS = 30;

const WHERE = {
  "sight-edge": "the sight edge",
  ledge: "the ledge",
  corner: "the corner",
};

/** Contents in a tilted rabbet. */
export const rabbetFigure: Figure = defineFigure({
  name: "rabbet",
  legend: "Change the rabbet and what lies in it",
  size: SIZE,
  controls: {
    slope: angle("Slope", 20, -60, 60),
    width: length("Rabbet's width", 12, 4, 25, 0.5),
    depth: length("Rabbet's depth", 18, 4, 24, 0.5),
    contents: length("Contents' thickness", 6, 1, 20, 0.5),
    clearance: length("Clearance", 1, 0, 4, 0.1),
  },
  draw: ({ slope, width, depth, contents, clearance }, reader) => {
    const profile = molding({ width: WIDTH, thickness: THICKNESS, rabbet: { width, depth } });
    const section = sectionAt(profile, slope);
    const fit = rabbetSeating(profile, { slope, contents: [{ name: "contents", thickness: contents }], clearance });
    // As if it were tilted about its middle, so that it stays in place and of one size at every slope.
    const [c, s] = [Math.cos((slope * Math.PI) / 180), Math.sin((slope * Math.PI) / 180)];
    const middle = { x: (WIDTH / 2) * c - (THICKNESS / 2) * s, y: (WIDTH / 2) * s + (THICKNESS / 2) * c };
    const radius = Math.hypot(WIDTH, THICKNESS) / 2;
    const { place: put } = fitInto(
      [
        { x: middle.x - radius - 22, y: middle.y - radius - 3 },
        { x: middle.x + radius, y: middle.y + radius + 3 },
      ],
      { x: 10, y: 8, width: 420, height: 282 },
    );
    const place = ({ out, up }: SectionPoint): Point => put({ x: out, y: up });
    const pad: Pad = [];
    shape(pad, "wood", section.outline.map(place));
    const sight = place(section.arrises.sightBack);
    if (fit.possible) {
      const front = fit.layers[0]!.front;
      const back = fit.layers.at(-1)!.back;
      const edge = fit.opening.out - clearance;
      const left = middle.x - radius - 20;
      const [a, b] = [place({ out: edge, up: front }), place({ out: edge, up: back })];
      shape(pad, "sheet", [place({ out: left, up: front }), a, b, place({ out: left, up: back })]);
      const opening = place(fit.opening);
      const low = Math.max(sight.y, a.y, b.y, opening.y) + 20;
      line(pad, "accent-dashed", opening, { x: opening.x, y: low + 26 });
      dot(pad, opening);
      text(pad, { x: opening.x + 5, y: low + 26 }, "opening", { accent: true });
      if (fit.lap > 0) dimension(pad, "level", sight, a, low, "lap");
      dot(pad, place(fit.bearing));
    } else {
      const reason = { "past-mouth": "too shallow", "falls-through": "too narrow", "too-steep": "too steep" };
      text(pad, { x: SIZE.width / 2, y: SIZE.height - 14 }, `Holds nothing: ${reason[fit.reason]}.`, {
        anchor: "middle",
        accent: true,
      });
    }
    const show = (value: number | undefined): string => (value === undefined ? "none" : reader.length(value));
    const held = fit.possible ? fit : undefined;
    return {
      svg: finish(
        pad,
        SIZE,
        `A rabbet at a slope of ${reader.angle(slope)} and what it holds`,
        fit.possible
          ? `Level contents bear on ${WHERE[fit.bearsOn]}. The lip laps them by ${reader.length(fit.lap)}.`
          : reasonText(fit.reason),
      ),
      facts: [
        ["they bear on", held === undefined ? "nothing" : WHERE[held.bearsOn]],
        ["lap", show(held?.lap)],
        ["depth used", show(held?.depthUsed)],
        ["depth left", show(held?.depthLeft)],
        ["room lost to the lean", show(held?.roomLost)],
      ],
    };
  },
});
