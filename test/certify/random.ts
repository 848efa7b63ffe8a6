/** A source of reproducible random values. */
export interface Random {
  /** A number from `low` up to, not including, `high`, with 53 random bits. */
  readonly between: (low: number, high: number) => number;
  /** A number whose logarithm is even between two powers of ten. */
  readonly power: (low: number, high: number) => number;
  /** A whole number, both bounds included. */
  readonly whole: (low: number, high: number) => number;
  /** One of a list. */
  readonly pick: <T>(list: readonly T[]) => T;
  /** True so often. */
  readonly chance: (share: number) => boolean;
}

/** An unsigned 32-bit step: a Weyl sequence through the finalizer of MurmurHash3. */
function bits(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let x = state;
    x = Math.imul(x ^ (x >>> 16), 0x85ebca6b);
    x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
    return (x ^ (x >>> 16)) >>> 0;
  };
}

/**
 * Makes a source.
 *
 * @param seed - any integer; the same one gives the same values
 * @returns the source
 */
export function randomFrom(seed: number): Random {
  const next = bits(seed);
  const unit = (): number => ((next() >>> 5) * 2 ** 26 + (next() >>> 6)) / 2 ** 53;
  const between = (low: number, high: number): number => low + (high - low) * unit();
  const whole = (low: number, high: number): number => low + Math.floor((high - low + 1) * unit());
  return {
    between,
    power: (low, high) => 10 ** between(low, high),
    whole,
    pick: (list) => list[whole(0, list.length - 1)]!,
    chance: (share) => unit() < share,
  };
}

/** A number of sides from 3 to 1e6, every order of magnitude about as often. */
export function someSides({ chance, whole, power }: Random): number {
  return chance(0.4) ? whole(3, 24) : Math.min(1_000_000, Math.max(3, Math.round(power(0.5, 6))));
}

/** A length from 1e-100 to 1e100, half of them of a workshop's size. */
export function someLength({ chance, power }: Random): number {
  return chance(0.5) ? power(-2, 5) : power(-100, 100);
}

/** An angle to either side of zero: anywhere up to a bound, near 0, near the bound, or a round one. */
function someAngle({ chance, between, power, pick, whole }: Random, bound: number, round: readonly number[]): number {
  const magnitude = [() => between(0, bound), () => power(-18, 0), () => bound - power(-16, 0), () => pick(round)][
    whole(0, 3)
  ]!();
  return chance(0.5) ? magnitude : -magnitude;
}

/** A slope from -90 to 90. */
export function someSlope(random: Random): number {
  return someAngle(random, 90, [0, 15, 22.5, 30, 45, 52, 60, 75, 90]);
}

/** A turn between -180 and 180, bounds excluded. */
export function someTurn(random: Random): number {
  const turn = someAngle(random, 180, [0, 30, 36, 45, 60, 72, 90, 108, 120, 135, 150]);
  return Math.abs(turn) < 180 ? turn : someTurn(random);
}
