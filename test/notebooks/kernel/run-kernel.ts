import { execFile } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import type { Notebook } from "../read-notebook.js";

const execute = promisify(execFile);

/** What came of running a notebook: the notebook with its outputs, or what Jupyter said when it gave up. */
export type KernelRun = { readonly notebook: Notebook } | { readonly failure: string };

/** Deno's program for this machine, which the package `deno` brings in a package of its own and needs no script to install. */
function denoProgram(): string {
  const require = createRequire(import.meta.url);
  const platform = `${process.platform}-${process.arch}${process.platform === "linux" ? "-glibc" : ""}`;
  const fromDeno = createRequire(require.resolve("deno/package.json"));
  const manifest = fromDeno.resolve(`@deno/${platform}/package.json`);
  return join(dirname(manifest), process.platform === "win32" ? "deno.exe" : "deno");
}

/**
 * Makes sure that Jupyter can convert and run notebooks.
 *
 * @param path - where programs are looked for
 * @throws {Error} that says what to install
 */
export async function requireJupyter(path: string | undefined = process.env["PATH"]): Promise<void> {
  try {
    await execute("jupyter", ["nbconvert", "--version"], { env: { PATH: path } });
  } catch {
    throw new Error(
      "The notebooks are run by Jupyter's nbconvert, which is not there. Install it first: `apt-get install jupyter-nbconvert` on Debian; .ci/run does.",
    );
  }
}

/**
 * Runs a notebook from beginning to end in Deno's kernel, which is made known to Jupyter in a temporary folder alone.
 *
 * @param path - the notebook's path; its folder is where it runs
 * @returns the notebook that came out, or the failure
 */
export async function runInKernel(path: string): Promise<KernelRun> {
  const temporary = mkdtempSync(join(tmpdir(), "miterwright-kernel-"));
  const at = (name: string): string => join(temporary, name);
  mkdirSync(at("data/kernels/deno"), { recursive: true });
  const kernel = {
    argv: [denoProgram(), "jupyter", "--kernel", "--conn", "{connection_file}"],
    display_name: "Deno",
    language: "typescript",
    // Numbers are printed without the colors of a terminal.
    env: { NO_COLOR: "1", DENO_NO_UPDATE_CHECK: "1", DENO_DIR: at("deno") },
  };
  writeFileSync(at("data/kernels/deno/kernel.json"), JSON.stringify(kernel));
  const settings = fileURLToPath(new URL("whole_outputs.py", import.meta.url));
  const options = ["--to", "notebook", "--config", settings, "--output-dir", at("out")];
  const env = {
    ...process.env,
    JUPYTER_DATA_DIR: at("data"),
    JUPYTER_CONFIG_DIR: at("config"),
    JUPYTER_RUNTIME_DIR: at("runtime"),
  };
  try {
    await execute("jupyter", ["nbconvert", ...options, path], { env });
    return { notebook: JSON.parse(readFileSync(join(at("out"), basename(path)), "utf8")) as Notebook };
  } catch (error) {
    const { stderr } = error as { stderr?: string };
    if (stderr === undefined) throw error;
    return { failure: stderr };
  } finally {
    rmSync(temporary, { recursive: true, force: true });
  }
}
