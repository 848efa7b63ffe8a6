import { execFile } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { readManifest, requireFreshBuild, ROOT } from "./project.js";

/** What a command printed, and how it ended. */
export interface Outcome {
  readonly code: number;
  readonly output: string;
}

/** The package as its users get it: packed, and installed in a folder that holds nothing else. */
export interface InstalledPackage {
  /** Path of the packed file. */
  readonly tarball: string;
  /** Paths within the packed file. */
  readonly packedFiles: readonly string[];
  /** The folder that has it in `node_modules`. */
  readonly folder: string;
  /** Runs a command in that folder; a command that fails is an outcome too. */
  readonly run: (command: string, ...args: readonly string[]) => Promise<Outcome>;
  /** Writes a file into that folder. */
  readonly write: (name: string, text: string) => void;
  /** Deletes everything. */
  readonly remove: () => void;
}

const execute = promisify(execFile);

/** Packs a folder that holds a package. Its own scripts do not run: what is packed is what was built. */
async function pack(folder: string, into: string): Promise<{ readonly tarball: string; readonly files: string[] }> {
  const { stdout } = await execute("npm", ["pack", "--ignore-scripts", "--json", "--pack-destination", into, folder]);
  const [packed] = JSON.parse(stdout) as [{ filename: string; files: { path: string }[] }];
  return { tarball: join(into, packed.filename), files: packed.files.map(({ path }) => path) };
}

/**
 * Packs the build and installs it without a network: the runtime dependencies that package.json declares are packed
 * from `node_modules`, and nothing that is not declared is there.
 *
 * @returns the installed package
 * @throws {Error} where the build is missing or old
 */
export async function installPackage(): Promise<InstalledPackage> {
  requireFreshBuild();
  const temporary = mkdtempSync(join(tmpdir(), "miterwright-package-"));
  const folder = join(temporary, "user");
  mkdirSync(folder);
  writeFileSync(join(folder, "package.json"), JSON.stringify({ name: "user", private: true }));
  const dependencies = Object.keys(readManifest().dependencies);
  const { tarball, files } = await pack(ROOT, temporary);
  const others = await Promise.all(dependencies.map((name) => pack(join(ROOT, "node_modules", name), temporary)));
  const tarballs = [tarball, ...others.map((other) => other.tarball)];
  await execute("npm", ["install", "--offline", "--no-audit", "--no-fund", ...tarballs], { cwd: folder });

  const run = async (command: string, ...args: readonly string[]): Promise<Outcome> => {
    try {
      const { stdout, stderr } = await execute(command, args, { cwd: folder });
      return { code: 0, output: stdout + stderr };
    } catch (error) {
      const { code, stdout, stderr } = error as { code: number | string; stdout: string; stderr: string };
      if (typeof code !== "number") throw error;
      return { code, output: stdout + stderr };
    }
  };
  return {
    tarball,
    packedFiles: files,
    folder,
    run,
    write: (name, text) => {
      writeFileSync(join(folder, name), text);
    },
    remove: () => {
      rmSync(temporary, { recursive: true });
    },
  };
}
