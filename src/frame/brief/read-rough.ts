import { checkRange, isRecord, LENGTH } from "../../core/check.js";
import { readField, type FieldCheck, type Fields } from "../../core/field.js";
import type { RoughMethod } from "./brief.js";

/** What may be said of roughs, whichever way they are parted. */
export interface GivenRough {
  readonly method: RoughMethod["method"];
  readonly allowance?: number | undefined;
}

/** How it is read, each field for itself. */
export const ROUGH: Fields<GivenRough> = {
  method: { kind: "word", words: ["none", "square", "mitered"] },
  allowance: { kind: "optional", of: LENGTH },
};

/** Reads how pieces are parted from the stick. Roughs ask for an allowance; without them it is left out. */
export const readRough: FieldCheck<RoughMethod> = (value, path, run) => {
  const cutAgain = isRecord(value) && (value["method"] === "square" || value["method"] === "mitered");
  const spare: FieldCheck<number> = (length, at) => checkRange(length, at, LENGTH);
  const fields: Fields<GivenRough> = cutAgain ? { method: ROUGH.method, allowance: spare } : ROUGH;
  const { method, allowance } = readField<GivenRough>({ kind: "record", fields }, value, path, run);
  return method === "none" ? { method } : { method, allowance: allowance! };
};
