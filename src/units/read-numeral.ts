import {
  advance,
  type Cursor,
  fail,
  isNext,
  NO_NUMBER,
  peek,
  skip,
  skipSpace,
  takeDigits,
  type Why,
} from "./cursor.js";

/** An integer, 0 or more: a `bigint` where a double might not hold it. */
export type Integer = number | bigint;

/** A number as it is written: (`whole` + `top` / `bottom`) times a power of ten. */
export interface Numeral {
  /** The whole number, 5 in `5 7/16` and in `5.25`; 0 if none is written. */
  readonly whole: Integer;
  /** Numerator of the fraction beside it, 7 in `5 7/16` and 25 in `5.25`; 0 if none is written. */
  readonly top: Integer;
  /** Denominator of the fraction, 16 in `5 7/16` and 100 in `5.25`; 1 if none is written. */
  readonly bottom: Integer;
  /** The power of ten, 3 in `2e3`. */
  readonly exponent: number;
}

/** Why a raised numerator is not enough. */
const NO_SLASH: Why = ['a fraction\'s "/" is missing', "no-slash"];
/** Why a hyphen behind a number is refused, unless it joins a fraction without a space. */
const HYPHEN: Why = ["the hyphen could be a minus sign; a fraction is joined as in 5-7/16", "unclear-hyphen"];
/** Why a second number is refused. */
const TWO_NUMBERS: Why = ['two numbers stand side by side; a unit between them or a "/" is missing', "two-numbers"];

/** The integer that digits stand for, 0 without any. */
function integerOf(digits: string): Integer {
  if (digits.length > 15) return BigInt(digits);
  // Several times as fast as Number(digits), on which most of the time would be spent.
  let value = 0;
  for (let k = 0; k < digits.length; k++) value = 10 * value + digits.charCodeAt(k) - 48;
  return value;
}

/** A power of ten. Exact; 1 when the exponent is negative. */
export function powerOfTen(exponent: number): Integer {
  if (exponent > 15) return 10n ** BigInt(exponent);
  let power = 1;
  for (let k = 0; k < exponent; k++) power *= 10;
  return power;
}

/** Whether a fraction begins here, or can. */
function isFractionNext(cursor: Cursor): boolean {
  const { kind } = cursor;
  return kind === "digit" || kind === "vulgar" || kind === "raised";
}

/** Takes a denominator. */
function takeDenominator(cursor: Cursor): Integer {
  skipSpace(cursor);
  const start = cursor.at;
  const digits = takeDigits(cursor, isNext(cursor, "lowered") ? "lowered" : "digit");
  if (digits === "") fail(cursor, ["a denominator is missing", "no-denominator"]);
  const bottom = integerOf(digits);
  // A long text of zeros is 0n.
  if (bottom == 0) fail(cursor, ["the denominator is zero", "zero-denominator"], start, "range");
  return bottom;
}

/** Takes a fraction beside a whole number, if any: `7/16`, `⁷⁄₁₆`, `⅞` or `⅟16`. Where its "/" is missing there is none. */
function takeFraction(cursor: Cursor, whole: Integer): Numeral | undefined {
  if (isNext(cursor, "vulgar")) {
    // The compatibility form of ⅞ is 7⁄8, that of ⅟ is 1⁄.
    const [top, bottom] = cursor.text.charAt(cursor.at).normalize("NFKC").split("⁄") as [string, string];
    advance(cursor);
    return { whole, top: Number(top), bottom: Number(bottom) || takeDenominator(cursor), exponent: 0 };
  }
  const top = integerOf(takeDigits(cursor, isNext(cursor, "raised") ? "raised" : "digit"));
  skipSpace(cursor);
  if (!skip(cursor, "slash")) return undefined;
  return { whole, top, bottom: takeDenominator(cursor), exponent: 0 };
}

/** Refuses a second number that is no fraction, by what it could be. */
function refuseSecondNumber(cursor: Cursor, first: string, second: string, end: number): never {
  if (/^[1-9]\d{0,2}$/.test(first) && /^\d{3}$/.test(second)) {
    const thousands = first + second;
    return fail(
      cursor,
      [`the space could part thousands; write ${thousands}`, { code: "unclear-space", thousands }],
      end,
    );
  }
  const isRaised = !/^\d/.test(second);
  return fail(cursor, isRaised ? NO_SLASH : TWO_NUMBERS);
}

/** Takes the decimals after a point or comma; refuses what could be thousands. */
function takeDecimals(cursor: Cursor, whole: string): string {
  const point = cursor.at;
  const isComma = skip(cursor, "comma") || !skip(cursor, "point");
  const decimals = takeDigits(cursor);
  if (decimals === "") return fail(cursor, ["digits are missing after the point or comma", "no-decimals"]);
  if (isNext(cursor, "point") || isNext(cursor, "comma")) {
    return fail(cursor, ["there is a second point or comma; thousands are written without separators", "second-point"]);
  }
  // With a zero in front, or other than three digits after it, the comma cannot part thousands.
  if (isComma && decimals.length === 3 && /^[1-9]\d{0,2}$/.test(whole)) {
    const fault = { code: "unclear-comma", decimals: `${whole}.${decimals}`, thousands: whole + decimals } as const;
    const choice = `${fault.decimals} or ${fault.thousands}`;
    return fail(cursor, [`the comma could mark decimals or thousands; write ${choice}`, fault], point);
  }
  return decimals;
}

/** Takes the exponent, if one is written. */
function takeExponent(cursor: Cursor): number {
  if (!isNext(cursor, "letter") || cursor.text.charAt(cursor.at).toLowerCase() !== "e") return 0;
  const isSigned = peek(cursor, 1) === "hyphen" || peek(cursor, 1) === "plus";
  if (peek(cursor, isSigned ? 2 : 1) !== "digit") return 0;
  advance(cursor);
  const start = cursor.at;
  if (isSigned) advance(cursor);
  if (takeDigits(cursor).length > 3) fail(cursor, ["an exponent is beyond 999", "large-exponent"], start, "range");
  return Number(cursor.text.slice(start, cursor.at));
}

/**
 * Takes one number: `90.5`, `1,5`, `.5`, `2e3`, `5`, `7/16`, `5 7/16`, `5-7/16`, `5⅞`, `5⁷⁄₁₆`. Spaces after it may
 * be passed over too. Only the first of a quantity can have an exponent.
 */
export function readNumeral(cursor: Cursor, isFirst: boolean): Numeral {
  const digits = takeDigits(cursor);
  const next = cursor.kind;
  const decimals = next === "point" || next === "comma" ? takeDecimals(cursor, digits) : "";
  if (digits === "" && decimals === "") {
    if (!isFractionNext(cursor)) fail(cursor, NO_NUMBER);
    return takeFraction(cursor, 0) ?? fail(cursor, NO_SLASH);
  }
  const whole = integerOf(digits);
  const end = cursor.at;
  const exponent = isFirst ? takeExponent(cursor) : 0;
  const plain: Numeral = { whole, top: integerOf(decimals), bottom: powerOfTen(decimals.length), exponent };
  if (decimals !== "" || cursor.at > end) return plain;

  const isParted = skipSpace(cursor);
  if (skip(cursor, "slash")) return { whole: 0, top: whole, bottom: takeDenominator(cursor), exponent };
  const joint = cursor.at;
  const isJoined = skip(cursor, "hyphen");
  if (!isFractionNext(cursor)) return isJoined ? fail(cursor, HYPHEN, joint) : plain;
  const start = cursor.at;
  const mixed = isJoined && isParted ? undefined : takeFraction(cursor, whole);
  if (mixed === undefined) {
    return isJoined
      ? fail(cursor, HYPHEN, joint)
      : refuseSecondNumber(cursor, digits, cursor.text.slice(start, cursor.at).trim(), end);
  }
  if (mixed.top >= mixed.bottom)
    fail(cursor, ["the fraction beside a whole number is not below 1", "improper-fraction"], start, "range");
  return mixed;
}
