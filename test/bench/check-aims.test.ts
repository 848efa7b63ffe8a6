import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { AIMS, type Aim } from "./aims.js";
import { betterOf, missedAims, timesAim } from "./check-aims.js";
import { leastTimes } from "./measure.js";
import { readArguments } from "./read-arguments.js";
import type { Row } from "./row.js";

const BARE = "times as long as bare trigonometry";
const OTHER = "times as fast as the other library";
const aims: readonly Aim[] = [
  { name: "planFrame", meaning: BARE, aim: 3000 },
  { name: "parseLength", meaning: OTHER, aim: 4 },
];
const rows = (planFrame: number, parseLength: number): Row[] => [
  { name: "planFrame", meaning: BARE, value: planFrame },
  { name: "parseLength", meaning: OTHER, value: parseLength },
];

describe("missedAims", () => {
  test("lets pass what is up to twice as bad as its aim", () => {
    expect(missedAims(rows(3000, 4), aims)).toEqual([]);
    expect(missedAims(rows(6000, 2), aims)).toEqual([]);
    expect(missedAims(rows(1, 1000), aims)).toEqual([]);
  });

  test("tells a row beyond twice its aim, and by how much", () => {
    expect(missedAims(rows(6001, 4), aims)).toEqual([
      "planFrame: 6000 times as long as bare trigonometry, which misses the aim of 3000 by a factor of 2.0; 2 is allowed",
    ]);
    expect(missedAims(rows(30_000, 1), aims)).toEqual([
      "planFrame: 30000 times as long as bare trigonometry, which misses the aim of 3000 by a factor of 10.0; 2 is allowed",
      "parseLength: 1 times as fast as the other library, which misses the aim of 4 by a factor of 4.0; 2 is allowed",
    ]);
  });

  test("tells a value that is no number", () => {
    expect(missedAims(rows(NaN, 4), aims)).toHaveLength(1);
    expect(missedAims(rows(3000, NaN), aims)).toHaveLength(1);
  });

  test("tells a row without an aim and an aim without a row: a new name must not lose its guard", () => {
    const renamed = rows(3000, 4).map((row) => (row.name === "planFrame" ? { ...row, name: "frame" } : row));
    expect(missedAims(renamed, aims)).toEqual([
      "frame: has no aim in bench/aims.ts",
      "planFrame: has an aim, but was not measured",
    ]);
  });

  test("counts how bad a value is in either direction", () => {
    expect(rows(9000, 1).map((row, k) => timesAim(row, aims[k]!))).toEqual([3, 4]);
  });
});

test("of two runs the better value of a row counts", () => {
  expect(betterOf(rows(9000, 4), rows(3000, 1))).toEqual(rows(3000, 4));
});

test("the aims of single corners, frames and plans are those of the design", () => {
  const aimOf = (name: string): number | undefined => AIMS.find((aim) => aim.name === name)?.aim;
  expect(aimOf("compoundMiterKernel")).toBe(1.7);
  expect(aimOf("compoundMiter({ sides, slope })")).toBe(3);
  expect(aimOf("frameGeometry, 9 sides")).toBe(400);
  expect(aimOf("planFrame, 9 sides")).toBe(3000);
  expect(new Set(AIMS.map(({ name }) => name)).size).toBe(AIMS.length);
});

test("every job is called with a running number and has a time of its own", () => {
  const seen: number[] = [];
  const job = (k: number): number => seen.push(k);
  const least = leastTimes({ one: job, other: (k) => k }, 20);
  expect(Object.keys(least)).toEqual(["one", "other"]);
  expect(Object.values(least).every((time) => time > 0 && time < Infinity)).toBe(true);
  expect(seen.slice(0, 2)).toEqual([0, 1]);
  expect(() => leastTimes({ broken: () => NaN }, 1)).toThrow("bug: a result is not a number");
});

describe("the command", () => {
  test("takes `--check` or nothing", () => {
    expect(readArguments([])).toEqual({ check: false });
    expect(readArguments(["--check"])).toEqual({ check: true });
  });

  test("refuses an argument that it does not know", () => {
    expect(() => readArguments(["--chekc"])).toThrow("Expected no argument but `--check`, got `--chekc`");
    expect(() => readArguments(["--check", "frame"])).toThrow("Expected no argument but `--check`, got `frame`");
  });

  test("ends with an error then, before it measures anything", () => {
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      ["--import", "tsx", "test/bench/run.ts", "--chekc"],
      {
        encoding: "utf8",
      },
    );
    expect([status, stdout]).toEqual([1, ""]);
    expect(stderr).toContain("got `--chekc`");
  });
});
