import { readFileSync, writeFileSync } from "node:fs";
import { format } from "prettier";
import { expect, test } from "vitest";
import { SOURCES } from "./sources.js";

const PAGE = "docs/guides/sources.md";
const TABLE = /(<!-- table of sources -->\n)[\s\S]*?(<!-- end of table -->)/;

/** The table as it must stand on the page. */
function tableText(): string {
  const rows = SOURCES.map(({ about, source, seen, values }) => `| ${about} | ${source} | ${seen} | ${values} |`);
  const count = (seen: string): number =>
    SOURCES.filter((row) => row.seen === seen).reduce((sum, row) => sum + row.values, 0);
  const total = SOURCES.reduce((sum, row) => sum + row.values, 0);
  return [
    "| about | source | seen | values |",
    "| --- | --- | --- | ---: |",
    ...rows,
    "",
    `${total} values in all: ${count("read")} read, ${count("from memory")} from memory, ${count("common practice")} of common practice.`,
  ].join("\n");
}

test("the page of sources counts what the tests check", async () => {
  const page = readFileSync(PAGE, "utf8");
  expect(page).toMatch(TABLE);
  const filled = page.replace(TABLE, (_, start: string, end: string) => `${start}\n${tableText()}\n\n${end}`);
  const wanted = await format(filled, { parser: "markdown", printWidth: 120 });
  if (process.env["DOC_VALUES"] === "write") writeFileSync(PAGE, wanted);
  else expect(page).toBe(wanted);
});

test("every source has values, and no source stands twice for the same thing", () => {
  expect(SOURCES.filter(({ values }) => !(values > 0))).toEqual([]);
  expect(new Set(SOURCES.map(({ about, source }) => `${about}|${source}`)).size).toBe(SOURCES.length);
});
