import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tryParseBrief } from "miterwright/frame";
import { miterSaw, tableSaw } from "miterwright/saw";
import { woodSpecies } from "miterwright/wood";
import { briefJsonSchema, type Schema } from "../house/brief-schema.js";
import { BRIEF_FIELDS } from "../../src/frame/brief/brief-fields.js";
import { BRIEF_KEYS } from "../../src/frame/brief/geometry-fields.js";
import { anyBrief } from "../drawing/frames.js";
import { plain, rabbeted, throughJson } from "./briefs.js";
import { HARD_FRAMES } from "./hard-cases.js";

const schema = briefJsonSchema();
const accepts = new Ajv2020({ strict: true, strictRequired: false }).compile(schema);

/** Whether a brief is parsed; what is parsed must also be valid. */
function parses(brief: unknown): boolean {
  const stored: unknown = throughJson(brief);
  const { ok } = tryParseBrief(stored);
  if (ok && !accepts(stored)) throw new Error(JSON.stringify([accepts.errors, stored]));
  return ok;
}

const sound = { sides: 6, profile: plain, opening: { side: 200 } };

/** A brief in which every field of every record is given somewhere. */
const full = {
  ...sound,
  schemaVersion: 1,
  slope: -10,
  pose: "corner-down",
  profile: rabbeted,
  at: "opening",
  clearance: 0,
  unit: "in",
  saw: { ...miterSaw(), depth: 5, depthAt45: 4, crosscut: 12, gaugeReach: 20 },
  kerf: 0,
  rough: { method: "square", allowance: 1 },
  shows: "back",
  lay: 12.5,
  acceptedGap: 0.3,
  fastenerRoom: 0,
  sticks: [{ id: "ash", length: 2400, count: 0, cost: 0, defects: [{ start: 0, end: 1 }] }],
  species: woodSpecies("white oak"),
  grain: "quarter-sawn",
  moisture: { made: 9, seasons: [{ temperature: 20, humidity: 30 }, 12] },
  cost: { amount: 4.5, per: "board-foot" },
  hanging: { by: "wire", wireAngle: 35, screwDepth: 12, extraMass: 2 },
  contents: [
    { name: "pane", thickness: 2, material: "glass", cost: { amount: 38, per: "square-meter" } },
    { name: "board", thickness: 3, material: { density: 750 }, cost: 2.5 },
    { name: "panel", thickness: 6, material: { species: "white ash", grain: 30, grainDirection: 90 } },
    {
      name: "own",
      thickness: 6,
      material: { species: { coefficients: { radial: 0.001, tangential: 0.002 }, name: null } },
    },
  ],
};

describe("every brief that is parsed validates", () => {
  test("briefs of all kinds", () => {
    fc.assert(fc.property(anyBrief, (brief) => parses(brief)));
  });

  test("hard cases", () => {
    for (const { brief, refused } of HARD_FRAMES) expect(parses(brief)).toBe(refused !== true);
  });

  test("fields in every form", () => {
    expect(parses(full)).toBe(true);
    for (const change of [
      { opening: { contains: { width: 300, height: 200, allowance: 0 } } },
      { opening: { cutFrom: { width: 300, height: 200 } } },
      { opening: { area: 40_000 } },
      {
        profile: { ...plain, madeFor: 20, note: [1], arrises: { ...plain.arrises, "": { x: 0, y: 0, z: 1 } } },
        at: "",
      },
      { profile: undefined, measured: { levelWidth: 40, lap: 8, depth: 9 }, at: "sight" },
      { rough: { method: "none" } },
      { rough: { method: "none", allowance: 3 } },
      { lay: "flat" },
      { species: "Oak, White" },
      { species: { radial: 4, tangential: 8, specificGravity: null } },
      { cost: 0 },
      { saw: tableSaw() },
    ]) {
      expect(parses({ ...sound, ...change }), JSON.stringify(change)).toBe(true);
    }
    // Both bounds of every number are taken by the table as by the schema.
    for (const change of [{ sides: 3 }, { sides: 1000, opening: { side: 1e6 } }, { slope: 90 }, { slope: -90 }]) {
      expect(parses({ ...sound, ...change }), JSON.stringify(change)).toBe(true);
    }
  });
});

/** Every place of a value that holds something, with what leads to it. */
function placesOf(value: unknown, place: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== "object" || value === null) return [place];
  return [place, ...Object.entries(value).flatMap(([key, inner]) => placesOf(inner, [...place, key]))];
}

/** The same value with another at one place. */
function changed(value: unknown, [key, ...rest]: readonly (string | number)[], to: unknown): unknown {
  if (key === undefined) return to;
  const inner = (value as Record<string, unknown>)[key];
  return Object.assign(Array.isArray(value) ? [...(value as unknown[])] : { ...(value as object) }, {
    [key]: changed(inner, rest, to),
  });
}

describe("what the schema refuses, the parser refuses, and where a schema can know, it does", () => {
  const stored = throughJson(full);

  test("any damage at any place", () => {
    let refused = 0;
    for (const place of placesOf(stored)) {
      for (const damage of ["x", "", {}, [], null, true, -1, 0.5, 1e200, -1e200]) {
        const brief = changed(stored, place, damage);
        if (!parses(brief)) refused++;
      }
    }
    expect(refused).toBeGreaterThan(500);
  });

  test("a key that is not known, in every object but a section's", () => {
    for (const place of placesOf(stored)) {
      const at = place.reduce<unknown>((holder, key) => (holder as Record<string, unknown>)[key], stored);
      if (typeof at !== "object" || Array.isArray(at) || place[0] === "profile" || place.includes("seen")) continue;
      const brief = changed(stored, place, { ...at, colour: "oak" });
      expect(accepts(brief), place.join(".")).toBe(false);
      expect(tryParseBrief(brief).ok, place.join(".")).toBe(false);
    }
  });

  test.each([
    [{ sides: 2 }],
    [{ sides: 1001 }],
    [{ sides: 4.5 }],
    [{ sides: "6" }],
    [{ slope: 90.1 }],
    [{ slope: null }],
    [{ pose: "upright" }],
    [{ opening: {} }],
    [{ opening: { side: 3, area: 3 } }],
    [{ opening: { side: 0 } }],
    [{ opening: { contains: { width: 3 } } }],
    [{ measured: { levelWidth: 40 } }],
    [{ profile: undefined }],
    [{ profile: { outline: plain.outline.slice(0, 2), arrises: {} } }],
    [{ contents: [{ name: "", thickness: 2 }] }],
    [{ contents: [{ name: "pane", thickness: 2, material: "mica" }] }],
    [{ contents: [{ name: "pane", thickness: 2, cost: { amount: 1, per: "meter" } }] }],
    [{ clearance: -1 }],
    [{ unit: "yd" }],
    [{ saw: { fence: "near" } }],
    [{ sticks: [] }],
    [{ sticks: [{ id: "ash" }] }],
    [{ moisture: { made: 8, seasons: [] } }],
    [{ hanging: {} }],
    [{ schemaVersion: 2 }],
  ])("%j", (change) => {
    const brief = throughJson({ ...sound, ...change });
    expect(accepts(brief)).toBe(false);
    expect(tryParseBrief(brief).ok).toBe(false);
  });
});

/** The fields of a schema that have no comment, by the keys that lead to them. */
function uncommented(part: unknown, place = ""): string[] {
  if (typeof part !== "object" || part === null) return [];
  const { properties = {}, ...rest } = part as Schema;
  const own = Object.entries(properties as Readonly<Record<string, Schema | true>>).flatMap(([key, inner]) => {
    const at = `${place}.${key}`;
    return inner === true ? [] : [...("description" in inner ? [] : [at]), ...uncommented(inner, at)];
  });
  return [...own, ...Object.values(rest).flatMap((inner) => uncommented(inner, place))];
}

test("every field that the schema tells of has a comment", () => {
  expect(uncommented(schema)).toEqual([]);
  expect(uncommented({ properties: { a: { items: { properties: { b: {} } } } } })).toEqual([".a", ".a.b"]);
});

test("the keys that a geometry knows are those of the table, in its order", () => {
  expect(BRIEF_KEYS).toEqual(Object.keys(BRIEF_FIELDS));
});
