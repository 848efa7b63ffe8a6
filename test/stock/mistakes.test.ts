import { describe, expect, test } from "vitest";
import { drawStock } from "miterwright/drawing";
import { isInputError } from "miterwright/errors";
import { frameGeometry, stockJob } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { verifyFit, fitStock, fitStockAsync, type StockFit, type StockJob } from "miterwright/stock";
import { formatsWith } from "../formats.js";
import { describeValue } from "../../src/core/check.js";

/** What a caller without a compiler, or a stored file, may have in a field by mistake. */
const MISTAKES: readonly unknown[] = [
  ...[null, true, -1, 1.5, NaN, Infinity, -Infinity, "", "x", "7", [], [[]], {}, 1n, () => 0],
  ...[Symbol("s"), Symbol(), new Array<unknown>(3), [1, undefined], Object.create(null) as unknown],
  ...[revoked({}), revoked([]), new Date(NaN), Object.create({ length: 5, id: "p" }) as unknown],
];

/** A proxy that was revoked: it throws at whatever is asked of it. */
function revoked(target: object): object {
  const { proxy, revoke } = Proxy.revocable(target, {});
  revoke();
  return proxy;
}

type Place = readonly (string | number)[];

/** Every place within plain data. */
function placesIn(value: unknown, at: Place = []): Place[] {
  if (typeof value !== "object" || value === null) return [at];
  return [
    at,
    ...Object.entries(value).flatMap(([key, member]) =>
      placesIn(member, [...at, Array.isArray(value) ? Number(key) : key]),
    ),
  ];
}

function replaceAt(value: unknown, [key, ...rest]: Place, by: unknown): unknown {
  if (key === undefined) return by;
  const member = replaceAt((value as Record<string | number, unknown>)[key], rest, by);
  if (!Array.isArray(value)) return { ...(value as object), [key]: member };
  return value.map((item: unknown, k) => (k === key ? member : item));
}

function pathOf(name: string, place: Place): string {
  const path = place.map((key) => (typeof key === "number" ? `[${key}]` : `.${key}`)).join("");
  return name === "" ? path.slice(1) : name + path;
}

function unfitNumbers(value: unknown, path = "result"): string[] {
  if (typeof value === "number") return Number.isFinite(value) && !Object.is(value, -0) ? [] : [path];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, member]) => unfitNumbers(member, `${path}.${key}`));
}

/** What is wrong with the answer to data with one mistake: anything but a sound value, or an InputError that names the place or what is around it. */
function faultsOf(name: string, data: object, call: (data: never) => unknown): string[] {
  return placesIn(data).flatMap((place) =>
    MISTAKES.flatMap((mistake) => {
      const path = pathOf(name, place);
      const told = `${path} ${describeValue(mistake)}: `;
      try {
        const answer = call(replaceAt(data, place, mistake) as never);
        const unfit = unfitNumbers(answer);
        if (unfit.length > 0) return [`${told}${unfit.join(" ")}`];
        return /NaN|undefined|\[object/.test(JSON.stringify(answer)) ? [`${told}${JSON.stringify(answer)}`] : [];
      } catch (error) {
        if (!isInputError(error)) return [told + String(error)];
        const near = error.path === "" || path.startsWith(error.path) || error.path.startsWith(path);
        // A field may also contradict another one, which is then named.
        return near || ["conflict", "impossible", "range", "unknown"].includes(error.code)
          ? []
          : [`${told}blames ${error.path}`];
      }
    }),
  );
}

const job: StockJob = {
  pieces: [
    { id: "p", length: 40, count: 3, share: { key: "k", saving: 3 } },
    { id: "r", sequence: [20, 10], count: 2 },
  ],
  sticks: [{ id: "s", length: 100, count: 4, cost: 7, defects: [{ start: 50, end: 52 }] }],
  kerf: 2,
  trim: { start: 1, end: 3 },
  keep: 5,
  credit: 0.01,
  resolution: 0.5,
};
const fit = fitStock(job, { stepLimit: 1e5 });
const tell = { formats: formatsWith({ length: (value) => `<${value}>` }) };

describe("a mistake in one field is refused with its path, or is none", () => {
  test("of a job that is fitted", () => {
    expect(faultsOf("job", job, (value) => fitStock(value, { stepLimit: 1e4 }))).toEqual([]);
  });

  test("of a job whose plan is checked or drawn", () => {
    expect(faultsOf("job", job, (value) => verifyFit(value, fit))).toEqual([]);
    expect(faultsOf("job", job, (value) => drawStock(value, fit, tell).svg)).toEqual([]);
  });

  test("of a plan that is checked or drawn", () => {
    expect(faultsOf("fit", fit, (value) => verifyFit(job, value))).toEqual([]);
    expect(faultsOf("fit", fit, (value) => drawStock(job, value, tell).svg)).toEqual([]);
    const short: StockFit = {
      ...fit,
      status: "short",
      shortage: "proven",
      stopped: "time",
      unplaced: [{ piece: "p", count: 1 }],
    };
    expect(faultsOf("fit", short, (value) => verifyFit(job, value))).toEqual([]);
  });

  test("of the options of a fit", async () => {
    const options = { timeLimit: 100, stepLimit: 1e4, onProgress: () => undefined };
    expect(faultsOf("", options, (value) => fitStock(job, value))).toEqual([]);
    for (const signal of MISTAKES) {
      // What is no abort signal is refused, or is not aborted.
      const answer = await fitStockAsync(job, { stepLimit: 1e4, signal: signal as never }).catch(
        (error: unknown) => error,
      );
      if (!isInputError(answer)) expect(answer).toMatchObject({ cost: fit.cost });
    }
  });

  test("of the options of a frame's job", () => {
    const frame = frameGeometry({ sides: 6, opening: { side: 20 }, profile: molding({ width: 4, thickness: 2 }) });
    const options = {
      kerf: 0.5,
      rough: { method: "square", allowance: 1 },
      sticks: [{ id: "pine", length: 240, count: 3, cost: 4, defects: [{ start: 5, end: 7 }] }],
      ...{ trim: 1, keep: 20, credit: 0.1, resolution: 0.01, frames: 2, bothFacesGood: true },
    };
    expect(faultsOf("", options, (value) => stockJob(frame, value))).toEqual([]);
    expect(() => stockJob(frame, { ...options, bothFaceGood: true } as never)).toThrow(
      "Expected no key but `kerf`, `rough`, `sticks`, `trim`, `keep`, `credit`, `resolution`, `frames`, `bothFacesGood`, got `bothFaceGood`",
    );
    expect(() => stockJob(frame, { ...options, rough: { method: "square", allowence: 1 } } as never)).toThrow(
      "`allowence`",
    );
    expect(() => stockJob(frame, { ...options, sticks: [{ id: "pine", lenght: 240 }] } as never)).toThrow(
      "did you mean `length`?",
    );
  });
});
