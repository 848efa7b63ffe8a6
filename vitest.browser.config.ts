import type { ViteUserConfig } from "vitest/config";
import base from "./vitest.config.js";

/** What only a browser can tell. Needs Chromium and a build; see `.ci/run`. */
const config: ViteUserConfig = {
  ...base,
  test: {
    ...base.test,
    include: ["test/browser/**/*.test.ts"],
    exclude: [],
    // One browser at a time: each takes most of a small machine.
    fileParallelism: false,
  },
};

export default config;
