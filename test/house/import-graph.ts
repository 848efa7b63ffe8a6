import { posix } from "node:path";
import ts from "typescript";

/** What one file imports, in the words of its import lines: `../core/check.js`, `decimal.js`. */
export interface FileImports {
  /** Path from the root of the project, e.g. `src/miter/compound-miter.ts`. */
  readonly file: string;
  /** Every module specifier of the file: imports, re-exports, `import()` and `import type`. */
  readonly specifiers: readonly string[];
}

/** Which modules there are, on which floor each stands, and the modules that keep to rules of their own. */
export interface House {
  /** Modules by floor, the lowest first. A module imports from floors below its own. */
  readonly floors: readonly (readonly string[])[];
  /** Modules beside the house: all that each may import of ours. Nothing of the house imports them. */
  readonly beside: Readonly<Record<string, readonly string[]>>;
  /** Packages by the module that alone may import them. */
  readonly packages: Readonly<Record<string, readonly string[]>>;
}

/** Our own house. A folder of `src` that is not named here fails the test. */
export const HOUSE: House = {
  floors: [
    ["core"],
    ["polygon", "miter", "profile", "stock", "wood", "units", "errors"],
    ["panel", "closure", "saw"],
    ["frame"],
    ["words"],
    ["drawing"],
    ["report"],
    ["sheet"],
  ],
  beside: { precise: ["errors"] },
  packages: { precise: ["decimal.js"] },
};

/** Reads the module specifiers of one file; those in comments and strings do not count. */
export function readSpecifiers(file: string, text: string): FileImports {
  return { file, specifiers: ts.preProcessFile(text, true, true).importedFiles.map(({ fileName }) => fileName) };
}

/** The module a file belongs to: the folder below `src`, or `.` for the root entry. */
function moduleOf(file: string): string {
  const [, folder, rest] = file.split("/");
  return rest === undefined ? "." : folder!;
}

/** The file that a relative import names, or undefined where it is not one of ours. */
function resolve(file: string, specifier: string): string | undefined {
  if (!specifier.startsWith("./") && !specifier.startsWith("../")) return undefined;
  return posix.join(posix.dirname(file), specifier).replace(/\.js$/, ".ts");
}

function faultOfPackage(house: House, file: string, specifier: string): string | undefined {
  const module = moduleOf(file);
  if (house.packages[module]?.includes(specifier)) return undefined;
  return `${file} imports "${specifier}": ${module} may not import that package`;
}

function faultOfModules(house: House, file: string, target: string): string | undefined {
  const from = moduleOf(file);
  const to = moduleOf(target);
  if (from === to) return undefined;
  const floorOf = (module: string): number => house.floors.findIndex((floor) => floor.includes(module));
  const says = `${file} imports ${target}: `;
  if (to === ".") return `${says}nothing imports the root entry`;
  if (house.beside[to] !== undefined) return `${says}nothing imports ${to}, which stands beside the house`;
  if (from === ".") return target === `src/${to}/index.ts` ? undefined : `${says}the root entry imports only entries`;
  const allowed = house.beside[from];
  if (allowed !== undefined) return allowed.includes(to) ? undefined : `${says}${from} imports only ${allowed.join()}`;
  // An unknown module is one fault of its own; see `findFaults`.
  if (floorOf(from) < 0 || floorOf(to) < 0 || floorOf(to) < floorOf(from)) return undefined;
  if (floorOf(to) === floorOf(from)) return `${says}${from} and ${to} stand on one floor`;
  return `${says}that goes up, from floor ${floorOf(from)} to floor ${floorOf(to)}`;
}

/** A module with an `internal.ts` has rooms of its own behind it: other modules import that file or the entry, and no deeper. */
function faultOfDoors(files: ReadonlySet<string>, file: string, target: string): string | undefined {
  const to = moduleOf(target);
  const doors = [`src/${to}/index.ts`, `src/${to}/internal.ts`];
  if (moduleOf(file) === to || !files.has(doors[1]!) || doors.includes(target)) return undefined;
  return `${file} imports ${target}: other modules import only ${doors.join(" and ")}`;
}

/** Every file that a file imports, or one that it imports, and so on. */
export function filesBehind(files: readonly FileImports[], file: string): Set<string> {
  const found = new Set<string>();
  const visit = (from: string): void => {
    for (const specifier of files.find((one) => one.file === from)?.specifiers ?? []) {
      const target = resolve(from, specifier);
      if (target === undefined || found.has(target)) continue;
      found.add(target);
      visit(target);
    }
  };
  visit(file);
  return found;
}

/** Every set of files that import each other in a circle, found by following the imports depth first. */
function findCircles(edges: ReadonlyMap<string, readonly string[]>): string[] {
  const done = new Set<string>();
  const circles: string[] = [];
  const visit = (file: string, trail: readonly string[]): void => {
    const start = trail.indexOf(file);
    if (start >= 0) circles.push(`import circle: ${[...trail.slice(start), file].join(" -> ")}`);
    if (start >= 0 || done.has(file)) return;
    for (const next of edges.get(file) ?? []) visit(next, [...trail, file]);
    done.add(file);
  };
  for (const file of edges.keys()) visit(file, []);
  return circles;
}

/**
 * Every breach of the house rules in an import graph, as sentences; none for a sound one.
 *
 * @param files - the graph
 * @param house - the rules
 * @returns one sentence a fault
 */
export function findFaults(files: readonly FileImports[], house: House): string[] {
  const faults: string[] = [];
  const edges = new Map<string, string[]>(files.map(({ file }) => [file, []]));
  const names = new Set(edges.keys());
  const known = [".", ...house.floors.flat(), ...Object.keys(house.beside)];
  for (const module of new Set(files.map(({ file }) => moduleOf(file)))) {
    if (!known.includes(module)) faults.push(`src/${module} stands on no floor of the house`);
  }
  for (const { file, specifiers } of files) {
    for (const specifier of specifiers) {
      const target = resolve(file, specifier);
      let fault: string | undefined;
      if (target === undefined) fault = faultOfPackage(house, file, specifier);
      else if (!specifier.endsWith(".js")) fault = `${file} imports "${specifier}": write the .js ending`;
      else if (!edges.has(target)) fault = `${file} imports "${specifier}": there is no ${target}`;
      else {
        edges.get(file)!.push(target);
        fault = faultOfModules(house, file, target) ?? faultOfDoors(names, file, target);
      }
      if (fault !== undefined) faults.push(fault);
    }
  }
  return [...faults, ...findCircles(edges)];
}
