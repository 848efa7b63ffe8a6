import { describe, expect, test } from "vitest";
import { listEntries, listFiles, readProjectFile } from "../house/project.js";
import { isNamed } from "./named-functions.js";

/** Where a reader meets a function in its use: the guides, and the examples. */
const TEXTS: readonly string[] = [
  ...listFiles("docs/guides", ".md"),
  ...listFiles("examples", ".ts"),
  ...listFiles("examples", ".ipynb"),
].map(readProjectFile);

const isAnywhere = (name: string): boolean => TEXTS.some((text) => isNamed(name, text));
const entries = listEntries().filter((entry) => entry !== "miterwright");

describe.each(entries)("%s", (entry) => {
  test("has no function that neither a guide nor an example names", async () => {
    const exported = (await import(/* @vite-ignore */ entry)) as Record<string, unknown>;
    const functions = Object.keys(exported).filter((name) => typeof exported[name] === "function");
    expect(functions.filter((name) => !isAnywhere(name))).toEqual([]);
  });
});

test.each([
  ["in words", "Use `sawSetting` for that.", true],
  ["in code", "const a = sawSetting(cut);", true],
  ["as a link", "[how](sawSetting)", true],
  ["as a part of another name", "Use `preciseSawSetting` and `sawSettings`.", false],
  ["as ordinary words", "the saw setting", false],
])("a name is found %s or not: %j", (_, text, found) => {
  expect(isNamed("sawSetting", text)).toBe(found);
});
