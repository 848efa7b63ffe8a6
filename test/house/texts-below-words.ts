import ts from "typescript";

/** A text of a source file that reads like one for people. */
export interface FoundText {
  /** Its line, from 1. */
  readonly line: number;
  /** The text; `…` stands for every value that is put in. */
  readonly text: string;
}

/** What stands for a value that is put into a text. */
const VALUE = "…";
/** Two words, or a word and a value, with a space between them. */
const TWO_WORDS = /(?:\p{L}{2,}|…)[,;:.)"'’]*\s+[("'‘]*(?:\p{L}{2,}|…)/u;
/** Calls whose arguments are texts of errors. */
const REFUSING = /^(?:assert|check|fail|invariant|missing|refuse|reject)(?:[A-Z]\w*)?$/;
/** Fields that are texts of errors. */
const ERROR_FIELDS: readonly string[] = ["clause", "message", "what"];

function textOf(node: ts.Node): string | undefined {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
  if (!ts.isTemplateExpression(node)) return undefined;
  return node.head.text + node.templateSpans.map(({ literal }) => VALUE + literal.text).join("");
}

function isForPeople(text: string): boolean {
  return TWO_WORDS.test(text) && /\p{L}{2,}/u.test(text);
}

/** Codes in types, names of fields and names of modules are read by programs alone. */
function isRead(node: ts.Node): boolean {
  const { parent } = node;
  const isName = ts.isPropertyAssignment(parent) && parent.name === node;
  return !ts.isLiteralTypeNode(parent) && !ts.isImportDeclaration(parent) && !ts.isExportDeclaration(parent) && !isName;
}

/** The expressions that an error is written with: what is refused is not among them. */
function errorTexts(node: ts.Node): readonly ts.Node[] {
  if (ts.isNewExpression(node)) return node.expression.getText().endsWith("Error") ? (node.arguments ?? []) : [];
  if (ts.isPropertyAssignment(node)) return ERROR_FIELDS.includes(node.name.getText()) ? [node.initializer] : [];
  if (ts.isShorthandPropertyAssignment(node)) return ERROR_FIELDS.includes(node.name.text) ? [node.name] : [];
  if (!ts.isCallExpression(node)) return [];
  const name = node.expression.getText();
  if (!REFUSING.test(name)) return [];
  return node.arguments.filter((_, index) => index > 2 || !/^re(?:fuse|ject)$/.test(name));
}

/** Whether a declaration's name, or a part of a pattern, is the name. */
function binds(binding: ts.Node, name: string): boolean {
  if (ts.isIdentifier(binding)) return binding.text === name;
  return (
    (ts.isArrayBindingPattern(binding) || ts.isObjectBindingPattern(binding)) &&
    binding.elements.some((element) => ts.isBindingElement(element) && binds(element.name, name))
  );
}

/** What a statement declares by a name: values of variables at any depth, and the body of a function. */
function declaredIn(statement: ts.Node, name: string): ts.Node[] {
  const found: ts.Node[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isVariableDeclaration(node) && node.initializer !== undefined && binds(node.name, name)) {
      found.push(node.initializer);
    }
    if (ts.isFunctionDeclaration(node) && node.name?.text === name && node.body !== undefined) found.push(node.body);
    ts.forEachChild(node, look);
  };
  look(statement);
  return found;
}

/** What a name stands for: a variable of the same statement of the file, else one of the file's own. */
function meaningOf(name: ts.Identifier, source: ts.SourceFile): ts.Node[] {
  let statement: ts.Node = name;
  while (!ts.isSourceFile(statement.parent)) statement = statement.parent;
  const own = declaredIn(statement, name.text);
  if (own.length > 0) return own;
  return source.statements.flatMap((other): ts.Node[] => {
    if (ts.isFunctionDeclaration(other)) return other.name?.text === name.text && other.body ? [other.body] : [];
    if (!ts.isVariableStatement(other)) return [];
    const named = other.declarationList.declarations.filter((declaration) => binds(declaration.name, name.text));
    return named.flatMap(({ initializer }) => initializer ?? []);
  });
}

/**
 * The texts of a source file that are for people and no part of an error.
 *
 * A text of two words or more counts, a value that is put in being a word. Texts of errors are the arguments of what refuses, and what these are made of, by
 * way of variables and functions of the same file.
 *
 * @param file - its name
 * @param code - what it says
 * @returns the texts, in order
 */
export function findTexts(file: string, code: string): FoundText[] {
  const source = ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true);
  const errors = new Set<ts.Node>();
  const follow = (node: ts.Node): void => {
    if (errors.has(node)) return;
    errors.add(node);
    if (ts.isIdentifier(node)) meaningOf(node, source).forEach(follow);
    ts.forEachChild(node, follow);
  };
  const found: FoundText[] = [];
  const collect = (node: ts.Node): void => {
    errorTexts(node).forEach(follow);
    ts.forEachChild(node, collect);
  };
  const look = (node: ts.Node): void => {
    const text = textOf(node);
    if (text !== undefined && !errors.has(node) && isRead(node) && isForPeople(text)) {
      found.push({ line: source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1, text });
    }
    ts.forEachChild(node, look);
  };
  collect(source);
  look(source);
  return found;
}
