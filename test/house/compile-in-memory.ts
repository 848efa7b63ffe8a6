import ts from "typescript";

/**
 * A compiler's program over files on disk and files that exist only here.
 *
 * @param files - absolute paths of the files to compile
 * @param invented - texts of those that are not on disk, by absolute path
 * @param options - the compiler settings
 * @returns the program
 */
export function compileInMemory(
  files: readonly string[],
  invented: ReadonlyMap<string, string>,
  options: ts.CompilerOptions,
): ts.Program {
  const disk = ts.createCompilerHost(options);
  const host: ts.CompilerHost = {
    ...disk,
    fileExists: (path) => invented.has(path) || disk.fileExists(path),
    readFile: (path) => invented.get(path) ?? disk.readFile(path),
    getSourceFile: (path, version, ...rest) => {
      const text = invented.get(path);
      return text === undefined ? disk.getSourceFile(path, version, ...rest) : ts.createSourceFile(path, text, version);
    },
  };
  return ts.createProgram(files, options, host);
}

/**
 * What is wrong in one file of a program.
 *
 * @param program - the program
 * @param file - absolute path of the file
 * @returns line (from 0) and message of each error
 */
export function errorsOf(program: ts.Program, file: string): { readonly line: number; readonly message: string }[] {
  const source = program.getSourceFile(file)!;
  // A text that does not parse says the same again when its meaning is checked.
  const syntactic = program.getSyntacticDiagnostics(source);
  const diagnostics = syntactic.length > 0 ? syntactic : program.getSemanticDiagnostics(source);
  return diagnostics.map(({ start, messageText }) => ({
    line: source.getLineAndCharacterOfPosition(start ?? 0).line,
    message: ts.flattenDiagnosticMessageText(messageText, " "),
  }));
}
