import { checkObject, reject } from "../../core/check.js";
import { readStored } from "../../core/stored.js";
import { verifyFit, type StockFit, type StockJob } from "../../stock/index.js";
import { stockFit } from "../../stock/internal.js";

/** Reads a fit, and holds it against its job: a fit of another job would be a cut list that spoils sticks. */
export function readFit(job: StockJob, fit: unknown, path: string): StockFit {
  const read = readStored(checkObject(fit, path), path, stockFit);
  const verdict = verifyFit(job, read);
  if (verdict.ok) return read;
  const { path: place, message } = verdict.faults[0]!;
  return reject(
    "conflict",
    place.replace(/^fit\b/, path),
    read,
    `Expected \`${path}\` to be a fit of its stock job: ${message}`,
  );
}
