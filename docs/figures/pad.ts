/** A point on the paper (y runs down) or in the world (y runs up). */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** How things look; the classes are in figures.css, which knows light, dark and print. */
export type Look =
  /** An outline. */
  | "ink"
  /** A line that helps. */
  | "thin"
  /** A hidden or imagined line. */
  | "dashed"
  /** What the figure is about. */
  | "accent"
  /** The same, imagined. */
  | "accent-dashed"
  /** A surface of wood. */
  | "wood"
  /** A sawn surface. */
  | "sawn"
  /** What lies in the rabbet. */
  | "sheet"
  /** A plane that is only thought of. */
  | "plane"
  /** A small solid mark. */
  | "dot";

export interface TextOptions {
  readonly anchor?: "start" | "middle" | "end";
  readonly accent?: boolean;
  readonly small?: boolean;
}

/** A picture in the making: its elements as markup. */
export type Pad = string[];

const ARROW = 8;
const ARROW_HALF = 2.6;
/** From a point to the dimension line that leads away from it. */
const GAP = 3;

function write(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`bug: a figure draws ${value}`);
  return String(Math.round(value * 100) / 100 + 0);
}

function path(points: readonly Point[]): string {
  return points.map(({ x, y }, index) => `${index === 0 ? "M" : "L"}${write(x)} ${write(y)}`).join("");
}

/** A text as it is written between two tags. */
export function escapeText(text: string): string {
  return text.replace(/[&<>]/g, (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;" })[sign]!);
}

export function line(pad: Pad, look: Look, ...points: readonly Point[]): void {
  pad.push(`<path class="fig-${look}" fill="none" d="${path(points)}"/>`);
}

export function shape(pad: Pad, look: Look, ...outlines: readonly (readonly Point[])[]): void {
  const data = outlines.map((points) => `${path(points)}Z`).join("");
  pad.push(`<path class="fig-${look}" fill-rule="evenodd" d="${data}"/>`);
}

export function dot(pad: Pad, at: Point, radius: number = 3): void {
  pad.push(`<circle class="fig-dot" cx="${write(at.x)}" cy="${write(at.y)}" r="${write(radius)}"/>`);
}

export function text(pad: Pad, at: Point, words: string, options: TextOptions = {}): void {
  const { anchor = "start", accent = false, small = false } = options;
  const classes = `fig-text${accent ? " fig-text-accent" : ""}${small ? " fig-text-small" : ""}`;
  pad.push(
    `<text class="${classes}" x="${write(at.x)}" y="${write(at.y)}" text-anchor="${anchor}">${escapeText(words)}</text>`,
  );
}

function arrow(pad: Pad, tip: Point, from: Point): void {
  const size = Math.hypot(from.x - tip.x, from.y - tip.y);
  const [x, y] = [(from.x - tip.x) / size, (from.y - tip.y) / size];
  const [baseX, baseY] = [tip.x + ARROW * x, tip.y + ARROW * y];
  shape(pad, "dot", [
    tip,
    { x: baseX - ARROW_HALF * y, y: baseY + ARROW_HALF * x },
    { x: baseX + ARROW_HALF * y, y: baseY - ARROW_HALF * x },
  ]);
}

/** A line with an arrowhead at each end, where it has room for them. */
export function span(pad: Pad, from: Point, to: Point): void {
  line(pad, "accent", from, to);
  if (Math.hypot(to.x - from.x, to.y - from.y) < 2.5 * ARROW) return;
  arrow(pad, from, to);
  arrow(pad, to, from);
}

/**
 * A vector: an arrow with its name beyond the tip.
 *
 * @param aside - how far the name is moved to the right-hand side of the arrow's way
 */
export function vectorArrow(pad: Pad, from: Point, to: Point, name: string, aside: number = 0): void {
  line(pad, "accent", from, to);
  arrow(pad, to, from);
  const size = Math.hypot(to.x - from.x, to.y - from.y);
  const [x, y] = [(to.x - from.x) / size, (to.y - from.y) / size];
  const anchor = x > 0.5 ? "start" : x < -0.5 ? "end" : "middle";
  const below = 4 + (Math.abs(x) > 0.5 ? 0 : 11 * Math.sign(y));
  text(pad, { x: to.x + 6 * x - aside * y, y: to.y + below + aside * x }, name, { anchor, accent: true });
}

/**
 * The level or plumb distance of two points: a line away from the thing, and two that lead to it.
 *
 * @param along - `level`: `at` is the height of the line; `plumb`: its place from the left
 */
export function dimension(pad: Pad, along: "level" | "plumb", from: Point, to: Point, at: number, label: string): void {
  const place = (point: Point): Point => (along === "level" ? { x: point.x, y: at } : { x: at, y: point.y });
  for (const point of [from, to]) {
    const end = place(point);
    const way = { x: Math.sign(end.x - point.x), y: Math.sign(end.y - point.y) };
    line(
      pad,
      "thin",
      { x: point.x + GAP * way.x, y: point.y + GAP * way.y },
      { x: end.x + GAP * way.x, y: end.y + GAP * way.y },
    );
  }
  const [a, b] = [place(from), place(to)];
  span(pad, a, b);
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  if (along === "level") text(pad, { x: middle.x, y: at + 15 }, label, { anchor: "middle", accent: true });
  else text(pad, { x: at + 6, y: middle.y + 4 }, label, { accent: true });
}

/** An arc with a label at its middle, from one direction to another, in degrees counter-clockwise from the right. */
export function angleArc(pad: Pad, at: Point, radius: number, from: number, to: number, label: string): void {
  const on = (degrees: number, far: number): Point => ({
    x: at.x + far * Math.cos((degrees * Math.PI) / 180),
    y: at.y - far * Math.sin((degrees * Math.PI) / 180),
  });
  const steps = 24;
  line(
    pad,
    "accent",
    ...Array.from({ length: steps + 1 }, (_, index) => on(from + ((to - from) * index) / steps, radius)),
  );
  const middle = (from + to) / 2;
  const place = on(middle, radius + 6);
  const cosine = Math.cos((middle * Math.PI) / 180);
  const anchor = cosine > 0.35 ? "start" : cosine < -0.35 ? "end" : "middle";
  const drop = Math.sin((middle * Math.PI) / 180);
  text(pad, { x: place.x, y: place.y + (drop < -0.5 ? 10 : 4) }, label, { anchor, accent: true });
}

/** The part of the paper that a drawing is to fill. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * The mapping that brings points of the world into a part of the paper, as large as fits and in its middle.
 *
 * @param points - what has to fit
 * @param frame - the part of the paper
 * @returns the mapping, and how many units of the paper one of the world gets
 */
export function fitInto(
  points: readonly Point[],
  frame: Frame,
): { readonly place: (point: Point) => Point; readonly scale: number } {
  const xs = points.map((point) => point.x);
  const ys = points.map((point) => point.y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const scale = Math.min(frame.width / (right - left), frame.height / (high - low));
  const place = ({ x, y }: Point): Point => ({
    x: frame.x + frame.width / 2 + (x - (left + right) / 2) * scale,
    y: frame.y + frame.height / 2 - (y - (low + high) / 2) * scale,
  });
  return { place, scale };
}

/**
 * Ends a picture.
 *
 * @param pad - its elements
 * @param size - its width and height
 * @param title - what it shows, in a few words
 * @param description - what it shows, in sentences
 * @returns the SVG document
 */
export function finish(
  pad: Pad,
  size: { readonly width: number; readonly height: number },
  title: string,
  description: string,
): string {
  const { width, height } = size;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img"><title>${escapeText(title)}</title><desc>${escapeText(description)}</desc>${pad.join("")}</svg>`;
}
