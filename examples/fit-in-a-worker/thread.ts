/**
 * A worker thread of Node.
 */
import { parentPort, workerData } from "node:worker_threads";
import { answer } from "./answer.js";
import type { Request } from "./messages.js";

answer(workerData as Request, (message) => parentPort?.postMessage(message));
