import { seasonalMovement, woodNames, woodSpecies } from "miterwright/wood";
import { describe, expect, test } from "vitest";

describe("a name", () => {
  test.each([
    ["white oak", "white oak"],
    ["oak, white", "white oak"],
    ["White Oak", "white oak"],
    ["Pine, eastern white", "eastern white pine"],
    ["douglas fir (coast)", "coast Douglas-fir"],
    ["YELLOW POPLAR", "yellow-poplar"],
    ["port orford cedar", "Port-Orford-cedar"],
  ])("typed as %j is %s", (typed, name) => {
    expect(woodSpecies(typed).name).toBe(name);
  });

  test("is one of a kind, whatever the order of its words", () => {
    for (const name of woodNames()) expect(woodSpecies(name).name).toBe(name);
    const sorted = woodNames().map((name) =>
      name
        .toLowerCase()
        .split(/[^a-z]+/)
        .sort()
        .join(" "),
    );
    expect(new Set(sorted).size).toBe(woodNames().length);
  });

  test("list is the caller's own, kinds together", () => {
    const names = woodNames();
    names.length = 0;
    expect(woodNames().length).toBeGreaterThan(90);
    const oaks = woodNames().map((name) => name.endsWith(" oak"));
    expect(oaks.lastIndexOf(true) - oaks.indexOf(true) + 1).toBe(oaks.filter(Boolean).length);
  });
});

describe("a wood that is printed with coefficients alone", () => {
  test("has the shrinkage that leads to them", () => {
    const apple = woodSpecies("apple");
    expect(apple.seen).toEqual({ shrinkage: null, coefficients: "print", specificGravity: null });
    expect(apple.coefficients).toEqual({ radial: 0.00205, tangential: 0.00376 });
    const { fraction } = seasonalMovement({ species: apple, width: 1, grain: "flat-sawn", from: 10, to: 11 });
    expect(fraction).toBeCloseTo(0.00376, 15);
  });

  test("can be given by hand, and moves like it", () => {
    const board = { width: 200, grain: "flat-sawn", from: 7, to: 12 } as const;
    const own = { coefficients: { radial: 0.00205, tangential: 0.00376 } };
    expect(seasonalMovement({ ...board, species: own })).toEqual(seasonalMovement({ ...board, species: "apple" }));
  });
});

test("a coefficient that the table has not is that of its shrinkage, one by one", () => {
  // Black willow is printed with a radial coefficient only.
  const { coefficients, tangential } = woodSpecies("black willow");
  expect(coefficients.radial).toBe(0.00112);
  expect(coefficients.tangential).toBeCloseTo(tangential / (3000 - 20 * tangential), 15);
});

test("a group's coefficient stands beside the wood's own shrinkage, and each method goes by its own", () => {
  const board = { species: "sweet birch", width: 1000, grain: "quarter-sawn", from: 10, to: 11 } as const;
  expect(seasonalMovement({ ...board, method: "coefficient" }).change).toBeCloseTo(2.56, 12);
  expect(seasonalMovement(board).change).toBeCloseTo(1000 * (6.5 / (3000 - 20 * 6.5)), 12);
});
