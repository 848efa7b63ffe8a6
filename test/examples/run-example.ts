import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { ROOT } from "../house/project.js";

/** What came of running a script. */
export interface ScriptRun {
  /** Its exit code. */
  readonly status: number | null;
  /** What it printed. */
  readonly stdout: string;
  /** What it complained of. */
  readonly stderr: string;
}

/**
 * Runs a script of `examples` as its reader would, with the library's sources.
 *
 * @param script - its path below `examples`
 * @param folder - where it runs
 * @param words - what stands behind it on the command line
 * @returns what came of it
 */
export function runExample(script: string, folder: string, words: readonly string[] = []): ScriptRun {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["--import", import.meta.resolve("tsx"), join(ROOT, "examples", script), ...words],
    { cwd: folder, encoding: "utf8", env: { ...process.env, TSX_TSCONFIG_PATH: join(ROOT, "tsconfig.json") } },
  );
  return { status, stdout, stderr };
}
