import ts from "typescript";

/** A value that a block prints beside an expression: `expression; //=> literal`. */
export interface PrintedValue {
  /** Where the expression stands in the code, its semicolon excluded. */
  readonly expression: readonly [start: number, end: number];
  /** Where its statement ends, the semicolon included. */
  readonly statementEnd: number;
  /** Where the comment stands in the code; lines that continue the literal belong to it. */
  readonly comment: readonly [start: number, end: number];
  /** The literal, without the signs of a comment. */
  readonly text: string;
  /** Line of the comment within the code, from 0. */
  readonly line: number;
}

/** A comment that prints a value, or was meant to. */
const ARROW = /^\/\/\s*=+>/;
const EXACT_ARROW = "//=> ";
/** A line that continues a literal: a comment of its own, but not one that prints another value. */
const CONTINUATION = /^\s*\/\/(?!\s*=+>)(.*)$/;

/** The line comments of the code, in order. The scanner is told by the parser where strings and templates are. */
function lineComments(source: ts.SourceFile): ts.TextRange[] {
  const found = new Map<number, ts.TextRange>();
  const visit = (node: ts.Node): void => {
    const children = node.getChildren(source);
    if (children.length > 0) children.forEach(visit);
    else {
      const ranges = [
        ...(ts.getLeadingCommentRanges(source.text, node.pos) ?? []),
        ...(ts.getTrailingCommentRanges(source.text, node.end) ?? []),
      ];
      for (const range of ranges) {
        if (range.kind === ts.SyntaxKind.SingleLineCommentTrivia) found.set(range.pos, range);
      }
    }
  };
  visit(source);
  return [...found.values()].sort((a, b) => a.pos - b.pos);
}

/** Whether the text so far is a whole literal, as far as brackets and quotes go. */
function isBalanced(text: string): boolean {
  const { parseDiagnostics } = ts.createSourceFile("value.ts", `(${text}\n);`, ts.ScriptTarget.ES2022) as unknown as {
    readonly parseDiagnostics: readonly unknown[];
  };
  return parseDiagnostics.length === 0;
}

/** Every expression statement by the offset of its end, wherever it is nested. */
function expressionStatements(source: ts.SourceFile): Map<number, ts.ExpressionStatement> {
  const byEnd = new Map<number, ts.ExpressionStatement>();
  const visit = (node: ts.Node): void => {
    if (ts.isExpressionStatement(node)) byEnd.set(node.end, node);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return byEnd;
}

/**
 * Finds the values that a block prints.
 *
 * The comment stands behind the statement or, alone, on the line below it. A long literal may go on over comment lines.
 *
 * @param code - the block's code
 * @returns the values, and a sentence with its line (from 0) for each comment that prints a value of nothing
 */
export function findPrintedValues(code: string): {
  readonly values: readonly PrintedValue[];
  readonly faults: readonly { readonly line: number; readonly message: string }[];
} {
  const source = ts.createSourceFile("block.ts", code, ts.ScriptTarget.ES2022, true);
  const statements = expressionStatements(source);
  const values: PrintedValue[] = [];
  const faults: { readonly line: number; readonly message: string }[] = [];
  for (const { pos, end } of lineComments(source)) {
    const comment = code.slice(pos, end);
    if (!ARROW.test(comment)) continue;
    const { line } = source.getLineAndCharacterOfPosition(pos);
    const statementEnd = code.slice(0, pos).trimEnd().length;
    const statement = statements.get(statementEnd);
    const linesBetween = code.slice(statementEnd, pos).split("\n").length - 1;
    if (!comment.startsWith(EXACT_ARROW)) faults.push({ line, message: `write "${EXACT_ARROW}" before the value` });
    else if (statement === undefined || linesBetween > 1)
      faults.push({ line, message: "the value stands behind no expression statement" });
    else {
      let text = comment.slice(EXACT_ARROW.length);
      let commentEnd = end;
      while (!isBalanced(text)) {
        const next = code.slice(commentEnd + 1).split("\n", 1)[0]!;
        const more = CONTINUATION.exec(next);
        if (more === null || commentEnd >= code.length) break;
        text += `\n${more[1]!}`;
        commentEnd += 1 + next.length;
      }
      const { expression } = statement;
      values.push({
        expression: [expression.getStart(source), expression.end],
        statementEnd,
        comment: [pos, commentEnd],
        text,
        line,
      });
    }
  }
  return { values, faults };
}
