import { expect, test } from "vitest";
import { HAZARD_CASES } from "../frame/hazard-cases.js";
import { listFiles, readProjectFile } from "../house/project.js";

const guide = readProjectFile("docs/guides/hazards.md");
const source = listFiles("src/frame/hazards", ".ts").map(readProjectFile).join("\n");

/** The codes of the guide's tables of rules, in order. */
const listed = [...guide.matchAll(/^\| `([a-z-]+)`/gm)].map(([, code]) => code!);

test("the guide lists every hazard that plans can carry, each once, and no other", () => {
  expect([...listed].sort()).toEqual(Object.keys(HAZARD_CASES).sort());
});

test("the guide justifies every signal of every hazard, the gravest first", () => {
  const order = ["danger", "warning", "caution", "notice"];
  const rows = [...guide.matchAll(/^\| (danger|warning|caution|notice) +\| `([a-z-]+)`[^|]*\| ([^|]*?) *\|$/gm)];
  const justified = rows.map(([, signal, code]) => `${code!}: ${signal!}`);
  const carried = Object.entries(HAZARD_CASES).flatMap(([code, { signals }]) =>
    signals.map((signal) => `${code}: ${signal}`),
  );
  expect([...justified].sort()).toEqual(carried.sort());
  const ranks = rows.map(([, signal]) => order.indexOf(signal!));
  expect(ranks).toEqual([...ranks].sort());
  for (const [, , , why] of rows) expect(why).toMatch(/^[A-Z].*\.$/);
});

test("the guide says what the signal words mean, and by which standards", () => {
  expect(guide).toContain("ANSI Z535 and ISO 3864");
  for (const signal of ["danger", "warning", "caution", "notice"])
    expect(guide).toMatch(new RegExp(`^\\| ${signal} +\\| [a-z]`, "m"));
});

test("the guide names every limit that the rules have, with its unit", () => {
  const limits = [...source.matchAll(/^(?:export )?const [A-Z_]+: number = ([\d.]+);/gm)].map(([, value]) => value!);
  const round = [...source.matchAll(/: RoundLength = \{ millimeters: ([\d.]+), inches: [\d.]+ \}/g)].map(
    ([, mm]) => mm!,
  );
  expect(limits.length).toBeGreaterThan(4);
  expect(round.length).toBeGreaterThan(9);
  const isNamed = (limit: string): boolean =>
    new RegExp(`(?<![\\d.])${limit.replace(".", "\\.")} mm`).test(guide) ||
    (Number(limit) >= 1000 && guide.includes(`${Number(limit) / 1000} m `));
  expect(round.filter((limit) => !isNamed(limit))).toEqual([]);
  const missing = limits.filter(
    (limit) => !new RegExp(`(?<![\\d.])${limit.replace(".", "\\.")} (?:mm|degrees|kg|times)`).test(guide),
  );
  expect(missing).toEqual([]);
});
