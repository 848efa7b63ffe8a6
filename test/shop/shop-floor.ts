/**
 * A shop floor in vectors, run by sentences: it reads the steps of a report, moves a stick the way they say, cuts it, and knows nothing else of the plan.
 * Where a sentence claims something about the stick (which edge is at the fence, which arris meets the stop), it is checked against the stick as it lies. Where
 * a step tells a setting twice, in a sentence and beside its number, both must tell the same.
 */
import type { Profile } from "miterwright/profile";
import type { Fact, Step } from "miterwright/report";
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

/** What the instructions take for granted. */
export interface Floor {
  /** Where the saw's fence is. */
  readonly fence: "near" | "far";
  /** The angle of the cradle. */
  readonly slope: number;
  /** What instructions call an edge. */
  readonly labelOf: (arris: string) => string;
  /** What either scale must show for the two ends, and what it counts, as the table of the settings says. */
  readonly scales: Readonly<Record<"Miter" | "Bevel", { readonly shows: string; readonly counts: string }>>;
}

/** What of a step is followed. */
export type Instructions = Pick<Step, "kind" | "lines" | "settings">;

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

/** From how the scale reads to the angle that it sets, by what the scale counts. */
function angleShown(reading: number, counts: string): number {
  return counts.startsWith("degrees between ") ? 90 - reading : reading;
}

/** The value of a setting by its name. */
function settingOf(settings: readonly Fact[], name: string): string {
  const [fact, second] = settings.filter((setting) => setting.name === name);
  if (fact === undefined || second !== undefined) throw new Error(`not one setting ${name}`);
  return fact.value;
}

/** The angle of a scale and to which side; its sentence and what stands beside the step's number must tell the same. */
function angleAndHand(
  { kind, lines, settings }: Instructions,
  what: "Miter" | "Bevel",
  { scales }: Floor,
): { degrees: number; toward: string } {
  const line = sentence(lines, what) ?? "";
  const { shows, counts } = scales[what];
  const set = settingOf(settings, `${what.toLowerCase()} scale`);
  // A blank is cut off square, whatever the ends need.
  if (kind !== "crosscut" && set.split(" ")[0] !== shows.split(" ")[0]) throw new Error(`not so: ${shows}`);
  const upright = /^(?:Miter: square|Bevel: blade upright) \(scale at ([\d.]+°)\)\.$/.exec(line);
  if (upright !== null) {
    if (set !== upright[1] || angleShown(Number.parseFloat(set), counts) !== 0) throw new Error(`not so: ${set}`);
    return { degrees: 0, toward: "none" };
  }
  const rest =
    what === "Miter"
      ? "the line of cut runs to the (left|right) as it goes away from you"
      : "the top of the blade leans to the (left|right)";
  const pattern = new RegExp(`^${what} ([\\d.]+)° \\(scale at ([\\d.]+)°(?:, best mark [\\d.]+°)?\\): ${rest}\\.$`);
  const [degrees, reading, toward] = demand(pattern.exec(line), line);
  if (set !== `${reading!}° to the ${toward!}`) throw new Error(`not so: ${set}`);
  if (Math.abs(angleShown(Number(reading), counts) - Number(degrees)) > 1e-8) throw new Error(`not so: ${line}`);
  return { degrees: Number(degrees), toward: toward! };
}

/** The arrises by the names that instructions give them. */
function arrisCalled(
  profile: Profile,
  label: string,
  labelOf: Floor["labelOf"],
): { readonly x: number; readonly y: number } | null {
  const found = Object.entries(profile.arrises).find(([arris]) => labelOf(arris) === label);
  return found?.[1] ?? null;
}

/** How the stick lies in the shop: at the cradle's angle, or at that of the surface that carries it. */
function carried(lying: Lying, piece: Workpiece, { fence, slope }: Floor): Lying & Pick<Floor, "fence" | "slope"> {
  return lying.cradled
    ? { ...lying, fence, slope }
    : { ...lying, fence, cradled: true, slope: restingTilt(piece, lying.down) };
}

/** What lies at a stop: its finished end, on the side of the blade that is kept. */
interface Stopped {
  readonly piece: Workpiece;
  readonly lying: Lying;
  readonly finished: EndPlane;
  readonly kept: string;
}

/** Checks what a sentence says of the stop: the named arris must be the one that reaches farthest, at the height that is told. */
function checkStop(line: string, { piece, lying, finished, kept }: Stopped, floor: Floor): void {
  const [side, label, height] = demand(
    /^Stop to the (left|right) of the blade: the finished end touches it with (?:the )?(.+?), (down on the table|[\d.]+ mm above the table|from [\d.]+ mm to [\d.]+ mm above the table)\.$/.exec(
      line,
    ),
    line,
  );
  // The finished end is on the part that is kept.
  if (side !== kept) throw new Error(`not so: ${line}`);
  const { profile } = piece;
  const { across, through } = stickAxes({
    ...carried(lying, piece, floor),
    kept: "left",
    miter: { degrees: 0, toward: "none" },
    bevel: { degrees: 0, toward: "none" },
  });
  const up = (point: { x: number; y: number }): number => point.x * across[2] + point.y * through[2];
  const table = Math.min(...profile.outline.map(up));
  const far = (point: { x: number; y: number }): number => reach(finished, point) * Math.sign(finished.along);
  const farthest = Math.max(...profile.outline.map(far));
  const arris = arrisCalled(profile, label!, floor.labelOf);
  if (arris === null || Math.abs(far(arris) - farthest) > 1e-6)
    throw new Error(`another arris meets the stop first: ${line}`);
  const told = (height!.match(/[\d.]+/g) ?? ["0"]).map(Number);
  if (Math.abs(told[0]! - (up(arris) - table)) > 1e-5) throw new Error(`the arris is not so high: ${line}`);
}

/** Follows one step: what is kept of the piece, and how it then lies. `before` is how it lay. */
export function follow(
  step: Instructions,
  piece: Workpiece,
  before: Lying | null,
  floor: Floor,
): { piece: Workpiece; lying: Lying } {
  const { lines } = step;
  const lying = move(lines, before);
  const [kept] = demand(
    /^Keep the part to the (left|right) of the blade\.$/.exec(sentence(lines, "Keep") ?? ""),
    "Keep",
  );
  const plane = planeFromWords({
    ...carried(lying, piece, floor),
    kept: kept as "left" | "right",
    miter: angleAndHand(step, "Miter", floor),
    bevel: angleAndHand(step, "Bevel", floor),
  });
  const isEnd = plane.along > 0;
  const other = isEnd ? piece.start : piece.end;
  const stop = sentence(lines, "Stop to the");
  if (stop !== undefined) checkStop(stop, { piece, lying, finished: other, kept: kept! }, floor);
  const cut: EndPlane = { ...plane, offset: offsetFor(step, piece, plane, floor) };
  return { piece: isEnd ? { ...piece, end: cut } : { ...piece, start: cut }, lying };
}

/** Where the blade's plane lies: at the length that is told, from the other end; else just far enough in to trim the whole end. */
function offsetFor({ lines, settings }: Instructions, piece: Workpiece, plane: Normal, { labelOf }: Floor): number {
  const { profile } = piece;
  const other = plane.along > 0 ? piece.start : piece.end;
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
    if (settingOf(settings, "length") !== `${length!} mm`) throw new Error(`not so: ${told}`);
    return at(arris, reach(other, arris) + Math.sign(plane.along) * Number(length));
  }
  const rough = sentence(lines, "Length of the blank");
  if (rough !== undefined) {
    const [length] = demand(/^Length of the blank: ([\d.]+) mm\.$/.exec(rough), rough);
    if (settingOf(settings, "length") !== `${length!} mm`) throw new Error(`not so: ${rough}`);
    return plane.along * (reach(other, { x: 0, y: 0 }) + Math.sign(plane.along) * Number(length));
  }
  const raw = plane.along > 0 ? piece.end : piece.start;
  return Math.min(...profile.outline.map((point) => at(point, reach(raw, point))));
}

/** The shop's vectors, for tests that look at them. */
export type { Shop };
