import fc from "fast-check";

/**
 * The laws run from one seed, so that a red run is red again; `LAW_SEED=random` (or a number) searches elsewhere, and
 * `LAW_RUNS` sets how many cases each law is tried on.
 */
const wanted = process.env["LAW_SEED"];
const seed = wanted === undefined ? 20_261_124 : wanted === "random" ? Date.now() % 2 ** 31 : Number(wanted);
fc.configureGlobal({ seed, numRuns: Number(process.env["LAW_RUNS"] ?? 200) });
