import { gzipSync } from "node:zlib";
import { build, type BuildOptions } from "esbuild";
import { requireFreshBuild, ROOT } from "./project.js";

/** What a page pays for an import. */
export interface Bundle {
  /** Bytes after minifying. */
  readonly minified: number;
  /** Bytes after minifying and gzip, which is what travels. */
  readonly gzipped: number;
  /** Packages other than ours in the bundle. */
  readonly packages: readonly string[];
}

/**
 * Bundles a program; the package's own name stands for its build.
 *
 * @param text - the program
 * @param options - settings of the bundler that differ from ours
 * @returns the code, and the packages other than ours that it holds
 */
export async function bundleProgram(
  text: string,
  options: BuildOptions = {},
): Promise<{ readonly code: string; readonly packages: readonly string[] }> {
  requireFreshBuild();
  const { outputFiles, metafile } = await build({
    stdin: { contents: text, resolveDir: ROOT },
    bundle: true,
    minify: true,
    write: false,
    metafile: true,
    format: "esm",
    target: "es2022",
    logLevel: "silent",
    absWorkingDir: ROOT,
    // Without the paths of tsconfig.json, which would bundle the sources.
    tsconfigRaw: {},
    ...options,
  });
  const inputs = Object.keys(Object.values(metafile!.outputs)[0]!.inputs);
  const packages = inputs.flatMap((input) => /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(input)?.[1] ?? []);
  return { code: outputFiles![0]!.text, packages: [...new Set(packages)] };
}

/**
 * Measures what an import from the build costs in a bundle.
 *
 * @param entry - e.g. `miterwright/miter`
 * @param name - the one export to import; without it, the whole entry
 * @returns its sizes in bytes
 */
export async function measureImport(entry: string, name?: string): Promise<Bundle> {
  const { code, packages } = await bundleProgram(`export ${name === undefined ? "*" : `{ ${name} }`} from "${entry}";`);
  return { minified: Buffer.byteLength(code), gzipped: gzipSync(code, { level: 9 }).length, packages };
}
