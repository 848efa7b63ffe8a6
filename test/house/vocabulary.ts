import ts from "typescript";

/** What one file of TypeScript names, each name with the line it stands on. */
export interface Named {
  /** Exported declarations. */
  readonly exports: readonly string[];
  /** Keys of types, as `Type.key`; of a type without a name as `.key`. */
  readonly keys: readonly string[];
  /** Words that a type allows: codes. */
  readonly codes: readonly string[];
}

function isExported(node: ts.Node): boolean {
  return (
    ts.canHaveModifiers(node) && (ts.getModifiers(node) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)
  );
}

/**
 * Collects the names that a file gives to what it exports, to the fields of its types, and the string literals of its types.
 *
 * @param text - the file's text
 * @returns the names, in the order of the file
 */
export function namesOf(text: string): Named {
  const exports: string[] = [];
  const keys: string[] = [];
  const codes: string[] = [];
  const visit = (node: ts.Node, owner: string): void => {
    let within = owner;
    if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) within = node.name.text;
    if (isExported(node)) {
      if (ts.isVariableStatement(node))
        for (const { name } of node.declarationList.declarations) exports.push(name.getText());
      else if ((node as ts.DeclarationStatement).name !== undefined)
        exports.push((node as ts.DeclarationStatement).name!.text);
    }
    if (ts.isPropertySignature(node))
      keys.push(`${owner}.${ts.isStringLiteral(node.name) ? node.name.text : node.name.getText()}`);
    // What a generic type is given, as in `Pick<Fit, "cost">`, names keys.
    if (ts.isTypeReferenceNode(node)) return;
    if (ts.isLiteralTypeNode(node) && ts.isStringLiteral(node.literal)) codes.push(node.literal.text);
    ts.forEachChild(node, (child) => {
      visit(child, within);
    });
  };
  visit(ts.createSourceFile("file.ts", text, ts.ScriptTarget.ES2022, true), "");
  return { exports, keys, codes };
}

/** The words of a name: `arrisLetters` has `arris` and `letters`, `short-piece` has `short` and `piece`. */
export function wordsOf(name: string): string[] {
  return name
    .split(/[^A-Za-z0-9]+|(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])/)
    .filter((word) => word !== "")
    .map((word) => word.toLowerCase());
}
