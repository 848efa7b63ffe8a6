import ts from "typescript";

/** Digits to which printed numbers are compared: the last bits of sines differ between engines. */
const DIGITS = 12;

function readNode(node: ts.Expression): unknown {
  if (ts.isParenthesizedExpression(node)) return readNode(node.expression);
  if (ts.isNumericLiteral(node)) return Number(node.text);
  if (ts.isBigIntLiteral(node)) return BigInt(node.text.slice(0, -1));
  if (ts.isStringLiteralLike(node)) return node.text;
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken) {
    const operand = readNode(node.operand);
    if (typeof operand === "number" || typeof operand === "bigint") return -operand;
  }
  if (ts.isIdentifier(node) && node.text === "undefined") return undefined;
  if (node.kind === ts.SyntaxKind.TrueKeyword) return true;
  if (node.kind === ts.SyntaxKind.FalseKeyword) return false;
  if (node.kind === ts.SyntaxKind.NullKeyword) return null;
  if (ts.isArrayLiteralExpression(node)) return node.elements.map(readNode);
  if (ts.isObjectLiteralExpression(node)) {
    return Object.fromEntries(
      node.properties.map((property): [string, unknown] => {
        if (!ts.isPropertyAssignment(property) || ts.isComputedPropertyName(property.name))
          throw new SyntaxError(`not a literal: ${property.getText()}`);
        return [property.name.text, readNode(property.initializer)];
      }),
    );
  }
  throw new SyntaxError(`not a literal: ${node.getText()}`);
}

/**
 * Reads a JavaScript literal: numbers, strings, booleans, null, undefined, and arrays and objects of them.
 *
 * @param text - the literal
 * @returns its value
 * @throws {SyntaxError} for anything else, calls and names among it
 */
export function readLiteral(text: string): unknown {
  const source = ts.createSourceFile("literal.ts", `(${text}\n);`, ts.ScriptTarget.ES2022, true);
  const { parseDiagnostics } = source as unknown as { readonly parseDiagnostics: readonly ts.Diagnostic[] };
  const [statement, second] = source.statements;
  if (parseDiagnostics.length > 0 || second !== undefined || !ts.isExpressionStatement(statement!))
    throw new SyntaxError(`not a literal: ${text}`);
  return readNode(statement.expression);
}

const isPlain = (value: object): boolean =>
  [Object.prototype, null].includes(Object.getPrototypeOf(value) as object | null);

function writeKey(key: string): string {
  return /^[A-Za-z_$][\w$]*$/.test(key) ? key : JSON.stringify(key);
}

/**
 * Writes a value as a JavaScript literal, its numbers to 12 significant digits.
 *
 * @param value - what {@link readLiteral} can read back
 * @param spread - whether the outermost object or array takes one line a member
 * @returns the literal
 * @throws {TypeError} for functions, symbols, NaN, infinities, -0 and objects that are not plain
 */
export function writeLiteral(value: unknown, spread = false): string {
  if (typeof value === "number" && Number.isFinite(value) && !Object.is(value, -0))
    return String(Number.isSafeInteger(value) ? value : Number(value.toPrecision(DIGITS)));
  if (typeof value === "string") return JSON.stringify(value);
  if (typeof value === "bigint") return `${String(value)}n`;
  if (typeof value === "boolean" || value === null || value === undefined) return String(value);
  if (typeof value === "object" && (Array.isArray(value) || isPlain(value))) {
    const members: string[] = Array.isArray(value)
      ? value.map((member) => writeLiteral(member))
      : Object.entries(value).map(([key, member]) => `${writeKey(key)}: ${writeLiteral(member)}`);
    const [start, end] = Array.isArray(value) ? ["[", "]"] : ["{", "}"];
    if (members.length === 0) return `${start}${end}`;
    if (spread) return `${start}\n${members.map((member) => `  ${member},\n`).join("")}${end}`;
    return Array.isArray(value) ? `[${members.join(", ")}]` : `{ ${members.join(", ")} }`;
  }
  const what = typeof value === "number" ? (Object.is(value, -0) ? "-0" : String(value)) : typeof value;
  throw new TypeError(`a value that has no literal (${what})`);
}

function sameNumber(a: number, b: number): boolean {
  if (Object.is(a, b)) return true;
  const size = Math.max(Math.abs(a), Math.abs(b));
  if (!(size > 0 && size < Infinity)) return false;
  // Half a unit of the last compared digit, and a thousandth more for the rounding of this very comparison.
  return Math.abs(a - b) <= 0.5005 * 10 ** (Math.floor(Math.log10(size)) - (DIGITS - 1));
}

/**
 * Whether two values are the same, member by member: numbers at 12 significant digits, all else exactly.
 *
 * @param a - one value
 * @param b - the other
 * @returns true when they are
 */
export function sameValue(a: unknown, b: unknown): boolean {
  if (typeof a === "number" && typeof b === "number") return sameNumber(a, b);
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return a === b;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every(
      (key) =>
        Object.hasOwn(b, key) && sameValue((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]),
    )
  );
}
