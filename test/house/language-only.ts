import { join } from "node:path";
import ts from "typescript";
import { compileInMemory, errorsOf } from "./compile-in-memory.js";
import { listFiles, ROOT } from "./project.js";

/** The compiler settings of the library: those of the project, with the language's own globals alone. */
function settings(): ts.CompilerOptions {
  const { options, errors } = ts.getParsedCommandLineOfConfigFile(join(ROOT, "src/tsconfig.json"), undefined, {
    ...ts.sys,
    onUnRecoverableConfigFileDiagnostic: ({ messageText }) => {
      throw new Error(ts.flattenDiagnosticMessageText(messageText, " "));
    },
  })!;
  if (errors.length > 0) throw new Error("src/tsconfig.json does not parse");
  return options;
}

/** Ambient values (`declare const process: ...`) would let a global in by the back door; a brand's symbol is harmless. */
function declaredGlobals(source: ts.SourceFile): string[] {
  const isAmbient = (node: ts.Statement): boolean =>
    ts.canHaveModifiers(node) &&
    ts.getModifiers(node)?.some(({ kind }) => kind === ts.SyntaxKind.DeclareKeyword) === true &&
    !ts.isTypeAliasDeclaration(node) &&
    !ts.isInterfaceDeclaration(node) &&
    !/:\s*unique symbol\s*;?$/.test(node.getText(source));
  return source.statements.filter(isAmbient).map((node) => {
    const { line } = source.getLineAndCharacterOfPosition(node.getStart(source));
    return `${source.fileName}:${line + 1}: an ambient value hides a global: ${node.getText(source).split("\n")[0]!}`;
  });
}

/**
 * Compiles files against ECMAScript alone and says what they use beyond it.
 *
 * @param invented - files to add, by path from the root, that need not exist
 * @returns one sentence a fault, with file and line
 */
export function findForeignGlobals(invented: Readonly<Record<string, string>> = {}): string[] {
  const inventedTexts = new Map(Object.entries(invented).map(([file, text]) => [join(ROOT, file), text]));
  const files = [...listFiles("src", ".ts").map((file) => join(ROOT, file)), ...inventedTexts.keys()];
  const program = compileInMemory(files, inventedTexts, settings());
  const faults = files.flatMap((file) => [
    ...errorsOf(program, file).map(({ line, message }) => `${file}:${line + 1}: ${message}`),
    ...declaredGlobals(program.getSourceFile(file)!),
  ]);
  return faults.map((fault) => fault.replaceAll(ROOT, ""));
}
