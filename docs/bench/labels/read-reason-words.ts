import type { ParseFault } from "miterwright/errors";

/** Why a text can't be read as a length or an angle: a clause for every fault. */
export type ReadReasonWords = {
  readonly [C in ParseFault["code"]]: (fault: Extract<ParseFault, { readonly code: C }>) => string;
};

/** In English. */
export const englishReadReasons: ReadReasonWords = {
  "no-number": () => "a number is missing",
  "no-decimals": () => "digits are missing after the point or comma",
  "no-denominator": () => "a denominator is missing",
  "zero-denominator": () => "the denominator is zero",
  "no-slash": () => 'a fraction\'s "/" is missing',
  "broken-fraction": () => "a fraction has two whole numbers, as in 7/16",
  "improper-fraction": () => "the fraction beside a whole number is not below 1",
  "two-numbers": () => 'two numbers stand side by side; a unit between them or a "/" is missing',
  "second-point": () => "there is a second point or comma; thousands are written without separators",
  "large-exponent": () => "the number is too large or too small",
  "unclear-hyphen": () => "the hyphen could be a minus sign; a fraction is joined as in 5-7/16",
  "late-minus": () => "a minus sign can only stand in front",
  "early-fraction": () => "only the last part can have a fraction or decimals",
  "unit-order": () => "units must go down, as feet and then inches do",
  "no-unit": () => "the last number needs a unit",
  "no-unit-between": () => "another number follows; a unit between them is missing",
  "unknown-unit": () => "what follows the number is no unit that is known here",
  "out-of-range": () => "the number is too large or too small",
  "unclear-comma": ({ decimals, thousands }) =>
    `the comma could mark decimals or thousands; write ${decimals} or ${thousands}`,
  "unclear-space": ({ thousands }) => `the space could part thousands; write ${thousands}`,
  "unclear-joint": ({ sign }) => `the ${sign} could end a part or mark decimals; write a space`,
  "too-many-parts": ({ limit }) => `the number beside a larger unit is not below ${limit}`,
  "too-many-digits": ({ limit }) => `the number has more than ${limit} digits`,
};
