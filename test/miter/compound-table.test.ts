import { describe, expect, expectTypeOf, test } from "vitest";
import {
  compoundMiter,
  compoundMiterTable,
  type CompoundMiter,
  type CompoundMiterRow,
  type CompoundMiterTableOptions,
} from "miterwright/miter";

describe("compoundMiterTable", () => {
  test("has every number of sides at every slope, in the order given", () => {
    const rows = compoundMiterTable({ sides: [8, 3], slopes: [-10, 45, 90] });
    expect(rows.map(({ sides, slope }) => [sides, slope])).toStrictEqual([
      [8, -10],
      [8, 45],
      [8, 90],
      [3, -10],
      [3, 45],
      [3, 90],
    ]);
    for (const { sides, slope, ...angles } of rows) expect(angles).toStrictEqual(compoundMiter({ sides, slope }));
  });

  test("is empty without sides or slopes", () => {
    expect(compoundMiterTable({ sides: [], slopes: [45] })).toStrictEqual([]);
    expect(compoundMiterTable({ sides: [4], slopes: [] })).toStrictEqual([]);
  });

  const cases: readonly (readonly [given: unknown, code: string, path: string, message: string])[] = [
    [{ slopes: [45] }, "missing", "sides", "Expected `sides` to be an array of numbers of sides, got undefined"],
    [{ sides: [4], slopes: 45 }, "type", "slopes", "Expected `slopes` to be an array of slopes, got 45 (number)"],
    [
      { sides: [4, 2], slopes: [45] },
      "range",
      "sides[1]",
      "Expected `sides[1]` to be an integer from 3 to 1000000, got 2 (number)",
    ],
    [
      { sides: [4], slopes: [45, 100] },
      "range",
      "slopes[1]",
      "Expected `slopes[1]` to be degrees from -90 to 90, got 100 (number)",
    ],
    ["4 by 45", "type", "options", 'Expected `options` to be an object, got "4 by 45" (string)'],
  ];
  test.each(cases)("refuses %o", (given, code, path, message) => {
    expect(() => compoundMiterTable(given as CompoundMiterTableOptions)).toThrow(
      expect.objectContaining({ name: "InputError", code, path, message }) as Error,
    );
  });

  test("its rows are compound miters with their sides and slope", () => {
    expectTypeOf(compoundMiterTable).returns.toEqualTypeOf<CompoundMiterRow[]>();
    expectTypeOf<CompoundMiterRow>().toExtend<CompoundMiter>();
  });
});
