import { validateWith, type StandardSchema } from "../../core/standard-schema.js";
import type { FilledBrief } from "./brief.js";
import { tryParseBrief } from "./parse-brief.js";

/**
 * The schema of a brief, for whatever takes schemas that follow the open Standard Schema interface: forms, servers, validators.
 *
 * It reads what `tryParseBrief` reads, and gives the same brief and the same issues.
 *
 * @example
 * ```ts
 * import { briefSchema } from "miterwright/frame";
 *
 * const result = briefSchema["~standard"].validate({ sides: 6, opening: { side: -1 }, measured: { levelWidth: 40 } });
 * result.issues?.[0]?.path; //=> ["opening", "side"]
 * ```
 */
export const briefSchema: StandardSchema<FilledBrief> = {
  "~standard": {
    version: 1,
    vendor: "miterwright",
    validate: (value) => validateWith(tryParseBrief, "", value),
  },
};
