import { checkArray, checkInteger, checkNumber, checkObject, checkText, refuse } from "../core/check.js";
import { isolate } from "../core/isolate.js";
import { checkJob } from "../stock/internal.js";
import type { StockFit, StockJob, Stretch } from "../stock/index.js";
import type { Formats } from "../units/index.js";
import type { StockWords } from "../words/index.js";
import { pieceLabel } from "../words/internal.js";

/** Equal pieces of one layout. */
export interface LayoutPieces {
  /** Id of the piece. */
  readonly piece: string;
  /** Length of one. */
  readonly length: number;
  /** How many come out of one stick. */
  readonly count: number;
}

/** Equal pieces that follow one another. */
export interface LayoutRow extends LayoutPieces, Stretch {
  /** For a sequence: which of its parts. */
  readonly part: number;
  /** From the start of one to the start of the next; 0 where there is one only. */
  readonly pitch: number;
}

/** A layout with the lengths that the job knows. */
export interface LayoutSummary {
  /** Id of the stick. */
  readonly stick: string;
  /** How many sticks are cut so. */
  readonly times: number;
  /** Length of the stick. */
  readonly length: number;
  /** What lies in it, equal neighbors together. */
  readonly rows: readonly LayoutRow[];
  /** How many pieces come out of it. */
  readonly pieceCount: number;
  /** Its pieces, equal ones together, in the order of their first. */
  readonly pieces: readonly LayoutPieces[];
  /** Length of the longest offcut. */
  readonly offcut: number;
  /** The offcuts worth keeping. */
  readonly kept: readonly Stretch[];
}

/** Most pieces or sticks of one kind in a plan. */
const MOST: number = 1e9;
/** How far a position may lie beyond its stick for the rounding of its decimals. */
const ROUNDING: number = 2 ** -40;
/** More kinds of pieces in one stick than this are only counted. */
const MOST_KINDS: number = 24;
/** A name longer than this is cut off: a picture of it would hide the sticks. */
const LONGEST_NAME: number = 500;

type Pieces = ReadonlyMap<string, readonly number[]>;

/** A stretch of a stick, and where its last copy ends. */
function checkStretch(value: unknown, path: string, length: number): Stretch {
  const stretch = checkObject(value, path);
  const reach = length * (1 + ROUNDING);
  const start = checkNumber(stretch["start"], `${path}.start`, 0, reach);
  return { start, end: checkNumber(stretch["end"], `${path}.end`, start, reach) };
}

function checkRow(value: unknown, path: string, pieces: Pieces, length: number): LayoutRow {
  const placed = checkObject(value, path);
  const piece = checkText(placed["piece"], `${path}.piece`);
  const parts = pieces.get(piece);
  if (parts === undefined) return refuse("unknown", `${path}.piece`, piece, "the id of a piece of the job");
  const given = placed["part"] ?? 0;
  const part = checkInteger(given, `${path}.part`, 0, parts.length - 1);
  const { start, end } = checkStretch(placed, path, length);
  const count = checkInteger(placed["count"], `${path}.count`, 1, MOST);
  const most = count === 1 ? 0 : (length * (1 + ROUNDING) - end) / (count - 1);
  const pitch = count === 1 ? 0 : checkNumber(placed["pitch"], `${path}.pitch`, 0, most);
  return { piece, part, length: parts[part]!, count, start, end, pitch };
}

function summarize(value: unknown, path: string, pieces: Pieces, lengths: ReadonlyMap<string, number>): LayoutSummary {
  const layout = checkObject(value, path);
  const stick = checkText(layout["stick"], `${path}.stick`);
  const length = lengths.get(stick);
  if (length === undefined) return refuse("unknown", `${path}.stick`, stick, "the id of a stick of the job");
  const rows = checkArray(layout["pieces"], `${path}.pieces`, "an array of placed pieces").map((row, index) =>
    checkRow(row, `${path}.pieces[${index}]`, pieces, length),
  );
  const kinds = new Map<string, { piece: string; length: number; count: number }>();
  for (const { piece, length: size, count } of rows) {
    const name = `${size} ${piece}`;
    const known = kinds.get(name);
    if (known === undefined) kinds.set(name, { piece, length: size, count });
    else known.count += count;
  }
  return {
    stick,
    times: checkInteger(layout["times"], `${path}.times`, 1, MOST),
    length,
    rows,
    pieceCount: rows.reduce((sum, { count }) => sum + count, 0),
    pieces: [...kinds.values()],
    offcut: checkNumber(layout["offcut"], `${path}.offcut`, 0, length * (1 + ROUNDING)),
    kept: checkArray(layout["kept"], `${path}.kept`).map((rest, k) => checkStretch(rest, `${path}.kept[${k}]`, length)),
  };
}

/** Brings a fit and its job together. */
export function summarizeLayouts(job: StockJob, fit: Pick<StockFit, "layouts">): LayoutSummary[] {
  const { ids, pieces, sticks } = checkJob(job);
  const parts = new Map(ids.map((id, k) => [id, pieces[k]!.parts]));
  const lengths = new Map(sticks.map(({ id, length }) => [id, length]));
  const layouts: readonly unknown[] = checkArray(
    checkObject(fit, "fit")["layouts"],
    "fit.layouts",
    "an array of layouts",
  );
  return layouts.map((layout, index) => summarize(layout, `fit.layouts[${index}]`, parts, lengths));
}

/** A name, cut off where it is too long. */
function shortName(name: string): string {
  return name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME)}…` : name;
}

/** What comes out of one stick, in words: the pieces by their kinds, and how many there are of kinds beyond some. */
export function piecesText({ pieces }: LayoutSummary, length: Formats["length"], words: StockWords): string {
  const told = pieces
    .slice(0, MOST_KINDS)
    .map(({ piece, length: size, count }) => `${count}\u00a0× ${pieceLabel(shortName(piece), words)} ${length(size)}`);
  const others = pieces.slice(MOST_KINDS).reduce((sum, { count }) => sum + count, 0);
  return [...told, ...(others > 0 ? [words.otherPieces({ count: others })] : [])].join(", ");
}

/** A layout in words: what is cut from the stick, how often, and what is left. */
export function layoutText(summary: LayoutSummary, length: Formats["length"], words: StockWords): string {
  const { stick, times, length: whole, offcut, kept } = summary;
  return words.layout({
    times,
    stick: isolate(shortName(stick)),
    length: length(whole),
    pieces: piecesText(summary, length, words),
    kept: kept.map(({ start, end }) => length(end - start)),
    offcut: offcut > 0 ? length(offcut) : null,
  });
}
