import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exampleJob } from "../../docs/bench/example-job.js";
import { FIELDS, LISTS } from "../../docs/bench/field-table.js";
import type { Field, FieldName, ListName, Values } from "../../docs/bench/fields.js";
import * as files from "../../docs/bench/job-file.js";
import * as links from "../../docs/bench/job-link.js";
import { LANGUAGE } from "../../docs/bench/language.js";
import { emptyJob, FIELD_NAMES, isBlank, type JobState, type Row } from "../../docs/bench/job-state.js";

const { jobToFile } = files;
const { jobToFragment } = links;
const SAID = LANGUAGE.page.opened;
const jobFromFile = (text: string): links.OpenedJob => files.jobFromFile(text, SAID);
const jobFromFragment = (fragment: string): links.OpenedJob => links.jobFromFragment(fragment, SAID);
const leftOutWords = (names: readonly string[]): string => links.leftOutWords(names, SAID);

const typed = fc.oneof(fc.constantFrom("", "5 7/16", "1' 2 1/2\"", "22°30'", "a & b = c # ?", "größer"), fc.string());

const textOf = ({ choices }: Field): fc.Arbitrary<string> =>
  choices === undefined ? typed : fc.constantFrom(...choices);

const values: fc.Arbitrary<Values> = fc
  .tuple(...FIELD_NAMES.map((name) => textOf(FIELDS[name])))
  .map((texts) => Object.fromEntries(FIELD_NAMES.map((name, index) => [name, texts[index]!])) as Values);

const rows = (list: ListName): fc.Arbitrary<Row[]> =>
  fc.array(
    fc.record(Object.fromEntries(Object.entries(LISTS[list]).map(([column, field]) => [column, textOf(field)]))),
    { maxLength: 4 },
  );

const states: fc.Arbitrary<JobState> = fc.record({
  values,
  lists: fc.record({ layers: rows("layers"), sticks: rows("sticks") }),
});

/** What comes back: blank rows are no part of a job, and a column that says nothing may be missing. */
function meant({ values: given, lists }: JobState): unknown {
  const filled = (list: ListName): unknown[] =>
    lists[list]
      .filter((row) => !isBlank(row))
      .map((row) => Object.fromEntries(Object.entries(row).filter(([, text]) => text !== "")));
  return { values: given, layers: filled("layers"), sticks: filled("sticks") };
}

// A link is text in UTF-8, which has no halves of characters.
const whole = (state: JobState): boolean => !/\p{Cs}/u.test(jobToFile(state)) && !/\\ud[89a-f]/i.test(jobToFile(state));

describe("a job comes back as it was typed", () => {
  test("through a link", () => {
    fc.assert(
      fc.property(states.filter(whole), (state) => {
        const opened = jobFromFragment(`#${jobToFragment(state)}`);
        expect(opened).toMatchObject({ ok: true, leftOut: [] });
        if (opened.ok) expect(meant(opened.state)).toEqual(meant(state));
      }),
    );
  });

  test("through a file", () => {
    fc.assert(
      fc.property(states, (state) => {
        const opened = jobFromFile(jobToFile(state));
        expect(opened).toMatchObject({ ok: true, leftOut: [] });
        if (opened.ok) expect(meant(opened.state)).toEqual(meant(state));
      }),
    );
  });
});

describe("a link", () => {
  test("holds what was touched, in words that can be read", () => {
    expect(jobToFragment(emptyJob())).toBe("");
    const { values: given, lists } = exampleJob();
    const fragment = jobToFragment({ values: { ...given, title: "", unit: "in" }, lists: { ...lists, layers: [] } });
    expect(fragment).toBe(
      "v=1&unit=in&width=340&height=260&allowance=2&clearance=1.5&sides=9&moldingWidth=60&thickness=24&rabbetWidth=8&rabbetDepth=16&slope=35&sticks.0.length=2400&sticks.0.name=ash%2C+full+stick&sticks.1.length=1150&sticks.1.count=2&sticks.1.cost=300&sticks.1.name=ash%2C+offcut+in+the+rack",
    );
  });

  test("of another version is refused, in words", () => {
    expect(jobFromFragment("#v=2&sides=9")).toEqual({
      ok: false,
      why: "This link was made by a newer bench page (version 2); this one reads version 1. Reload the page, or open it where it was made.",
    });
    const unversioned = "This link does not say which version it is, so it can't be read: version 1 is expected.";
    expect(jobFromFragment("#sides=9")).toEqual({ ok: false, why: unversioned });
    expect(jobFromFragment("#v=old&sides=9")).toEqual({ ok: false, why: unversioned });
  });

  test("says what it held that is not known", () => {
    const opened = jobFromFragment(
      "v=1&sides=9&color=red&unit=ell&sticks.0.length=900&sticks.900.length=1&sticks.0.age=4",
    );
    expect(opened).toMatchObject({
      ok: true,
      state: { values: { sides: "9", unit: "mm" }, lists: { sticks: [{ length: "900" }] } },
      leftOut: ["color", "unit", "sticks.900.length", "sticks.0.age"],
    });
  });

  test("of nothing is the empty form", () => {
    expect(jobFromFragment("")).toEqual({ ok: true, state: emptyJob(), leftOut: [] });
  });
});

describe("a file", () => {
  const file = (change: object): string =>
    JSON.stringify({ ...(JSON.parse(jobToFile(exampleJob())) as object), ...change });
  const why = (text: string): string => {
    const opened = jobFromFile(text);
    return opened.ok ? "opened" : opened.why;
  };

  test("says what it is", () => {
    expect(JSON.parse(jobToFile(exampleJob()))).toMatchObject({
      format: "miterwright-bench-job",
      version: 1,
      fields: { sides: "9" },
      sticks: [{ length: "2400" }, { count: "2" }],
    });
  });

  test("that is none of ours is refused, in words", () => {
    expect(why("{")).toBe("This file is no job of the bench page: it is not JSON.");
    const other = "This file is no job of the bench page: it does not begin with the format miterwright-bench-job.";
    for (const text of ["null", "[]", '"job"', '{"version":1}', file({ format: "other" })])
      expect(why(text)).toBe(other);
    expect(why(file({ version: 7 }))).toMatch(/^This file was made by a newer bench page \(version 7\)/);
    for (const version of [0, -1, 1.5, null, "new"]) {
      expect(why(file({ version }))).toBe(
        "This file does not say which version it is, so it can't be read: version 1 is expected.",
      );
    }
    expect(why(file({ fields: null }))).toBe("This file is damaged: its fields are missing.");
    const damaged = "This file is damaged: a list in it is none, or has more than 500 rows.";
    expect(why(file({ sticks: {} }))).toBe(damaged);
    expect(why(file({ layers: Array.from({ length: 501 }, () => ({})) }))).toBe(damaged);
  });

  test("says what it held that can't be used, and keeps the rest", () => {
    const fields: Partial<Record<FieldName | "color", unknown>> = {
      sides: "7",
      width: 300,
      pose: "flying",
      color: "red",
    };
    expect(jobFromFile(file({ fields, sticks: [{ length: "900", age: "4", count: 2 }], layers: undefined }))).toEqual({
      ok: true,
      state: {
        values: { ...emptyJob().values, sides: "7" },
        lists: { layers: [], sticks: [{ length: "900" }] },
      },
      leftOut: ["width", "pose", "color", "sticks[0].age", "sticks[0].count"],
    });
  });
});

describe("junk of a megabyte", () => {
  const LONG = "x".repeat(1_000_000);
  /** All that the page says or shows of what it opened. */
  const echoOf = (opened: ReturnType<typeof jobFromFragment>): string =>
    opened.ok ? leftOutWords(opened.leftOut) + JSON.stringify(opened.state) : opened.why;

  test.each([
    ["in one name", `v=1&sides=5&${LONG}=1`, "Left out, since this page can't take it: xxxx"],
    ["in a field", `v=1&sides=5&title=${LONG}`, "Left out, since this page can't take it: title."],
    ["in a field of a number", `v=1&width=${"9".repeat(1_000_000)}`, "Left out, since this page can't take it: width."],
    ["in a row", `v=1&sticks.0.name=${LONG}`, "Left out, since this page can't take it: sticks.0.name."],
    ["in its version", `v=${"9".repeat(1_000_000)}&sides=5`, "This link does not say which version it is"],
    ["alone", LONG, "This link does not say which version it is"],
  ])("is not echoed by a link that has it %s", (_, fragment, start) => {
    const echo = echoOf(jobFromFragment(fragment));
    expect(echo.slice(0, start.length)).toBe(start);
    expect(echo.length).toBeLessThan(2500);
  });

  test("is not echoed by a file", () => {
    const base = JSON.parse(jobToFile(emptyJob())) as Record<string, Record<string, unknown>>;
    const file = {
      ...base,
      fields: { ...base["fields"], title: LONG, [LONG]: "1" },
      sticks: [{ name: LONG, [LONG]: "1" }],
    };
    const opened = jobFromFile(JSON.stringify(file));
    expect(opened).toMatchObject({ ok: true, state: { values: emptyJob().values } });
    expect(echoOf(opened).length).toBeLessThan(2500);
  });

  test("is named so that it can be found, and nothing in a name is taken for more than letters", () => {
    expect(leftOutWords([])).toBe("");
    expect(leftOutWords(["color", "sticks[0].age", "a\u202eb<i>"])).toBe(
      "Left out, since this page can't take it: color, sticks[0].age, a?b?i?.",
    );
    expect(leftOutWords(["a", "b", "c", "d", "e", "f", "g"])).toBe(
      "Left out, since this page can't take it: a, b, c, d, e and 2 more.",
    );
  });
});
