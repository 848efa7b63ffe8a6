import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import ts from "typescript";

/** A name that is declared in a file: a function, a type, or a member of one. */
interface DeclaredName {
  /** The names from the outermost declaration inward: `RegularPolygon.apothem`. */
  readonly path: string;
  /** What kind of thing its outermost declaration is. */
  readonly kind: ts.SyntaxKind;
  /** Where the name stands in its file. */
  readonly start: number;
}

/** A file with all names that it declares. */
interface DeclaringFile {
  readonly file: string;
  readonly source: ts.SourceFile;
  readonly names: readonly DeclaredName[];
}

/** A place in a file; lines and columns count from 0. */
interface Place {
  readonly line: number;
  readonly character: number;
}

function namesOf(source: ts.SourceFile): DeclaredName[] {
  const names: DeclaredName[] = [];
  const add = (outer: string, kind: ts.SyntaxKind, node: ts.Node): void => {
    const { name } = node as ts.NamedDeclaration;
    if (name === undefined || !(ts.isIdentifier(name) || ts.isStringLiteral(name))) return;
    const path = outer === "" ? name.text : `${outer}.${name.text}`;
    names.push({ path, kind, start: name.getStart(source) });
    const visit = (child: ts.Node): void => {
      if (ts.isPropertySignature(child) || ts.isMethodSignature(child) || ts.isPropertyDeclaration(child)) {
        add(path, kind, child);
      } else {
        ts.forEachChild(child, visit);
      }
    };
    // What stands in a function's body is declared for nobody else.
    if (!ts.isFunctionDeclaration(node)) ts.forEachChild(node, visit);
  };
  for (const statement of source.statements) {
    if (ts.isVariableStatement(statement)) {
      for (const node of statement.declarationList.declarations) add("", node.kind, node);
    } else {
      add("", statement.kind, statement);
    }
  }
  return names;
}

function readFile(file: string): DeclaringFile {
  const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.ES2022, true);
  return { file, source, names: namesOf(source) };
}

function filesIn(folder: string, ending: RegExp): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => ending.test(name))
    .sort()
    .map((name) => join(folder, name));
}

/** The outermost names with all that is in them, which tell two private types of one name apart. */
function shapes({ names }: DeclaringFile): Map<string, string> {
  const shape = new Map<string, string[]>();
  for (const { path, kind } of names) {
    const [outer] = path.split(".") as [string];
    shape.set(outer, [...(shape.get(outer) ?? []), `${String(kind)} ${path}`]);
  }
  return new Map([...shape].map(([outer, parts]) => [outer, [...new Set(parts)].sort().join()]));
}

const DIGITS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

/** A number as source maps write it: in base 64, six bits a digit, the lowest bit of the first the sign (ECMA-426, "Base64 VLQ"). */
function quantity(value: number): string {
  let rest = value < 0 ? (-value << 1) | 1 : value << 1;
  let text = "";
  do {
    const digit = rest & 31;
    rest >>>= 5;
    text += DIGITS[rest > 0 ? digit | 32 : digit]!;
  } while (rest > 0);
  return text;
}

/** The mappings of a map, from places in the order of the generated file. */
function writeMappings(
  pairs: readonly { readonly from: Place; readonly source: number; readonly to: Place }[],
): string {
  let [line, column, source, toLine, toColumn] = [0, 0, 0, 0, 0];
  let text = "";
  for (const { from, source: place, to } of pairs) {
    if (from.line > line) {
      text += ";".repeat(from.line - line);
      [line, column] = [from.line, 0];
    } else if (text !== "") {
      text += ",";
    }
    text += [from.character - column, place - source, to.line - toLine, to.character - toColumn].map(quantity).join("");
    [column, source, toLine, toColumn] = [from.character, place, to.line, to.character];
  }
  return text;
}

/**
 * Writes a map beside every declaration file, so that "go to definition" in an editor leads from a program that uses the package to its sources, which the package
 * holds. The bundler of the declarations writes none.
 *
 * @param dist - the folder of the declaration files
 * @param src - the folder of the sources
 */
export function writeDeclarationMaps(dist: string, src: string): void {
  const sources = filesIn(src, /\.ts$/).map(readFile);
  /** The files that declare an outermost name, each with all that is in it. */
  const declaring = new Map<string, { readonly file: DeclaringFile; readonly shape: string }[]>();
  for (const file of sources) {
    for (const [name, shape] of shapes(file)) declaring.set(name, [...(declaring.get(name) ?? []), { file, shape }]);
  }
  for (const generated of filesIn(dist, /\.d\.c?ts$/).map(readFile)) {
    const used: string[] = [];
    const own = shapes(generated);
    const pairs = generated.names.flatMap(({ path, start }) => {
      const [outer] = path.split(".") as [string];
      const candidates = declaring.get(outer) ?? [];
      const found = candidates.find(({ shape }) => shape === own.get(outer)) ?? candidates[0];
      const name = found?.file.names.find((candidate) => candidate.path === path);
      if (found === undefined || name === undefined) return [];
      const { file, source } = found.file;
      const address = relative(dist, file).split(sep).join("/");
      if (!used.includes(address)) used.push(address);
      return [
        {
          from: generated.source.getLineAndCharacterOfPosition(start),
          source: used.indexOf(address),
          to: source.getLineAndCharacterOfPosition(name.start),
        },
      ];
    });
    pairs.sort((a, b) => a.from.line - b.from.line || a.from.character - b.from.character);
    const { file } = generated;
    const name = relative(dist, file);
    const map = { version: 3, file: name, names: [], sources: used, mappings: writeMappings(pairs) };
    writeFileSync(`${file}.map`, `${JSON.stringify(map)}\n`);
    const text = readFileSync(file, "utf8").replace(/\n*(?:\/\/# sourceMappingURL=.*\n*)?$/, "\n");
    writeFileSync(file, `${text}//# sourceMappingURL=${name}.map\n`);
  }
}
