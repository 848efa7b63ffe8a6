import { readFileSync } from "node:fs";
import type { Options } from "tsup";

/**
 * One build entry for every subpath that package.json exports: `./miter` is built from `src/miter/index.ts`. Reading
 * the list from there keeps the two from drifting apart.
 */
function entriesFromExports(): Record<string, string> {
  const manifest = JSON.parse(readFileSync("package.json", "utf8")) as { exports: Record<string, unknown> };
  const entries: Record<string, string> = {};
  for (const subpath of Object.keys(manifest.exports)) {
    if (subpath === ".") entries["index"] = "src/index.ts";
    else if (!subpath.endsWith(".json")) entries[subpath.slice(2)] = `src/${subpath.slice(2)}/index.ts`;
  }
  return entries;
}

const config: Options = {
  entry: entriesFromExports(),
  format: ["esm", "cjs"],
  // Shared chunks in both formats, so that InputError is one class whichever entries a program loads.
  splitting: true,
  target: "es2022",
  platform: "neutral",
  treeshake: false,
  sourcemap: true,
  // The package holds its sources, so that the maps need not repeat them.
  esbuildOptions: (options) => {
    options.sourcesContent = false;
  },
  clean: true,
  dts: { compilerOptions: { ignoreDeprecations: "6.0" } },
};

export default config;
