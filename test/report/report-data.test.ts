import { describe, expect, test } from "vitest";
import { deepFreeze, throughJson } from "../frame/briefs.js";
import { objectsIn } from "../house/objects-in.js";
import { spoil } from "../house/spoil.js";
import { TOLD } from "./reports.js";

describe.each(Object.entries(TOLD))("the report of %s", (_, { told, describe: tell }) => {
  const report = tell(told);

  test("is plain data, which JSON and structuredClone leave as it is", () => {
    expect(throughJson(report)).toStrictEqual(report);
    expect(structuredClone(report)).toStrictEqual(report);
  });

  test("shares no object with what is told, nor with another report", () => {
    const frozen = deepFreeze(structuredClone(told));
    const own = objectsIn(frozen);
    const [one, other] = [tell(frozen), tell(frozen)];
    const ofOther = objectsIn(other);
    expect([...objectsIn(one)].filter((object) => own.has(object) || ofOther.has(object))).toEqual([]);
  });

  test("is the same of what came back from JSON", () => {
    expect(tell(throughJson(told))).toStrictEqual(report);
  });

  test("stays as it is when what was told is changed afterwards", () => {
    const own = structuredClone(told);
    const made = tell(own);
    const before = structuredClone(made);
    spoil(own);
    expect(own).not.toEqual(told);
    expect(made).toStrictEqual(before);
  });

  test("has sections with titles, none of them empty or twice, and blocks that differ in name or figure", () => {
    const names = report.sections.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const { title, blocks } of report.sections) {
      expect(title).not.toBe("");
      expect(blocks.length).toBeGreaterThan(0);
      const keys = blocks.map((block) =>
        JSON.stringify(block.kind === "figure" ? [block.name, block.step, block.layouts] : [block.name]),
      );
      expect(new Set(keys).size).toBe(keys.length);
    }
  });

  test("holds texts that are written out, without a hole, a code or a value that is none", () => {
    const texts = [...JSON.stringify(report).matchAll(/"(?:[^"\\]|\\.)*"/g)].map(([text]) => text);
    expect(texts.filter((text) => /NaN|undefined|Infinity|\[object|\bnull\b/.test(text))).toEqual([]);
  });
});
