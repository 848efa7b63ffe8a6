import { checkArray, checkInteger, checkNumber, checkObject, checkText } from "../../core/check.js";
import { doubleOf, exactOf, largerOf } from "./exact.js";
import type { Inspection } from "./inspection.js";
import type { StatedPiece, StatedStick } from "./stated-job.js";

/** A record of a layout, positions exact. */
interface Placed {
  readonly piece: StatedPiece;
  readonly part: number;
  readonly count: bigint;
  readonly pitch: bigint;
  readonly start: bigint;
  readonly end: bigint;
  readonly path: string;
}

/** Equal pieces or whole sequences in a row: their records, one for each part. */
interface Row {
  readonly records: readonly Placed[];
  /** Where the first one starts. */
  readonly start: bigint;
  /** Where the first one ends. */
  readonly end: bigint;
  /** Where the last one ends. */
  readonly last: bigint;
}

/** A stretch of a stick that nothing lies in. */
export interface Rest {
  /** Where it starts. */
  readonly start: bigint;
  /** Where it ends. */
  readonly end: bigint;
}

/** What a layout makes and leaves. */
export interface CheckedPlaces {
  /** How many of each piece come out of one stick; of a sequence only the whole ones. */
  readonly placed: ReadonlyMap<string, bigint>;
  /** What is left, from the start of the stick to its end. */
  readonly rests: readonly Rest[];
}

const LARGEST = Number.MAX_VALUE;

function readRecord(inspection: Inspection, noise: bigint, value: unknown, path: string): Placed | undefined {
  const { job, report } = inspection;
  const placed = checkObject(value, path);
  const id = checkText(placed["piece"], `${path}.piece`);
  const start = exactOf(checkNumber(placed["start"], `${path}.start`, -LARGEST, LARGEST));
  const end = exactOf(checkNumber(placed["end"], `${path}.end`, -LARGEST, LARGEST));
  const count = checkInteger(placed["count"], `${path}.count`, 1, 1e9);
  const pitch = count === 1 ? 0 : checkNumber(placed["pitch"], `${path}.pitch`, -LARGEST, LARGEST);
  const piece = job.pieces.get(id);
  if (piece === undefined) {
    report("unknown-piece", path, `The job has no piece ${JSON.stringify(id)}`);
    return undefined;
  }
  if (!piece.sequence && placed["part"] !== undefined) {
    report("sequence", path, `Piece ${JSON.stringify(id)} is no sequence and has no parts`);
  }
  const part = piece.sequence ? checkInteger(placed["part"], `${path}.part`, 0, piece.parts.length - 1) : 0;
  const difference = end - start - piece.parts[part]!;
  if (difference > noise || difference < -noise) {
    report("length", path, `Expected ${doubleOf(piece.parts[part]!)}, got ${doubleOf(end - start)}`);
  }
  return { piece, part, count: BigInt(count), pitch: exactOf(pitch), start, end, path };
}

/** Whether a record is the part of a sequence that comes next after another, of the same sequences. */
function follows(record: Placed | undefined, before: Placed): boolean {
  if (record?.piece !== before.piece || record.part !== before.part + 1) return false;
  return record.count === before.count && record.pitch === before.pitch;
}

/** Puts the records of sequences together. What is no whole sequence is told, and left out. */
function rowsOf({ report }: Inspection, records: readonly Placed[]): Row[] {
  const rows: Row[] = [];
  for (let k = 0; k < records.length;) {
    const first = records[k]!;
    const own = [first];
    while (follows(records[k + own.length], own.at(-1)!)) own.push(records[k + own.length]!);
    k += own.length;
    if (own.length === first.piece.parts.length) {
      const { end } = own.at(-1)!;
      rows.push({ records: own, start: first.start, end, last: end + (first.count - 1n) * first.pitch });
      continue;
    }
    const id = JSON.stringify(first.piece.id);
    report(
      "sequence",
      first.path,
      `Sequence ${id} is not whole here: its parts have to follow one another from the first to the last`,
    );
  }
  return rows;
}

/** The pieces of one row against each other: parts one kerf apart, and from each to the next no less than it takes. */
function checkRow(inspection: Inspection, noise: bigint, { records, start, end }: Row): void {
  const { job, slack, report } = inspection;
  const { kerf } = job;
  records.slice(1).forEach((record, k) => {
    const gap = record.start - records[k]!.end - kerf;
    if (gap < -noise) report("spacing", record.path, `The part can't start before ${doubleOf(records[k]!.end + kerf)}`);
    if (gap > slack + noise) report("sequence", record.path, "The part lies apart from the part before it");
  });
  const { piece, count, pitch, path } = records[0]!;
  if (count === 1n) return;
  const least = piece.length + kerf - piece.saving;
  // Each shortfall moves all pieces that follow. The parts of a sequence may lie a little apart.
  if ((count - 1n) * (least - pitch) > noise || end - start + kerf - piece.saving - pitch > noise)
    report("spacing", path, `Expected a pitch of at least ${doubleOf(least)}, got ${doubleOf(pitch)}`);
}

/**
 * Checks where the pieces of one layout lie: their lengths, kerfs, shared cuts and sequences, and what trims and defects leave to them.
 */
export function checkPlaces(inspection: Inspection, stick: StatedStick, pieces: unknown, path: string): CheckedPlaces {
  const { job, report } = inspection;
  const { kerf } = job;
  const { clear, noise } = stick;
  const given = checkArray(pieces, path);
  if (given.length === 0) report("offcut", path, "A stick is used for nothing");
  const rows = rowsOf(
    inspection,
    given.flatMap((record, k) => readRecord(inspection, noise, record, `${path}[${k}]`) ?? []),
  );
  const placed = new Map<string, bigint>();
  // Where the next piece can start in each stretch.
  const nexts = clear.map((stretch) => stretch.start);
  let before: Row | undefined;
  let roomBefore = -1;
  for (const row of rows) {
    const { piece, count, path: at } = row.records[0]!;
    checkRow(inspection, noise, row);
    placed.set(piece.id, (placed.get(piece.id) ?? 0n) + count);
    const room = clear.findIndex((stretch) => row.start >= stretch.start - noise && row.last <= stretch.end + noise);
    if (room < 0) report("clear", at, "The piece reaches into a trim or defect, or beyond the stick");
    else nexts[room] = largerOf(nexts[room]!, row.last + kerf);
    if (before !== undefined) {
      const shares = piece.key !== undefined && piece.key === before.records[0]!.piece.key && room === roomBefore;
      // A saving is half a piece at most: what is sound with its neighbor is so with the one before that.
      const least = before.last + kerf - (shares ? piece.saving : 0n);
      if (row.start < least - noise) report("spacing", at, `The piece can't start before ${doubleOf(least)}`);
    }
    [before, roomBefore] = [row, room];
  }
  const rests = clear.map(({ reach }, room) => ({ start: nexts[room]!, end: reach }));
  return { placed, rests: rests.filter(({ start, end }) => end > start) };
}
