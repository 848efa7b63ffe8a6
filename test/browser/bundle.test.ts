import * as library from "miterwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { sameValue, writeLiteral } from "../doc-code/literal.js";
import { bundleProgram } from "../house/measure-bundle.js";
import { openBrowser, type OpenBrowser, type OpenPage } from "./open-browser.js";

let browser: OpenBrowser;
let opened: OpenPage;
beforeAll(async () => {
  browser = await openBrowser();
  const { code } = await bundleProgram('export * from "miterwright";', { format: "iife", globalName: "miterwright" });
  browser.serve("bundle.js", code);
  opened = await browser.open(
    browser.serve(
      "bundle.html",
      '<!doctype html><html lang="en"><meta charset="utf-8"><title>Bundle</title><script src="bundle.js"></script></html>',
    ),
  );
});
afterAll(() => browser.close());

/** Calls by the name of a function and its arguments, so that both sides can make them. */
const CALLS: readonly { readonly name: keyof typeof library; readonly args: readonly unknown[] }[] = [
  { name: "compoundMiter", args: [{ sides: 7, slope: 38 }] },
  { name: "regularPolygon", args: [{ sides: 11, acrossFlats: 123.4 }] },
  { name: "polygonCorners", args: [{ sides: 13, apothem: 50 }, "corner-down"] },
  {
    name: "joinCorner",
    args: [{ turn: 52, first: { slope: 30, thickness: 18 }, second: { slope: 41, thickness: 12 } }],
  },
];

test("the bundle loads from a file, without a complaint", async () => {
  expect(opened.complaints).toEqual([]);
  const names = await opened.page.evaluate("Object.keys(miterwright)");
  expect((names as string[]).sort()).toEqual(Object.keys(library).sort());
});

test.each(CALLS)("$name answers as it does in Node", async ({ name, args }) => {
  const here: unknown = (library[name] as (...given: readonly unknown[]) => unknown)(...args);
  const there: unknown = await opened.page.evaluate(`miterwright.${name}(...${JSON.stringify(args)})`);
  expect(sameValue(here, there), `${writeLiteral(here)} in Node, ${writeLiteral(there)} in the browser`).toBe(true);
});

test("an error of the bundle tells what it tells in Node", async () => {
  const call =
    "(() => { try { miterwright.compoundMiter({ sides: 2, slope: 0 }); } catch (e) { return [e.name, e.path, e.message]; } })()";
  expect(await opened.page.evaluate(call)).toEqual([
    "InputError",
    "sides",
    "Expected `sides` to be an integer from 3 to 1000000, got 2 (number)",
  ]);
});
