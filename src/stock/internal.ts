/** What other modules of the library use of this one, and no entry shows. */
export { stockFit } from "./fit/stored-fit.js";
export { checkJob } from "./job/check-job.js";
export { readSticks, STICKS } from "./job/check-sticks.js";
export { readStockJob } from "./job/parse-stock-job.js";
