import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";

/** The project's root folder. */
export const ROOT: string = fileURLToPath(new URL("../../", import.meta.url));

/** The fields of package.json that tests read. */
export interface Manifest {
  readonly name: string;
  readonly exports: Readonly<Record<string, unknown>>;
  readonly dependencies: Readonly<Record<string, string>>;
}

/** Reads a file of the project, by its path from the root. */
export function readProjectFile(path: string): string {
  return readFileSync(join(ROOT, path), "utf8");
}

/** Reads package.json. */
export function readManifest(): Manifest {
  return JSON.parse(readProjectFile("package.json")) as Manifest;
}

/** The names a program imports, as package.json lists them: `miterwright`, `miterwright/errors`, ... */
export function listEntries(): string[] {
  const { name, exports } = readManifest();
  const subpaths = Object.keys(exports).filter((subpath) => !subpath.endsWith(".json"));
  return subpaths.map((subpath) => (subpath === "." ? name : `${name}/${subpath.slice(2)}`));
}

/** Every file below a folder whose name ends as asked, as sorted paths from the root with forward slashes. */
export function listFiles(folder: string, ending: string): string[] {
  const entries = readdirSync(join(ROOT, folder), { withFileTypes: true, recursive: true });
  return entries
    .filter((entry) => entry.isFile() && entry.name.endsWith(ending))
    .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();
}

/**
 * Throws where the build is missing or older than what it was built from, so that no test judges yesterday's package.
 */
export function requireFreshBuild(): void {
  const built = statSync(join(ROOT, "dist/index.js"), { throwIfNoEntry: false })?.mtimeMs;
  if (built === undefined) throw new Error("dist/ is missing. Run `npm run build` first; `npm test` does.");
  const newer = [...listFiles("src", ".ts"), "package.json", "tsup.config.ts"].filter(
    (file) => statSync(join(ROOT, file)).mtimeMs > built,
  );
  if (newer.length > 0) {
    throw new Error(`dist/ is older than ${newer.join(", ")}. Run \`npm run build\` first; \`npm test\` does.`);
  }
}
