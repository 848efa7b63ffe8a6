import { fileURLToPath } from "node:url";
import type { ViteUserConfig } from "vitest/config";

const source = (path: string): string => fileURLToPath(new URL(`./src/${path}`, import.meta.url));

const BROWSER = "test/browser/**/*.test.ts";
const KERNEL = "test/notebooks/kernel/**/*.test.ts";

const config: ViteUserConfig = {
  resolve: {
    alias: [
      { find: /^miterwright$/, replacement: source("index.ts") },
      { find: /^miterwright\/(.+)$/, replacement: source("$1/index.ts") },
    ],
  },
  test: {
    setupFiles: ["test/setup.ts"],
    testTimeout: 60_000,
    hookTimeout: 240_000,
    projects: [
      { extends: true, test: { name: "node", include: ["test/**/*.test.ts"], exclude: [BROWSER, KERNEL] } },
      // What only a browser can tell. Needs Chromium and a build; see `.ci/run`. One browser at a time: each takes most of a small machine.
      { extends: true, test: { name: "browser", include: [BROWSER], fileParallelism: false } },
      // What only the notebooks' kernel can tell. Needs Jupyter's nbconvert and a build.
      { extends: true, test: { name: "notebooks", include: [KERNEL] } },
    ],
  },
};

export default config;
