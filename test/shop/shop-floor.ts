/**
 * A shop floor in vectors, run by sentences: it reads instructions as printed, moves a stick the way they say, cuts it, and knows nothing else of the plan.
 * Where a sentence claims something about the stick (which edge is at the fence, which arris meets the stop), it is checked against the stick as it lies.
 */
import type { Profile } from "miterwright/profile";
import { planeFromWords, stickAxes, type Normal, type Shop } from "../laws/saw.js";

/** A plane across the stick: normal . (along, x, y) = offset, the wood on the side of less. */
export interface EndPlane extends Normal {
  readonly offset: number;
}

/** What lies on the saw: a stick or a piece of it, with the planes of its two ends. */
export interface Workpiece {
  readonly profile: Profile;
  readonly start: EndPlane;
  readonly end: EndPlane;
}

/** What the instructions take for granted: the saw's fence, and the angle of the cradle. */
export interface Shop3 {
  readonly fence: "near" | "far";
  readonly slope: number;
}

/** How the stick lies, in the words of the instructions. */
interface Lying {
  readonly down: string;
  readonly cradled: boolean;
  readonly atFence: string;
}

const OPPOSITE: Readonly<Record<string, string>> = {
  back: "face",
  face: "back",
  "sight-edge": "outer-edge",
  "outer-edge": "sight-edge",
};

/** Where a line along the stick through a point of the section meets an end. */
export function reach(plane: EndPlane, point: { readonly x: number; readonly y: number }): number {
  return (plane.offset - plane.across * point.x - plane.through * point.y) / plane.along;
}

/** A raw stick with square ends. */
export function rawStick(profile: Profile, length: number): Workpiece {
  return {
    profile,
    start: { along: -1, across: 0, through: 0, offset: 0 },
    end: { along: 1, across: 0, through: 0, offset: length },
  };
}

/**
 * The angle of the stick's back to the table where it lies on the table with a surface that faces down: 0 on a back that is parallel to the face, the slope on one
 * that is milled level.
 */
function restingTilt({ profile: { outline } }: Workpiece, down: string): number {
  if (down !== "back") return 0;
  const low = Math.min(...outline.map(({ y }) => y));
  const sides = outline.flatMap((a, index) => {
    const b = outline[(index + 1) % outline.length]!;
    // Of the sides at the lowest point the one that looks most downward carries the stick; the wood is to its left.
    return Math.min(a.y, b.y) - low > 1e-9 ? [] : [[b.y - a.y, a.x - b.x] as const];
  });
  const steepness = ([x, y]: readonly [number, number]): number => y / Math.hypot(x, y);
  const [x, y] = sides.reduce((best, side) => (steepness(side) < steepness(best) ? side : best));
  return (Math.atan2(-x, -y) * 180) / Math.PI;
}

function demand(found: RegExpExecArray | null, line: string): string[] {
  if (found === null) throw new Error(`cannot follow: ${line}`);
  return found.slice(1);
}

/** A surface's code from the words for it. */
function surfaceCalled(words: string): string {
  return words.replace(" ", "-");
}

function sentence(lines: readonly string[], start: string): string | undefined {
  return lines.find((line) => line.startsWith(start));
}

/** The lay that a sentence asks for, from how the stick lay before. */
function move(lines: readonly string[], before: Lying | null): Lying {
  const fresh = sentence(lines, "Lay the stick");
  if (fresh !== undefined) {
    const [down, where, atFence] = demand(
      /^Lay the stick with its (.+) (on the table|in the cradle) and its (.+) at the fence\.$/.exec(fresh),
      fresh,
    );
    return { down: surfaceCalled(down!), cradled: where === "in the cradle", atFence: surfaceCalled(atFence!) };
  }
  if (before === null) throw new Error("the first instruction must say how the stick lies");
  const flip = sentence(lines, "Flip the stick end for end");
  if (flip !== undefined) {
    const [down, , atFence] = demand(
      /^Flip the stick end for end(?:, and its cradle with it)?, still with its (.+) (on the table|in the cradle): now its (.+) is at the fence\.$/.exec(
        flip,
      ),
      flip,
    );
    // Half a turn about the upright: what lies down stays, and the edge that was away from the fence comes to it.
    const flipped = { ...before, atFence: OPPOSITE[before.atFence]! };
    if (flipped.down !== surfaceCalled(down!) || flipped.atFence !== surfaceCalled(atFence!))
      throw new Error(`not so: ${flip}`);
    return flipped;
  }
  const slide = sentence(lines, "Slide the stick") ?? "";
  const [down, , atFence] = demand(
    /^Slide the stick past the blade, still with its (.+) (on the table|in the cradle) and its (.+) at the fence\.$/.exec(
      slide,
    ),
    lines.join(" "),
  );
  if (before.down !== surfaceCalled(down!) || before.atFence !== surfaceCalled(atFence!))
    throw new Error(`not so: ${slide}`);
  return before;
}

function angleAndHand(lines: readonly string[], what: "Miter" | "Bevel"): { degrees: number; toward: string } {
  const line = sentence(lines, what) ?? "";
  if (/^(Miter: square|Bevel: blade upright) \(scale at [\d.]+°\)\.$/.test(line)) return { degrees: 0, toward: "none" };
  const rest =
    what === "Miter"
      ? "the line of cut runs to the (left|right) as it goes away from you"
      : "the top of the blade leans to the (left|right)";
  const pattern = new RegExp(`^${what} ([\\d.]+)° \\(scale at [\\d.]+°(?:, best mark [\\d.]+°)?\\): ${rest}\\.$`);
  const [degrees, toward] = demand(pattern.exec(line), line);
  return { degrees: Number(degrees), toward: toward! };
}

/** The arrises by the names that instructions give them. */
function arrisCalled(
  profile: Profile,
  label: string,
  labelOf: (arris: string | null) => string,
): { x: number; y: number } | null {
  const found = Object.entries(profile.arrises).find(([arris]) => labelOf(arris) === label);
  return found?.[1] ?? null;
}

/** How the stick lies in the shop: at the cradle's angle, or at that of the surface that carries it. */
function carried(lying: Lying, piece: Workpiece, shop: Shop3): Lying & Shop3 {
  return lying.cradled
    ? { ...lying, ...shop }
    : { ...lying, ...shop, cradled: true, slope: restingTilt(piece, lying.down) };
}

/** Checks what a sentence says of the stop: the named arris must be the one that reaches farthest, at the height that is told. */
function checkStop(
  line: string,
  piece: Workpiece,
  lying: Lying,
  shop: Shop3,
  finished: EndPlane,
  labelOf: (arris: string | null) => string,
): void {
  const [label, height] = demand(
    /^Stop to the (?:left|right) of the blade: the finished end touches it with (?:the )?(.+?), (down on the table|[\d.]+ mm above the table|from [\d.]+ mm to [\d.]+ mm above the table)\.$/.exec(
      line,
    ),
    line,
  );
  const { profile } = piece;
  const { across, through } = stickAxes({
    ...carried(lying, piece, shop),
    kept: "left",
    miter: { degrees: 0, toward: "none" },
    bevel: { degrees: 0, toward: "none" },
  });
  const up = (point: { x: number; y: number }): number => point.x * across[2] + point.y * through[2];
  const table = Math.min(...profile.outline.map(up));
  const far = (point: { x: number; y: number }): number => reach(finished, point) * Math.sign(finished.along);
  const farthest = Math.max(...profile.outline.map(far));
  const arris = arrisCalled(profile, label!, labelOf);
  if (arris === null || Math.abs(far(arris) - farthest) > 1e-6)
    throw new Error(`another arris meets the stop first: ${line}`);
  const told = (height!.match(/[\d.]+/g) ?? ["0"]).map(Number);
  if (Math.abs(told[0]! - (up(arris) - table)) > 1e-5) throw new Error(`the arris is not so high: ${line}`);
}

/**
 * Follows one operation.
 *
 * @param lines - its sentences
 * @param piece - what is worked on
 * @param before - how it lay
 * @param shop - the saw's fence and the cradle's slope
 * @param labelOf - how instructions call an arris
 * @returns the piece that is kept, how it lies, and the plane that was cut
 */
export function follow(
  lines: readonly string[],
  piece: Workpiece,
  before: Lying | null,
  shop: Shop3,
  labelOf: (arris: string | null) => string,
): { piece: Workpiece; lying: Lying } {
  const lying = move(lines, before);
  const [kept] = demand(
    /^Keep the part to the (left|right) of the blade\.$/.exec(sentence(lines, "Keep") ?? ""),
    "Keep",
  );
  const words = {
    ...carried(lying, piece, shop),
    kept: kept as "left" | "right",
    miter: angleAndHand(lines, "Miter"),
    bevel: angleAndHand(lines, "Bevel"),
  };
  const plane = planeFromWords(words);
  const isEnd = plane.along > 0;
  const other = isEnd ? piece.start : piece.end;
  const stop = sentence(lines, "Stop to the");
  if (stop !== undefined) checkStop(stop, piece, lying, shop, other, labelOf);
  const offset = offsetFor(lines, piece, plane, other, labelOf);
  const cut: EndPlane = { ...plane, offset };
  return { piece: isEnd ? { ...piece, end: cut } : { ...piece, start: cut }, lying };
}

/** Where the blade's plane lies: at the length that is told, from the other end; else just far enough in to trim the whole end. */
function offsetFor(
  lines: readonly string[],
  piece: Workpiece,
  plane: Normal,
  other: EndPlane,
  labelOf: (arris: string | null) => string,
): number {
  const { profile } = piece;
  const at = (point: { x: number; y: number }, along: number): number =>
    plane.along * along + plane.across * point.x + plane.through * point.y;
  const told = sentence(lines, "Length of the finished piece") ?? sentence(lines, "Mark ");
  if (told !== undefined) {
    const [length, label] = demand(
      /^(?:Length of the finished piece: |Mark )([\d.]+) mm along the (.+?)(?:, from end to end \(.+\)| and part the piece off there)\.$/.exec(
        told,
      ),
      told,
    );
    const arris = arrisCalled(profile, label!, labelOf);
    if (arris === null) throw new Error(`no such arris: ${told}`);
    return at(arris, reach(other, arris) + Math.sign(plane.along) * Number(length));
  }
  const rough = sentence(lines, "Length of the blank");
  if (rough !== undefined) {
    const [length] = demand(/^Length of the blank: ([\d.]+) mm\.$/.exec(rough), rough);
    return plane.along * (reach(other, { x: 0, y: 0 }) + Math.sign(plane.along) * Number(length));
  }
  const raw = plane.along > 0 ? piece.end : piece.start;
  return Math.min(...profile.outline.map((point) => at(point, reach(raw, point))));
}

/** The shop's vectors, for tests that look at them. */
export type { Shop };
