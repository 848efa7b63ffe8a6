import { isInputError } from "miterwright/errors";
import { describe, expect, test } from "vitest";
import { describeValue } from "../../src/core/check.js";
import { listEntries } from "./project.js";

/** What a caller without a compiler may pass by mistake. */
const MISTAKES: readonly unknown[] = [
  ...[undefined, null, true, 0, -1, NaN, Infinity, "", "x", [], [[]], {}, () => 0, 1n],
  ...[
    Symbol("s"),
    Symbol(),
    new Array<unknown>(3),
    Object.create(null) as unknown,
    revoked({}),
    revoked([]),
    revoked(() => 0),
  ],
];

/** A proxy that was revoked: it throws at whatever is asked of it. */
function revoked(target: object): object {
  const { proxy, revoke } = Proxy.revocable(target, {});
  revoke();
  return proxy;
}

/** Paths of numbers within a value that no public function may return. */
function unfitNumbers(value: unknown, path = "result"): string[] {
  if (typeof value === "number") return Number.isFinite(value) && !Object.is(value, -0) ? [] : [path];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, member]) => unfitNumbers(member, `${path}.${key}`));
}

/** Functions that report what they were given as it is, so that a form can show it again. */
const REPORTERS: readonly string[] = ["tryParseBrief", "tryParseProfile", "tryParseSaw", "tryParseStockJob"];

/** Calls a function and says what was wrong with its answer or its refusal. */
async function faultOf(call: () => unknown): Promise<string | undefined> {
  try {
    const unfit = unfitNumbers(await call());
    return unfit.length === 0 ? undefined : `returned an unfit number at ${unfit.join(", ")}`;
  } catch (error) {
    return isInputError(error) ? undefined : `threw ${String(error)}`;
  }
}

/** Every wrong call of up to two arguments that is answered with anything but a sound value or an InputError. */
async function findFaults(name: string, callee: (...args: readonly unknown[]) => unknown): Promise<string[]> {
  const calls = [[], ...MISTAKES.map((first) => [first]), ...MISTAKES.map((second) => [{}, second])];
  const faults = await Promise.all(
    calls.map(async (args) => {
      const fault = await faultOf(() => callee(...args));
      return fault === undefined ? [] : [`${name}(${args.map(describeValue).join(", ")}) ${fault}`];
    }),
  );
  return faults.flat();
}

const entries = listEntries().filter((entry) => entry !== "miterwright" && entry !== "miterwright/errors");
describe.each(entries)("every function of %s", (entry) => {
  test("answers a mistaken call with an InputError or a sound value", async () => {
    const exported = (await import(/* @vite-ignore */ entry)) as Record<string, unknown>;
    const faults: string[] = [];
    for (const [name, value] of Object.entries(exported)) {
      if (typeof value === "function" && !REPORTERS.includes(name))
        faults.push(...(await findFaults(name, value as () => unknown)));
    }
    expect(faults).toEqual([]);
  });
});

test("the check sees every kind of fault", async () => {
  const faultsOf = async (callee: (...args: readonly unknown[]) => unknown): Promise<string | undefined> =>
    (await findFaults("f", callee))[0];
  expect(await faultsOf(() => ({ a: [1, NaN] }))).toBe("f() returned an unfit number at result.a.1");
  expect(await faultsOf(() => -0)).toBe("f() returned an unfit number at result");
  expect(await faultsOf((first) => (first as { a: number }).a)).toBe(
    "f() threw TypeError: Cannot read properties of undefined (reading 'a')",
  );
  expect(await faultsOf(() => Promise.reject(new Error("x")))).toBe("f() threw Error: x");
  expect(await faultsOf((first) => Number(first === null))).toBeUndefined();
});
