import { atan2Deg, cosDeg, sinDeg } from "../core/degrees.js";
import type { PlacedArris } from "../frame/index.js";
import type { SectionPoint } from "../profile/index.js";
import { drawShape } from "./canvas.js";
import { arrisLetters } from "./arris-letters.js";
import { placeLabel } from "./place-label.js";
import type { SectionSheet } from "./section-sheet.js";

/** Points closer than this, as a share of the section's size, are one. */
const SAME_POINT: number = 1e-9;
/** Radius of the dot at an arris. */
const DOT: number = 1.9;

/** The direction that points straight out of the wood at a corner of the outline: between the outward normals of its two edges. */
function outwardAt(outline: readonly SectionPoint[], index: number): number {
  const here = outline[index]!;
  const normalTo = (other: SectionPoint, sign: number): SectionPoint => {
    const size = Math.hypot(other.out - here.out, other.up - here.up);
    // In a section a billion billion times as wide as thick, different corners can stand at one place.
    if (size === 0) return { out: 0, up: 0 };
    return { out: (sign * (other.up - here.up)) / size, up: (-sign * (other.out - here.out)) / size };
  };
  const next = normalTo(outline[(index + 1) % outline.length]!, 1);
  const last = normalTo(outline.at(index - 1)!, -1);
  return atan2Deg(next.up + last.up, next.out + last.out);
}

/** Shows the named arrises by dots and letters, one label where several share a point. */
export function letterArrises(
  sheet: SectionSheet,
  outline: readonly SectionPoint[],
  arrises: Readonly<Record<string, PlacedArris>>,
): void {
  const { canvas, toPaper } = sheet;
  const letters = arrisLetters(Object.keys(arrises));
  const size = Math.max(...outline.map(({ out, up }) => Math.abs(out) + Math.abs(up)));
  const same = (a: PlacedArris, b: PlacedArris): boolean =>
    Math.abs(a.out - b.out) + Math.abs(a.up! - b.up!) <= SAME_POINT * size;
  const placed: { readonly arris: PlacedArris; readonly names: string[] }[] = [];
  for (const [name, arris] of Object.entries(arrises)) {
    const there = placed.find((other) => same(other.arris, arris));
    if (there === undefined) placed.push({ arris, names: [name] });
    else there.names.push(name);
  }
  const spots = placed.map(({ arris, names }) => {
    const at = toPaper(arris.out, arris.up!);
    const index = outline.findIndex((point) => same(point, arris));
    const dot = [0, 45, 90, 135, 180, 225, 270, 315].map((turn) => ({
      x: at.x + DOT * cosDeg(turn),
      y: at.y + DOT * sinDeg(turn),
    }));
    for (const name of names) drawShape(canvas, { part: "arris", arris: name }, "dot", dot);
    return { at, names, toward: index < 0 ? 90 : outwardAt(outline, index) };
  });
  for (const { at, names, toward } of spots) {
    placeLabel(canvas, {
      is: { part: "label", arris: names[0]! },
      at,
      lines: [names.map((name) => letters[name]!).join(", ")],
      toward,
      reach: 5,
    });
  }
}
