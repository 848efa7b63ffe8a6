import type { ViteUserConfig } from "vitest/config";
import base from "./vitest.config.js";

/** What only the notebooks' kernel can tell. Needs Jupyter's nbconvert and a build; see `.ci/run`. */
const config: ViteUserConfig = {
  ...base,
  test: { ...base.test, include: ["test/notebooks/kernel/**/*.test.ts"], exclude: [] },
};

export default config;
