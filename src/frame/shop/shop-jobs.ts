import { checkArray, checkInteger, checkObject, checkText, reject } from "../../core/check.js";
import { plainCopy } from "../../core/plain-copy.js";
import { readStored } from "../../core/stored.js";
import { parseSaw, type Saw } from "../../saw/index.js";
import type { Operation } from "../sawing/operation.js";
import { sawPlan } from "../stored/sawing.js";
import type { UncutFrame } from "./shop-order-types.js";

/** The operations of one frame that can be cut. */
export interface ShopJob {
  /** The frame's name. */
  readonly name: string;
  /** Its saw, as an index into the saws. */
  readonly saw: number;
  /** The crosscut of the roughs, the first and the second end. */
  readonly operations: { readonly crosscut: Operation | null; readonly first: Operation; readonly second: Operation };
  /** How many frames are made. */
  readonly frames: number;
  /** How often first and second end alternate: once for all pieces together, or once for every piece that is cut on the stick itself. */
  readonly rounds: number;
}

/** The jobs of all frames, and what is no job. */
export interface ShopJobs {
  /** The different saws. */
  readonly saws: readonly Saw[];
  /** What can be cut. */
  readonly jobs: readonly ShopJob[];
  /** What cannot. */
  readonly left: readonly UncutFrame[];
}

function operationOf(operations: readonly Operation[], kind: Operation["kind"], path: string): Operation {
  const found = operations.find((operation) => operation.kind === kind);
  return found ?? reject("missing", path, operations, `Expected \`${path}\` to cut both ends, got no "${kind}"`);
}

/** Reads the jobs of several frames off their plans. Throws where a frame is not sound, or two have the same name. */
export function readJobs(value: unknown): ShopJobs {
  const saws: Saw[] = [];
  const keys = new Map<string, number>();
  const names = new Set<string>();
  const jobs: ShopJob[] = [];
  const left: UncutFrame[] = [];
  for (const [index, item] of checkArray(value, "plans", "an array of frames with their plans").entries()) {
    const path = `plans[${index}]`;
    const frame = checkObject(item, path);
    const name = checkText(frame["name"], `${path}.name`);
    if (names.has(name)) {
      reject("conflict", `${path}.name`, name, `Expected \`${path}.name\` to be a new name, got "${name}" again`);
    }
    names.add(name);
    const frames = checkInteger(frame["frames"] ?? 1, `${path}.frames`, 1, 1000);
    const inner = `${path}.plan.sawing`;
    const plan = checkObject(frame["plan"], `${path}.plan`);
    const sawing = readStored(plan["sawing"], inner, sawPlan);
    const { operations, order } = sawing;
    const saw = parseSaw(sawing.saw, `${inner}.saw`);
    if (operations.length === 0) {
      left.push({ name, obstacles: plainCopy(sawing.lays[0]!.obstacles) });
      continue;
    }
    const key = JSON.stringify(saw);
    if (!keys.has(key)) keys.set(key, saws.push(saw) - 1);
    const first = operationOf(operations, "first-end", `${inner}.operations`);
    jobs.push({
      name,
      saw: keys.get(key)!,
      operations: {
        crosscut: operations.find(({ kind }) => kind === "crosscut") ?? null,
        first,
        second: operationOf(operations, "second-end", `${inner}.operations`),
      },
      frames,
      rounds: order === "step-by-step" ? 1 : first.times * frames,
    });
  }
  return { saws, jobs, left };
}
