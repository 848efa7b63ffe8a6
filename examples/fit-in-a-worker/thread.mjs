/**
 * Loads the thread's TypeScript. A program that is built has no need of this file and starts the built thread itself.
 */
import { register } from "tsx/esm/api";

register();
await import("./thread.ts");
