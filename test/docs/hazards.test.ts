import { expect, test } from "vitest";
import { HAZARD_CASES } from "../frame/hazard-cases.js";
import { planFrame } from "miterwright/frame";
import { readProjectFile } from "../house/project.js";

const guide = readProjectFile("docs/guides/hazards.md");

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

/** The numbers of a hazard that are limits of its rule. */
const LIMITS = ["limit", "usual", "lastStretch", "pushStick"];
/** Rows that name a limit by another row's, or that name what is multiplied to a limit. */
const BEHIND: Readonly<Record<string, (limit: number) => string>> = {
  "glass-tolerance": () => "the same",
  "large-pane": (limit) => `${limit / 2} times its thickness`,
};

/** How the guide may write a limit. */
function writtenLimit(value: number, kind: string): string[] {
  if (kind === "length") return value < 1000 ? [`${value} mm`] : [`${value} mm`, `${value / 1000} m `];
  return [kind === "angle" ? `${value} degrees` : `${value} kg`];
}

test.each(Object.entries(HAZARD_CASES))(
  "the guide's row for %s names its limits, with their units",
  (code, { raises }) => {
    const row = guide.split("\n").find((line) => line.startsWith(`| \`${code}\``))!;
    // The gauge's reach is the rule's own where the saw does not say it.
    const briefs = code === "deep-panel" ? raises.map((brief) => ({ ...brief, saw: undefined })) : raises;
    const hazards = briefs.flatMap((brief) => planFrame(brief).hazards).filter((hazard) => hazard.code === code);
    expect(hazards).not.toEqual([]);
    const words = ` ${row.replaceAll("<br>", " ")}`;
    for (const { numbers, kinds } of hazards) {
      for (const name of LIMITS.filter((one) => one in numbers)) {
        const limit = numbers[name]!;
        const written = BEHIND[code] === undefined ? writtenLimit(limit, kinds[name]!) : [BEHIND[code](limit)];
        expect([written, written.some((text) => words.includes(` ${text}`))]).toEqual([written, true]);
      }
    }
  },
);

test("the cases have limits to name", () => {
  const hazards = Object.values(HAZARD_CASES).flatMap(({ raises }) =>
    raises.flatMap((brief) => planFrame(brief).hazards),
  );
  const limits = hazards.flatMap(({ numbers }) => LIMITS.flatMap((name) => numbers[name] ?? []));
  expect(new Set(limits).size).toBeGreaterThan(15);
});
