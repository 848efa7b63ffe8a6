import { fileURLToPath } from "node:url";
import type { ViteUserConfig } from "vitest/config";

const source = (path: string): string => fileURLToPath(new URL(`./src/${path}`, import.meta.url));

const config: ViteUserConfig = {
  resolve: {
    alias: [
      { find: /^miterwright$/, replacement: source("index.ts") },
      { find: /^miterwright\/(.+)$/, replacement: source("$1/index.ts") },
    ],
  },
  test: {
    include: ["test/**/*.test.ts"],
    exclude: ["test/browser/**", "test/notebooks/kernel/**"],
    setupFiles: ["test/setup.ts"],
    testTimeout: 60_000,
    hookTimeout: 240_000,
  },
};

export default config;
