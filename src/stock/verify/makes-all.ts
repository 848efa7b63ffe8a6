import type { Inspection } from "./inspection.js";

/** One piece that needs a place. */
interface Wanted {
  readonly length: bigint;
  readonly key: string | undefined;
  readonly saving: bigint;
}

/** A clear stretch of one stick with what is still free of it. */
interface Space {
  free: bigint;
  /** How many pieces of each share key lie in it: all but the first save. */
  readonly keys: Map<string, number>;
}

/** More pieces than this are not tried one by one. */
const MOST_PIECES = 500n;
/** Nor are they where there are more stretches than this to try them in. */
const MOST_SPACES = 2000;
/** Steps after which a complete search is given up: some hundredths of a second. */
const MOST_STEPS = 50_000;

/** What a piece takes of a stretch, its kerf included. */
function takenBy({ length, key, saving }: Wanted, { keys }: Space, kerf: bigint): bigint {
  return length + kerf - (key !== undefined && (keys.get(key) ?? 0) > 0 ? saving : 0n);
}

function put(piece: Wanted, space: Space, kerf: bigint): bigint {
  const taken = takenBy(piece, space, kerf);
  space.free -= taken;
  if (piece.key !== undefined) space.keys.set(piece.key, (space.keys.get(piece.key) ?? 0) + 1);
  return taken;
}

function takeBack(piece: Wanted, space: Space, taken: bigint): void {
  space.free += taken;
  if (piece.key !== undefined) space.keys.set(piece.key, space.keys.get(piece.key)! - 1);
}

/** Puts every piece, the longest first, into the first space that has room. */
function fillInOrder(pieces: readonly Wanted[], spaces: readonly Space[], kerf: bigint): boolean {
  return pieces.every((piece) => {
    const space = spaces.find((some) => takenBy(piece, some, kerf) <= some.free);
    if (space !== undefined) put(piece, space, kerf);
    return space !== undefined;
  });
}

/** Tries all ways; gives up after some steps. */
function fillAnyhow(pieces: readonly Wanted[], spaces: readonly Space[], kerf: bigint): boolean {
  let steps = 0;
  const place = (k: number): boolean => {
    const piece = pieces[k];
    if (piece === undefined) return true;
    const tried = new Set<string>();
    for (const space of spaces) {
      if (++steps > MOST_STEPS) return false;
      const taken = takenBy(piece, space, kerf);
      const name = `${space.free} ${[...space.keys].join()}`;
      if (taken > space.free || tried.has(name)) continue;
      tried.add(name);
      put(piece, space, kerf);
      if (place(k + 1)) return true;
      takeBack(piece, space, taken);
    }
    return false;
  };
  return place(0);
}

/** Whether a simple search finds room for all pieces of a job whose sticks are said to run out; false says nothing. */
export function makesAll(inspection: Inspection): boolean {
  const { job, slack } = inspection;
  const { kerf } = job;
  const counted = [...job.pieces.values()];
  const total = counted.reduce((sum, { count }) => sum + count, 0n);
  if (total > MOST_PIECES) return false;
  // What the grid rounds away is not counted as room: the claim is one about the grid.
  const pieces = counted
    .flatMap(({ count, length, parts, key, saving }): Wanted[] => {
      const rounded = length + slack * BigInt(parts.length);
      return Array.from({ length: Number(count) }, () => ({ length: rounded, key, saving }));
    })
    .sort((a, b) => (a.length > b.length ? -1 : a.length < b.length ? 1 : 0));
  const sticks = [...job.sticks.values()].map(({ clear, limit, noise }) => ({
    rooms: clear.map(({ start, end }) => end - start + kerf - slack + noise),
    number: Number(limit === undefined || limit > total ? total : limit),
  }));
  if (sticks.reduce((sum, { rooms, number }) => sum + rooms.length * number, 0) > MOST_SPACES) return false;
  const rising = sticks
    .flatMap(({ rooms, number }) => Array.from({ length: number }, () => rooms))
    .flat()
    .sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
  const falling = [...rising].reverse();
  const open = (rooms: readonly bigint[]): Space[] => rooms.map((free) => ({ free, keys: new Map() }));
  return (
    fillInOrder(pieces, open(rising), kerf) ||
    fillInOrder(pieces, open(falling), kerf) ||
    fillAnyhow(pieces, open(rising), kerf)
  );
}
