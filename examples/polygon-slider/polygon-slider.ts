/**
 * For a teacher's page: a polygon that follows a slider, drawn by the library, with all its measures in the reader's unit.
 */
import { drawPlanView } from "miterwright/drawing";
import { isInputError, ParseError } from "miterwright/errors";
import { frameGeometry } from "miterwright/frame";
import { onePolygonMeasure, regularPolygon } from "miterwright/polygon";
import { formatters, parseLength, type LengthUnit } from "miterwright/units";

/** The measures that are lengths, in words. */
const MEASURES = {
  side: "Side",
  apothem: "Apothem, from the center to a side",
  circumradius: "Circumradius, from the center to a corner",
  acrossFlats: "Across flats, the narrowest",
  acrossCorners: "Across corners, the widest",
  perimeter: "Perimeter",
} as const;
type Measure = keyof typeof MEASURES;
const NAMES = Object.keys(MEASURES) as Measure[];

function find<E extends HTMLElement>(id: string, kind: new () => E): E {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`The page has no ${id}`);
  return found;
}

const sides = find("sides", HTMLInputElement);
const size = find("size", HTMLInputElement);
const measure = find("measure", HTMLSelectElement);
const pose = find("pose", HTMLSelectElement);
const unit = find("unit", HTMLSelectElement);
const issue = find("issue", HTMLElement);
const picture = find("picture", HTMLElement);
const summary = find("summary", HTMLElement);
const measures = find("measures", HTMLElement);

function draw(): void {
  const known = onePolygonMeasure(measure.value as Measure, parseLength(size.value, unit.value as LengthUnit));
  const polygon = regularPolygon({ sides: sides.valueAsNumber, ...known });
  const ring = frameGeometry({
    sides: polygon.sides,
    pose: pose.value as "side-down" | "corner-down",
    opening: known,
    at: "outer",
    measured: { levelWidth: polygon.apothem / 6 },
  });

  const formats = formatters({ unit: unit.value as LengthUnit });
  const { length, area, angle } = formats;
  picture.replaceChildren(drawPlanView(ring, { formats, key: false }).toElement());

  const rows = [
    ...NAMES.map((name) => [MEASURES[name], length(polygon[name])]),
    ["Area", area(polygon.area)],
    ["Angle inside a corner", angle(polygon.interiorAngle)],
    ["Miter of a flat frame", angle(polygon.planMiter)],
  ];
  measures.replaceChildren(
    ...rows.flatMap((texts) =>
      texts.map((text, index) => {
        const cell = document.createElement(index === 0 ? "dt" : "dd");
        cell.textContent = text;
        return cell;
      }),
    ),
  );
  summary.textContent = `${polygon.sides} sides of ${length(polygon.side)}`;
}

function update(): void {
  sides.setAttribute("aria-valuetext", `${sides.value} sides`);
  try {
    draw();
    issue.textContent = "";
  } catch (error) {
    if (!isInputError(error)) throw error;
    const why = error instanceof ParseError ? error.reason : "it has to be more than zero";
    issue.textContent = `This is no length: ${why}.`;
    // A polygon of what no longer stands in the field would be worse than none.
    for (const place of [picture, summary, measures]) place.replaceChildren();
  }
  size.setAttribute("aria-invalid", String(issue.textContent !== ""));
}

for (const name of NAMES) measure.add(new Option(MEASURES[name], name, false, name === "acrossFlats"));
document.querySelector("form")!.addEventListener("input", update);
update();
