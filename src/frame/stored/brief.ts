import { inOrder } from "../../core/check.js";
import type { Reader } from "../../core/stored.js";
import type { FilledBrief } from "../brief/brief.js";
import { readFilledBrief } from "../brief/read-brief.js";

/** A brief with its defaults filled in. */
export const filledBrief: Reader<FilledBrief> = (value, path) => readFilledBrief(value, path ?? "", inOrder);
