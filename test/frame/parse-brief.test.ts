import { describe, expect, test } from "vitest";
import { isInputError } from "miterwright/errors";
import { parseBrief, planFrame, tryParseBrief, type FrameBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw, tableSaw } from "miterwright/saw";
import { fitStock, type StockJob } from "miterwright/stock";
import { woodSpecies } from "miterwright/wood";
import { issuesOf, plain, rabbeted, throughJson } from "./briefs.js";

const sound = { sides: 6, profile: plain, opening: { side: 200 } };

/** The message of the one issue that a change to a sound brief raises, seen by the form's check and thrown by the planner. */
function onlyIssue(changes: Record<string, unknown>): string {
  const brief = { ...sound, ...changes };
  const issues = issuesOf(brief);
  expect(issues).toHaveLength(1);
  try {
    planFrame(brief as unknown as FrameBrief);
  } catch (error) {
    if (!isInputError(error)) throw error;
    const { code, path, value, message, expected } = error;
    expect({ code, path, value, message, expected }).toEqual(issues[0]);
    return error.message;
  }
  throw new Error("planFrame took what tryParseBrief refuses");
}

describe("tryParseBrief", () => {
  test("finds nothing wrong with a sound brief, nor with its copy from JSON", () => {
    expect(issuesOf(sound)).toEqual([]);
    expect(issuesOf(throughJson(sound))).toEqual([]);
  });

  test("gives the brief with its defaults, as a copy that planFrame takes and plans alike", () => {
    const outcome = tryParseBrief(sound);
    if (!outcome.ok) throw new Error("a sound brief was refused");
    expect(outcome.value).toEqual(planFrame(sound).brief);
    expect(outcome.value.profile).not.toBe(sound.profile);
    expect(planFrame(outcome.value)).toEqual(planFrame(sound));
  });

  test("and parseBrief gives the same, or throws the first issue", () => {
    expect(parseBrief(sound)).toEqual(planFrame(sound).brief);
    expect(() => parseBrief({ ...sound, sides: 2, slope: 100 })).toThrow(
      "Expected `sides` to be an integer from 3 to 1000, got 2 (number)",
    );
    expect(() => parseBrief({ ...sound, opening: { side: 2 }, at: "outerFace" })).toThrow(
      "to leave the pieces a length",
    );
  });

  test("takes wood, moisture, costs and hanging in every form", () => {
    const brief = {
      ...sound,
      acceptedGap: 0.3,
      fastenerRoom: 0,
      species: { radial: 4, tangential: 8 },
      grain: "quarter-sawn",
      moisture: { made: 9, seasons: [{ temperature: 20, humidity: 30 }, 12] },
      cost: { amount: 4.5, per: "board-foot" },
      hanging: { by: "wire", wireAngle: 35, screwDepth: 12, extraMass: 2 },
      contents: [
        { name: "pane", thickness: 2, material: "glass", cost: { amount: 38, per: "square-meter" } },
        { name: "board", thickness: 3, material: { density: 750 }, cost: 2.5 },
        { name: "panel", thickness: 6, material: { species: "white ash", grain: 30, grainDirection: 90 } },
      ],
    };
    expect(issuesOf(brief)).toEqual([]);
    expect(issuesOf(throughJson(brief))).toEqual([]);
    expect(planFrame(brief as FrameBrief).brief).toMatchObject(brief);
    for (const cost of [0, 12.5, 1e12]) expect(planFrame({ ...sound, cost }).brief.cost).toBe(cost);
  });

  test("takes a profile's -0 as 0 and leaves out what a profile has not", () => {
    const outline = plain.outline.map(({ x, y }) => ({ x: x === 0 ? -0 : x, y, note: NaN }));
    const profile = { ...plain, outline, madeFor: -0, note: NaN };
    const { brief, geometry } = planFrame({ ...sound, profile } as FrameBrief);
    expect(brief.profile).toStrictEqual({ ...plain, madeFor: 0 });
    expect(geometry.profile).toStrictEqual({ ...plain, madeFor: 0 });
  });

  test("reports every issue at once, keys that are not known first, then in the order of the fields", () => {
    const issues = issuesOf({
      sides: 2.5,
      slope: "steep",
      pose: "upright",
      opening: { side: 200, area: 3 },
      measured: { levelWidth: 0 },
      contents: [{ name: "", thickness: 2 }],
      clearance: -1,
      unit: "yd",
      kerf: Number.NaN,
      rough: { method: "square" },
      lay: "standing",
      sticks: [{ id: "ash", length: 0 }],
      colour: "oak",
    });
    expect(issues.map(({ path, code }) => [path, code])).toEqual([
      ["colour", "unknown"],
      ["sides", "range"],
      ["slope", "type"],
      ["pose", "unknown"],
      ["opening.area", "conflict"],
      ["measured.levelWidth", "range"],
      ["contents[0].name", "range"],
      ["clearance", "range"],
      ["unit", "unknown"],
      ["kerf", "range"],
      ["rough.allowance", "missing"],
      ["lay", "unknown"],
      ["sticks[0].length", "range"],
    ]);
  });

  test("reports every issue within a field too", () => {
    const issues = issuesOf({
      ...sound,
      opening: { contains: { width: 0, height: -1, allowance: -2 } },
      contents: [
        { thickness: 0, cost: { amount: -1, per: "kg" } },
        { name: "pane", thickness: 2, material: { density: 0, expansion: 1 }, cost: -1 },
        { name: "panel", thickness: "thin", material: { species: 3, grain: 91, grainDirection: 400 } },
      ],
      moisture: { made: -1, seasons: [6, 301, { temperature: 200, humidity: 40 }] },
      hanging: { by: "nail", wireAngle: 1, screwDepth: 0, extraMass: -1 },
      cost: { amount: "dear", per: "yard" },
      sticks: [{ id: "", length: 0, count: -1, cost: -1 }, 5],
    });
    expect(issues.map(({ path }) => path)).toEqual([
      "opening.contains.width",
      "opening.contains.height",
      "opening.contains.allowance",
      "contents[0].name",
      "contents[0].thickness",
      "contents[0].cost.amount",
      "contents[0].cost.per",
      "contents[1].material.density",
      "contents[1].material.expansion",
      "contents[1].cost",
      "contents[2].thickness",
      "contents[2].material.species",
      "contents[2].material.grain",
      "contents[2].material.grainDirection",
      "sticks[0].id",
      "sticks[0].length",
      "sticks[0].count",
      "sticks[0].cost",
      "sticks[1]",
      "moisture.made",
      "moisture.seasons[1]",
      "moisture.seasons[2].temperature",
      "cost.amount",
      "cost.per",
      "hanging.by",
      "hanging.wireAngle",
      "hanging.screwDepth",
      "hanging.extraMass",
    ]);
    const level = issuesOf({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 0, lap: -1, depth: 0 } });
    expect(level.map(({ path }) => path)).toEqual(["measured.levelWidth", "measured.lap", "measured.depth"]);
  });

  test("looks at sticks as the fit does, and at all of them", () => {
    const sticks = [
      { id: "ash", length: 2000 },
      { id: "ash", length: 0, qty: 3, defects: [{ start: 500, end: 300 }, 7, { start: 0, end: 1, at: 4 }] },
      { id: "ash", length: 600, count: 2, cost: 0, defects: [{ start: 590, end: 601 }] },
      {},
      {},
    ];
    expect(issuesOf({ ...sound, sticks }).map(({ path, code, message }) => [path, code, message])).toEqual([
      [
        "sticks[1].qty",
        "unknown",
        "Expected `sticks[1]` to have no key but `id`, `length`, `count`, `cost`, `defects`, got `qty`",
      ],
      [
        "sticks[1].id",
        "conflict",
        'Expected `sticks[1].id` to be another name than `sticks[0].id`, got "ash" (string)',
      ],
      [
        "sticks[1].length",
        "range",
        "Expected `sticks[1].length` to be a positive length (1e-100 to 1e100), got 0 (number)",
      ],
      [
        "sticks[1].defects[0].end",
        "range",
        "Expected `sticks[1].defects[0].end` to be a number from 500 to 1e+100, got 300 (number)",
      ],
      ["sticks[1].defects[1]", "type", "Expected `sticks[1].defects[1]` to be an object, got 7 (number)"],
      [
        "sticks[1].defects[2].at",
        "unknown",
        "Expected `sticks[1].defects[2]` to have no key but `start`, `end`, got `at`",
      ],
      [
        "sticks[2].id",
        "conflict",
        'Expected `sticks[2].id` to be another name than `sticks[0].id`, got "ash" (string)',
      ],
      [
        "sticks[2].defects[0].end",
        "range",
        "Expected `sticks[2].defects[0].end` to be a number from 590 to 600, got 601 (number)",
      ],
      ["sticks[3].id", "missing", "Expected `sticks[3].id` to be a string that is not empty, got undefined"],
      [
        "sticks[3].length",
        "missing",
        "Expected `sticks[3].length` to be a positive length (1e-100 to 1e100), got undefined",
      ],
      ["sticks[4].id", "missing", "Expected `sticks[4].id` to be a string that is not empty, got undefined"],
      [
        "sticks[4].length",
        "missing",
        "Expected `sticks[4].length` to be a positive length (1e-100 to 1e100), got undefined",
      ],
    ]);
  });

  test("says what is wrong within two kinds of molding or of opening, besides that there are two", () => {
    const issues = issuesOf({
      sides: 6,
      profile: { outline: [], arrises: {} },
      measured: { levelWidth: 0 },
      opening: { side: -1, contains: { width: 3 }, acrossflats: 5 },
    });
    expect(issues.map(({ path, code }) => [path, code])).toEqual([
      ["opening.side", "conflict"],
      ["opening.acrossflats", "unknown"],
      ["opening.contains.height", "missing"],
      ["opening.side", "range"],
      ["measured", "conflict"],
      ["profile.outline", "range"],
      ["measured.levelWidth", "range"],
    ]);
  });

  test("puts a molding that is missing where a form has a field for it", () => {
    const { profile, ...rest } = sound;
    expect(profile).toBe(plain);
    expect(issuesOf(rest)).toEqual([
      {
        code: "missing",
        path: "profile",
        value: undefined,
        message: "Expected exactly one of `profile`, `measured`, got none",
        expected: {
          clause: "exactly one of `profile`, `measured`",
          kind: "exactly-one",
          keys: ["profile", "measured"],
        },
      },
    ]);
  });

  test("gives back the opening that cannot be", () => {
    expect(issuesOf({ ...sound, opening: { side: 2 }, at: "outerFace" })[0]).toMatchObject({
      code: "impossible",
      path: "opening",
      value: { side: 2 },
    });
  });

  test.each([
    [{ acrossFlat: 300 }, "opening.acrossFlat", "acrossFlats"],
    [{ Side: 300 }, "opening.Side", "side"],
    [{ contians: { width: 300, height: 200 } }, "opening.contians", "contains"],
    [{ contains: { widht: 300, height: 200 } }, "opening.contains.widht", "width"],
    [{ cutFrom: { width: 300, heigth: 200 } }, "opening.cutFrom.heigth", "height"],
  ])(
    "answers a slip in the opening, %j, with the name that was meant, not with what is missing",
    (opening, path, meant) => {
      const [first] = issuesOf({ ...sound, opening });
      expect(first).toMatchObject({ code: "unknown", path });
      expect(first!.message).toContain(`; did you mean \`${meant}\`?`);
      expect(() => planFrame({ ...sound, opening } as never)).toThrow(first!.message);
    },
  );

  test("names no known key where none is near", () => {
    const [first] = issuesOf({ ...sound, opening: { diameter: 300 } });
    expect(first!.message).toMatch(/, got `diameter`$/);
  });

  test("finds a misspelled key wherever it stands, with the known ones", () => {
    const { miter, bevel, ...saw } = tableSaw();
    const issues = issuesOf({
      ...sound,
      opening: { contains: { width: 300, height: 200, allowence: 3 }, acrossflats: 4 },
      contents: [
        { name: "glass", thickness: 2, tickness: 3, cost: { amount: 1, per: "square-foot", each: 2 } },
        { name: "board", thickness: 2, material: { density: 700, expension: 1 } },
        { name: "panel", thickness: 2, material: { species: "white ash", graindirection: 90 } },
      ],
      saw: { ...saw, depthat45: 60, miter: { ...miter, stepp: 1 }, bevel: { ...bevel, rest: 1 } },
      rough: { method: "none", allowence: 3 },
      sticks: [{ id: "ash", length: 2000, qty: 2 }],
      species: {
        radial: 4,
        tangential: 8,
        specificgravity: 0.6,
        coefficients: { radial: 0.001, tangential: 0.002, t: 1 },
      },
      moisture: {
        made: { temperature: 20, humidity: 50, rh: 50 },
        seasons: [{ temperature: 20, humidity: 50, at: 1 }],
        worst: 3,
      },
      cost: { ammount: 1, amount: 1, per: "meter" },
      hanging: { by: "wire", wireangle: 30 },
    });
    expect(issues.every(({ code }) => code === "unknown")).toBe(true);
    expect(issues.map(({ message }) => message)).toEqual([
      "Expected `opening` to have no key but `contains`, `cutFrom`, `side`, `apothem`, `circumradius`, `acrossFlats`, `acrossCorners`, `perimeter`, `area`, got `acrossflats`; did you mean `acrossFlats`?",
      "Expected `opening.contains` to have no key but `width`, `height`, `allowance`, got `allowence`; did you mean `allowance`?",
      "Expected `contents[0]` to have no key but `name`, `thickness`, `material`, `cost`, got `tickness`; did you mean `thickness`?",
      "Expected `contents[0].cost` to have no key but `amount`, `per`, got `each`",
      "Expected `contents[1].material` to have no key but `density`, `expansion`, got `expension`; did you mean `expansion`?",
      "Expected `contents[2].material` to have no key but `species`, `grain`, `grainDirection`, got `graindirection`; did you mean `grainDirection`?",
      "Expected `saw` to have no key but `fence`, `miter`, `bevel`, `depth`, `depthAt45`, `crosscut`, `gaugeReach`, got `depthat45`; did you mean `depthAt45`?",
      "Expected `saw.miter` to have no key but `left`, `right`, `reads`, `step`, got `stepp`; did you mean `step`?",
      "Expected `saw.bevel` to have no key but `left`, `right`, `reads`, `step`, got `rest`",
      "Expected `rough` to have no key but `method`, `allowance`, got `allowence`; did you mean `allowance`?",
      "Expected `sticks[0]` to have no key but `id`, `length`, `count`, `cost`, `defects`, got `qty`",
      "Expected `species` to have no key but `name`, `radial`, `tangential`, `coefficients`, `fiberSaturation`, `specificGravity`, `seen`, got `specificgravity`; did you mean `specificGravity`?",
      "Expected `species.coefficients` to have no key but `radial`, `tangential`, got `t`",
      "Expected `moisture` to have no key but `made`, `seasons`, got `worst`",
      "Expected `moisture.made` to have no key but `temperature`, `humidity`, got `rh`",
      "Expected `moisture.seasons[0]` to have no key but `temperature`, `humidity`, got `at`",
      "Expected `cost` to have no key but `amount`, `per`, got `ammount`; did you mean `amount`?",
      "Expected `hanging` to have no key but `by`, `wireAngle`, `screwDepth`, `extraMass`, got `wireangle`; did you mean `wireAngle`?",
    ]);
    const level = issuesOf({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40, width: 3 } });
    expect(level.map(({ message }) => message)).toEqual([
      "Expected `measured` to have no key but `levelWidth`, `lap`, `depth`, got `width`",
    ]);
    const sheet = issuesOf({ ...sound, opening: { cutFrom: { width: 600, height: 400, allowance: 2 } } });
    expect(sheet.map(({ message }) => message)).toEqual([
      "Expected `opening.cutFrom` to have no key but `width`, `height`, got `allowance`",
    ]);
  });

  test("takes what other functions of ours give, and a profile with data of your own", () => {
    const profile = { ...plain, maker: "me" };
    const brief = { ...sound, profile, species: woodSpecies("white ash"), saw: miterSaw() };
    expect(issuesOf(brief)).toEqual([]);
    expect(issuesOf(planFrame(brief).brief)).toEqual([]);
  });

  test("takes what a form leaves open as undefined, in types and at run time", () => {
    // Typed as a form has it: with `exactOptionalPropertyTypes`, which this compiles under, an optional field alone would refuse it.
    const open = undefined as number | undefined;
    const brief: FrameBrief = {
      sides: 6,
      slope: open,
      pose: undefined,
      profile: molding({ width: 40, thickness: 20, rabbet: undefined, face: undefined, madeFor: undefined }),
      measured: undefined,
      opening: { contains: { width: 300, height: 200, allowance: open }, side: open as undefined },
      at: undefined,
      contents: [
        { name: "board", thickness: 3, material: { density: open, expansion: open }, cost: undefined },
        { name: "panel", thickness: 3, material: { species: "white ash", grain: undefined, grainDirection: open } },
      ],
      clearance: open,
      unit: undefined,
      saw: { ...tableSaw(), depth: open, crosscut: open },
      kerf: open,
      rough: undefined,
      lay: undefined,
      sticks: [{ id: "ash", length: 2400, count: open, cost: open, defects: undefined }],
      acceptedGap: open,
      fastenerRoom: open,
      species: { radial: 4, tangential: 8, specificGravity: open, coefficients: undefined },
      grain: undefined,
      moisture: undefined,
      cost: undefined,
      hanging: { by: "wire", wireAngle: open, screwDepth: open, extraMass: open },
    };
    expect(issuesOf(brief)).toEqual([]);
    const job: StockJob = { ...planFrame(brief).stockJobs[0]!, keep: open, credit: open, resolution: open };
    expect(fitStock(job, { timeLimit: open, stepLimit: 1e6, onProgress: undefined }).status).toBe("optimal");
    expect(
      issuesOf({ sides: 6, opening: { side: 300 }, measured: { levelWidth: 40, lap: open, depth: open } }),
    ).toEqual([]);
  });

  test("takes anything at all", () => {
    for (const value of [undefined, null, 5, "brief", [], () => 0]) {
      expect(issuesOf(value).map((issue) => issue.path)).toEqual([""]);
    }
    expect(issuesOf(null)[0]?.message).toBe("Expected the brief to be an object, got null");
    expect(issuesOf(undefined)[0]).toMatchObject({
      code: "missing",
      message: "Expected the brief to be an object, got undefined",
    });
    expect(() => planFrame([sound] as unknown as FrameBrief)).toThrow(
      "Expected the brief to be an object, got an array of 1",
    );
    expect(issuesOf({}).map((issue) => issue.code)).toEqual(["missing", "missing", "missing"]);
  });
});

test.each([
  [{ sides: 1001 }, "Expected `sides` to be an integer from 3 to 1000, got 1001 (number)"],
  [{ sides: 3.5 }, "Expected `sides` to be an integer from 3 to 1000, got 3.5 (number)"],
  [{ slope: -91 }, "Expected `slope` to be degrees from -90 to 90, got -91 (number)"],
  [{ pose: "lying" }, 'Expected `pose` to be one of "side-down", "corner-down", got "lying" (string)'],
  [{ opening: 300 }, "Expected `opening` to be an object, got 300 (number)"],
  [
    { opening: {} },
    "Expected exactly one of `contains`, `cutFrom`, `side`, `apothem`, `circumradius`, `acrossFlats`, `acrossCorners`, `perimeter`, `area` in `opening`, got none",
  ],
  [
    { opening: { side: 1, perimeter: 6 } },
    "Expected exactly one of `contains`, `cutFrom`, `side`, `apothem`, `circumradius`, `acrossFlats`, `acrossCorners`, `perimeter`, `area` in `opening`, got `side` and `perimeter`",
  ],
  [
    { opening: { side: Infinity } },
    "Expected `opening.side` to be a positive length (1e-100 to 1e100), got Infinity (number)",
  ],
  [{ opening: { area: -4 } }, "Expected `opening.area` to be a positive area (1e-200 to 1e200), got -4 (number)"],
  [
    { opening: { contains: { width: 3 } } },
    "Expected `opening.contains.height` to be a positive length (1e-100 to 1e100), got undefined",
  ],
  [
    { opening: { contains: { width: 3, height: 4, allowance: -2 } } },
    "Expected `opening.contains.allowance` to be zero or a positive length (up to 1e100), got -2 (number)",
  ],
  [
    { opening: { cutFrom: { width: "3", height: 4 } } },
    'Expected `opening.cutFrom.width` to be a positive length (1e-100 to 1e100), got "3" (string)',
  ],
  [
    { at: "bead" },
    'Expected `at` to be one of "opening", "sightFace", "sightBack", "outerFace", "outerBack", got "bead" (string)',
  ],
  [
    { at: "outerBack", opening: { contains: { width: 3, height: 4 } } },
    'Expected `at` to be "opening" where the opening is made to hold or to be filled by something, got "outerBack" (string)',
  ],
  [{ profile: undefined }, "Expected exactly one of `profile`, `measured`, got none"],
  [{ measured: { levelWidth: 4 } }, "Expected exactly one of `profile`, `measured`, got `profile` and `measured`"],
  [
    { profile: { outline: [], arrises: {} } },
    "Expected `profile.outline` to be an array of three or more points, got an empty array",
  ],
  [
    { profile: { width: 40, thickness: 20 } },
    "Expected `profile.outline` to be an array of three or more points, got undefined; `molding` makes a profile of a width and a thickness",
  ],
  [
    { profile: { ...plain, outline: [...plain.outline].reverse() } },
    "Expected `profile.outline` to run counter-clockwise, got a clockwise outline; `profileFromPoints` turns it round",
  ],
  [
    { slope: 90, profile: { ...plain, outline: [...plain.outline, plain.outline[0]] } },
    "Expected `profile.outline[0]` to differ from `profile.outline[4]`, got the same point; `profileFromPoints` drops repeated points",
  ],
  [
    { profile: { ...plain, outline: [0, 1, 2].map((x) => ({ x, y: x })) } },
    "Expected `profile.outline` to be an outline that encloses an area, got an array of 3",
  ],
  [
    { profile: { ...plain, outline: [...plain.outline.slice(0, 2), { x: 20, y: 20 }, ...plain.outline.slice(2)] } },
    "Expected `profile.outline` not to cross or touch itself, but the edges from its points 1 and 3 meet",
  ],
  [
    { profile: { ...plain, outline: new Array(4) } },
    "Expected `profile.outline[0]` to be given, got a hole in an array of 4",
  ],
  [{ contents: new Array(3) }, "Expected `contents[0]` to be given, got a hole in an array of 3"],
  [{ sticks: new Array(3) }, "Expected `sticks[0]` to be given, got a hole in an array of 3"],
  [
    { moisture: { made: 8, seasons: new Array(2) } },
    "Expected `moisture.seasons[0]` to be given, got a hole in an array of 2",
  ],
  [{ sticks: [] }, "Expected `sticks` to be an array of one stick or more, got an empty array"],
  [
    { contents: "glass" },
    'Expected `contents` to be an array of layers, each with a name and a thickness, got "glass" (string)',
  ],
  [
    { contents: [{ name: "glass", thickness: 0 }] },
    "Expected `contents[0].thickness` to be a positive length (1e-100 to 1e100), got 0 (number)",
  ],
  [{ clearance: null }, "Expected `clearance` to be zero or a positive length (up to 1e100), got null"],
  [{ unit: "inch" }, 'Expected `unit` to be one of "mm", "cm", "m", "in", "ft", got "inch" (string)'],
  [{ kerf: -3 }, "Expected `kerf` to be zero or a positive length (up to 1e100), got -3 (number)"],
  [{ saw: { ...tableSaw(), bevel: 45 } }, "Expected `saw.bevel` to be an object, got 45 (number)"],
  [
    { rough: { method: "mitered", allowance: 0 } },
    "Expected `rough.allowance` to be a positive length (1e-100 to 1e100), got 0 (number)",
  ],
  [{ lay: 400 }, "Expected `lay` to be degrees from -360 to 360, got 400 (number)"],
  [{ sticks: {} }, "Expected `sticks` to be an array of one stick or more, got an object"],
  [
    { sticks: [{ id: "ash", length: 2000, count: 0.5 }] },
    "Expected `sticks[0].count` to be an integer from 0 to 1000000000, got 0.5 (number)",
  ],
  [
    { sticks: [{ id: "ash", length: 2000, cost: -1 }] },
    "Expected `sticks[0].cost` to be a number from 0 to 1e+100, got -1 (number)",
  ],
  [{ acceptedGap: 0 }, "Expected `acceptedGap` to be a positive length (1e-100 to 1e100), got 0 (number)"],
  [{ fastenerRoom: -1 }, "Expected `fastenerRoom` to be zero or a positive length (up to 1e100), got -1 (number)"],
  [{ species: 7 }, "Expected `species` to be the name of a wood or an object with its figures, got 7 (number)"],
  [{ grain: 91 }, "Expected `grain` to be degrees from 0 to 90, got 91 (number)"],
  [
    { moisture: { made: 8, seasons: [] } },
    "Expected `moisture.seasons` to be an array of one or more moistures, got an empty array",
  ],
  [
    { moisture: { made: 8, seasons: [6, { temperature: 21, humidity: 101 }] } },
    "Expected `moisture.seasons[1].humidity` to be percent from 0 to 100, got 101 (number)",
  ],
  [
    { moisture: { seasons: [6] } },
    "Expected `moisture.made` to be a moisture content in percent (0 to 300) or a climate, got undefined",
  ],
  [
    { cost: { amount: 3, per: "square-meter" } },
    'Expected `cost.per` to be one of "meter", "foot", "cubic-meter", "board-foot", got "square-meter" (string)',
  ],
  [
    { cost: { amount: 3, per: "piece" } },
    'Expected `cost.per` to be one of "meter", "foot", "cubic-meter", "board-foot", got "piece" (string)',
  ],
  [
    { cost: { amount: 3 } },
    'Expected `cost.per` to be one of "meter", "foot", "cubic-meter", "board-foot", got undefined',
  ],
  [{ cost: { amount: -3, per: "foot" } }, "Expected `cost.amount` to be an amount from 0 to 1e12, got -3 (number)"],
  [
    { cost: { amount: 1.5e12, per: "foot" } },
    "Expected `cost.amount` to be an amount from 0 to 1e12, got 1500000000000 (number)",
  ],
  [{ cost: { amount: "3", per: "foot" } }, 'Expected `cost.amount` to be an amount from 0 to 1e12, got "3" (string)'],
  [{ cost: { per: "foot" } }, "Expected `cost.amount` to be an amount from 0 to 1e12, got undefined"],
  [
    { cost: { amount: 3, per: "foot", currency: "EUR" } },
    "Expected `cost` to have no key but `amount`, `per`, got `currency`",
  ],
  [{ cost: -3 }, "Expected `cost` to be an amount from 0 to 1e12, got -3 (number)"],
  [{ cost: NaN }, "Expected `cost` to be an amount from 0 to 1e12, got NaN (number)"],
  [{ cost: 1.5e12 }, "Expected `cost` to be an amount from 0 to 1e12, got 1500000000000 (number)"],
  [
    { cost: "dear" },
    'Expected `cost` to be an amount from 0 to 1e12 or an object with `amount` and `per`, got "dear" (string)',
  ],
  [{ cost: null }, "Expected `cost` to be an amount from 0 to 1e12 or an object with `amount` and `per`, got null"],
  [{ hanging: { by: "nail" } }, 'Expected `hanging.by` to be one of "wire", "two-hooks", got "nail" (string)'],
  [
    { hanging: { by: "wire", wireAngle: 0 } },
    "Expected `hanging.wireAngle` to be degrees from 5 to 85, got 0 (number)",
  ],
  [
    { hanging: { by: "two-hooks", screwDepth: 0 } },
    "Expected `hanging.screwDepth` to be a positive length (1e-100 to 1e100), got 0 (number)",
  ],
  [
    { hanging: { by: "wire", extraMass: 1001 } },
    "Expected `hanging.extraMass` to be kilograms from 0 to 1000, got 1001 (number)",
  ],
  [
    { contents: [{ name: "pane", thickness: 2, material: "mica" }] },
    'Expected `contents[0].material` to be "glass", "acrylic" or an object with `density`, got "mica" (string)',
  ],
  [
    { contents: [{ name: "board", thickness: 2, material: { density: 0 } }] },
    "Expected `contents[0].material.density` to be kilograms per cubic meter from 1 to 100000, got 0 (number)",
  ],
  [
    { contents: [{ name: "panel", thickness: 6, material: { species: "white ash", grainDirection: 361 } }] },
    "Expected `contents[0].material.grainDirection` to be degrees from -360 to 360, got 361 (number)",
  ],
  [
    { contents: [{ name: "pane", thickness: 2, cost: { amount: 40, per: "meter" } }] },
    'Expected `contents[0].cost.per` to be one of "square-meter", "square-foot", got "meter" (string)',
  ],
  [
    { contents: [{ name: "pane", thickness: 2, cost: -1 }] },
    "Expected `contents[0].cost` to be an amount from 0 to 1e12, got -1 (number)",
  ],
  [
    { contents: [{ name: "pane", thickness: 2, cost: [40] }] },
    "Expected `contents[0].cost` to be an amount from 0 to 1e12 or an object with `amount` and `per`, got an array of 1",
  ],
  [
    { opening: { side: 2 }, at: "outerFace" },
    "Expected `opening` to leave the pieces a length at every edge, but at `sightFace` it would be -44.1880215352",
  ],
  [{ shows: "front" }, 'Expected `shows` to be one of "face", "back", got "front" (string)'],
  [
    { colour: "oak" },
    "Expected no key but `sides`, `slope`, `pose`, `opening`, `profile`, `measured`, `at`, `contents`, `clearance`, `unit`, `saw`, `kerf`, `rough`, `shows`, `lay`, `sticks`, `acceptedGap`, `fastenerRoom`, `species`, `grain`, `moisture`, `cost`, `hanging`, `schemaVersion`, got `colour`",
  ],
])("brief with %j", (changes, message) => {
  expect(onlyIssue(changes)).toBe(message);
});

test.each([
  [
    { levelWidth: 40, lap: -1 },
    "Expected `measured.lap` to be zero or a positive length (up to 1e100), got -1 (number)",
  ],
  [{ levelWidth: 40, depth: 0 }, "Expected `measured.depth` to be a positive length (1e-100 to 1e100), got 0 (number)"],
  [{}, "Expected `measured.levelWidth` to be a positive length (1e-100 to 1e100), got undefined"],
])("level measures %j", (measured, message) => {
  expect(onlyIssue({ profile: undefined, measured })).toBe(message);
});

test("a lay of -0 is 0 in the plan", () => {
  expect(Object.is(planFrame({ ...sound, lay: -0 }).brief.lay, 0)).toBe(true);
});

test("what is well-formed but cannot be made is data, not an error", () => {
  const plan = planFrame({
    sides: 6,
    slope: 70,
    profile: rabbeted,
    opening: { side: 300 },
    contents: [{ name: "glass", thickness: 3 }],
  });
  expect(plan.contents).toMatchObject({ possible: false, reason: "past-mouth" });
  expect(plan.hazards.map((hazard) => hazard.code)).toContain("seating-impossible");
});
