import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { joinCorner } from "miterwright/miter";
import {
  parseSaw,
  tryParseSaw,
  cradleFor,
  lieSection,
  miterSaw,
  placeCut,
  stopContact,
  tableSaw,
} from "miterwright/saw";
import { deepFreeze, rabbeted, throughJson } from "../frame/briefs.js";

const sound = tableSaw();

describe("parseSaw", () => {
  test("takes the usual saws, and their copies from JSON", () => {
    for (const saw of [tableSaw(), miterSaw({ depth: 90, depthAt45: 60, crosscut: 300, gaugeReach: 280 })]) {
      expect(parseSaw(saw)).toEqual(saw);
      expect(parseSaw(throughJson(saw))).toEqual(saw);
    }
  });

  test("refuses what a saw does not have, and names the nearest field that it has", () => {
    expect(() => parseSaw({ ...sound, dept: 90 })).toThrow(
      "Expected `saw` to have no key but `fence`, `miter`, `bevel`, `depth`, `depthAt45`, `crosscut`, `gaugeReach`, got `dept`; did you mean `depth`?",
    );
  });

  test("gives a copy, or every issue at once", () => {
    const outcome = tryParseSaw(sound);
    expect(outcome).toEqual({ ok: true, value: sound });
    expect(outcome.ok && outcome.value.miter !== sound.miter).toBe(true);
    const wrong = tryParseSaw({ ...sound, fence: "top", miter: { ...sound.miter, left: 91, step: 0 }, depth: -1 });
    expect(wrong.ok ? [] : wrong.issues.map(({ path, code }) => [path, code])).toEqual([
      ["saw.fence", "unknown"],
      ["saw.miter.left", "range"],
      ["saw.miter.step", "range"],
      ["saw.depth", "range"],
    ]);
    expect(tryParseSaw(null)).toMatchObject({ ok: false, issues: [{ path: "saw", code: "type" }] });
  });

  test.each([
    [{ fence: "top" }, 'Expected `saw.fence` to be one of "near", "far", got "top" (string)'],
    [{ miter: undefined }, "Expected `saw.miter` to be an object, got undefined"],
    [{ miter: { ...sound.miter, left: 91 } }, "Expected `saw.miter.left` to be degrees from 0 to 90, got 91 (number)"],
    [
      { miter: { ...sound.miter, right: "60" } },
      'Expected `saw.miter.right` to be degrees from 0 to 90, got "60" (string)',
    ],
    [
      { miter: { ...sound.miter, reads: "from-vertical" } },
      'Expected `saw.miter.reads` to be one of "from-square", "from-fence", got "from-vertical" (string)',
    ],
    [
      { miter: { ...sound.miter, step: 50 } },
      "Expected `saw.miter.step` to be degrees from 0.000001 to 45, got 50 (number)",
    ],
    [{ bevel: { ...sound.bevel, left: -1 } }, "Expected `saw.bevel.left` to be degrees from 0 to 90, got -1 (number)"],
    [
      { bevel: { ...sound.bevel, right: NaN } },
      "Expected `saw.bevel.right` to be degrees from 0 to 90, got NaN (number)",
    ],
    [
      { bevel: { ...sound.bevel, reads: "from-square" } },
      'Expected `saw.bevel.reads` to be one of "from-vertical", "from-table", got "from-square" (string)',
    ],
    [
      { bevel: { ...sound.bevel, step: 0 } },
      "Expected `saw.bevel.step` to be degrees from 0.000001 to 45, got 0 (number)",
    ],
    [{ depth: -0 }, "Expected `saw.depth` to be a positive length (1e-100 to 1e100), got 0 (number)"],
    [{ gaugeReach: 0 }, "Expected `saw.gaugeReach` to be a positive length (1e-100 to 1e100), got 0 (number)"],
    [{ depthAt45: 0 }, "Expected `saw.depthAt45` to be a positive length (1e-100 to 1e100), got 0 (number)"],
    [
      { crosscut: Infinity },
      "Expected `saw.crosscut` to be a positive length (1e-100 to 1e100), got Infinity (number)",
    ],
  ])("refuses %j", (changes, message) => {
    expect(() => parseSaw({ ...sound, ...changes })).toThrow(message);
  });
});

test.each([tableSaw, miterSaw])("a usual saw takes no unsound change", (usual) => {
  expect(() => usual({ fence: "top" } as never)).toThrow(
    'Expected `changes.fence` to be one of "near", "far", got "top" (string)',
  );
  expect(() => usual({ bevel: undefined } as never)).toThrow("Expected `changes.bevel` to be an object, got undefined");
  expect(() => usual(null as never)).toThrow("Expected `changes` to be an object, got null");
});

test("every function of the saw leaves its input alone, and takes copies from JSON", () => {
  fc.assert(
    fc.property(fc.integer({ min: 3, max: 12 }), fc.double({ min: -80, max: 80, noNaN: true }), (sides, slope) => {
      const board = { slope, thickness: 1 };
      const cut = deepFreeze(joinCorner({ turn: 360 / sides, first: board, second: board }).first);
      const profile = deepFreeze(throughJson(rabbeted));
      const options = deepFreeze({ slope, lay: "flat" as const });
      const placing = deepFreeze({ lay: "flat" as const, saw: tableSaw(), kept: "left" as const });
      expect(placeCut(throughJson(cut), throughJson(placing))).toEqual(placeCut(cut, placing));
      expect(lieSection(throughJson(profile), throughJson(options))).toEqual(lieSection(profile, options));
      expect(stopContact(throughJson(cut), profile, options)).toEqual(stopContact(cut, profile, options));
      expect(cradleFor(throughJson(profile), slope)).toEqual(cradleFor(profile, slope));
    }),
  );
});

test("tryParseSaw tells of every field of a saw of which nothing is right, unknown keys and all", () => {
  const wrong = {
    fence: "left",
    miter: { left: -1, right: "60", reads: "from-table", stepp: 1 },
    bevel: 45,
    depth: 0,
    depthAt45: null,
    crosscut: NaN,
    gaugereach: 3,
  };
  const outcome = tryParseSaw(wrong);
  expect(outcome.ok ? [] : outcome.issues.map(({ path, code }) => [path, code])).toEqual([
    ["saw.gaugereach", "unknown"],
    ["saw.fence", "unknown"],
    ["saw.miter.stepp", "unknown"],
    ["saw.miter.left", "range"],
    ["saw.miter.right", "type"],
    ["saw.miter.reads", "unknown"],
    ["saw.miter.step", "missing"],
    ["saw.bevel", "type"],
    ["saw.depth", "range"],
    ["saw.depthAt45", "type"],
    ["saw.crosscut", "range"],
  ]);
  const meant = outcome.ok
    ? []
    : outcome.issues.flatMap(({ message }) => /did you mean `(\w+)`/.exec(message)?.[1] ?? []);
  expect(meant).toEqual(["gaugeReach", "step"]);
});
