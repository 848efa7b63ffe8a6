import { join } from "node:path";
import ts from "typescript";
import { listFiles, ROOT } from "./project.js";

/** The compiler settings of the library, but with the language's own globals alone: no node, no browser. */
function settings(): ts.CompilerOptions {
  const { config } = ts.readConfigFile(join(ROOT, "tsconfig.json"), (file) => ts.sys.readFile(file)) as {
    config: { compilerOptions: Record<string, unknown> };
  };
  const { options } = ts.convertCompilerOptionsFromJson({ ...config.compilerOptions, types: [] }, ROOT);
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
  const options = settings();
  const host = ts.createCompilerHost(options);
  const readReal = host.readFile.bind(host);
  const existsReal = host.fileExists.bind(host);
  const inventedText = (path: string): string | undefined =>
    Object.entries(invented).find(([file]) => path === join(ROOT, file))?.[1];
  host.readFile = (path) => inventedText(path) ?? readReal(path);
  host.fileExists = (path) => inventedText(path) !== undefined || existsReal(path);
  const getReal = host.getSourceFile.bind(host);
  host.getSourceFile = (path, version, ...rest) => {
    const text = inventedText(path);
    return text === undefined ? getReal(path, version, ...rest) : ts.createSourceFile(path, text, version);
  };
  const files = [...listFiles("src", ".ts"), ...Object.keys(invented)].map((file) => join(ROOT, file));
  const program = ts.createProgram(files, options, host);
  const faults = files.flatMap((file) => {
    const source = program.getSourceFile(file)!;
    const diagnostics = program.getSemanticDiagnostics(source).map(({ start, messageText }) => {
      const { line } = source.getLineAndCharacterOfPosition(start!);
      return `${file}:${line + 1}: ${ts.flattenDiagnosticMessageText(messageText, " ")}`;
    });
    return [...diagnostics, ...declaredGlobals(source)];
  });
  return faults.map((fault) => fault.replaceAll(ROOT, ""));
}
