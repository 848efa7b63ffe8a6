import { describe, expect, test } from "vitest";
import { planFrame } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw } from "miterwright/saw";
import { FIELDS } from "../../docs/bench/field-table.js";
import type { FieldName } from "../../docs/bench/fields.js";
import { issueField } from "../../docs/bench/issue-field.js";
import { isFieldName } from "../../docs/bench/job-link.js";
import { emptyJob, type JobState } from "../../docs/bench/job-state.js";
import { exampleJob } from "../../docs/bench/example-job.js";
import { WOOD_FIELDS } from "../../docs/bench/form/wood-fields.js";
import { planJob } from "../../docs/bench/plan-job.js";
import * as reading from "../../docs/bench/read-job.js";
import { FORM } from "../../docs/bench/language.js";
import { penOf } from "../../docs/bench/writers.js";
import { jobOf, TRAY } from "./jobs.js";

const readJob = (state: JobState): reading.ReadJob => reading.readJob(state, penOf(state.values));

const words = (...args: Parameters<typeof jobOf>): Record<string, string> =>
  Object.fromEntries(readJob(jobOf(...args)).issues.map((issue) => [issue.field, issue.words]));

describe("an empty form", () => {
  test("says what is needed and blames nobody", () => {
    const read = readJob(emptyJob());
    expect(read.brief).toBe(null);
    expect(read.issues).toEqual([]);
    expect(read.needed).toEqual(["width", "height", "sides", "moldingWidth", "thickness"]);
  });

  test("asks for what the other answers need", () => {
    expect(readJob(jobOf({ holds: "measure", known: "level" })).needed).toEqual(["size", "sides", "levelWidth"]);
    expect(readJob(jobOf({ ...TRAY, rabbetDepth: "" })).needed).toEqual(["rabbetDepth"]);
    expect(readJob(jobOf({ ...TRAY, rough: "square" })).needed).toEqual(["roughAllowance"]);
    expect(readJob(jobOf(TRAY, { sticks: [{ count: "2" }], layers: [{}, { name: "glass" }] })).needed).toEqual([
      "layers.1.thickness",
      "sticks.0.length",
    ]);
  });
});

describe("a filled form becomes the brief that it says", () => {
  test("with the fewest answers", () => {
    expect(readJob(jobOf(TRAY))).toEqual({
      brief: {
        sides: 6,
        slope: 20,
        pose: "side-down",
        opening: { contains: { width: 300, height: 200 } },
        at: "opening",
        profile: molding({ width: 52, thickness: 19, rabbet: { width: 9, depth: 11 } }),
        contents: [],
        unit: "mm",
        saw: expect.objectContaining({ fence: "near" }) as unknown,
        rough: { method: "none" },
        shows: "face",
      },
      frames: 1,
      keep: 0,
      issues: [],
      needed: [],
    });
  });

  test("with every finer point, in inches", () => {
    const { brief, frames, keep } = readJob(
      jobOf(
        {
          unit: "in",
          holds: "measure",
          measure: "acrossFlats",
          size: "1' 2 1/2\"",
          at: "outermost",
          clearance: "1/16",
          sides: "8",
          pose: "corner-down",
          moldingWidth: "2 1/4",
          thickness: "19.05 mm",
          milled: "milled",
          slopeAs: "plumb",
          slope: "60°",
          saw: "miter",
          kerf: "3/32",
          shows: "back",
          lay: "propped",
          rough: "mitered",
          roughAllowance: "1/2",
          miterReach: "52",
          bevelRight: "0",
          miterReads: "from-fence",
          bevelReads: "from-table",
          scaleStep: "0.25",
          sawDepth: "3",
          crosscut: "12",
          gaugeReach: "1 1/2 ft",
          frames: "3",
          keep: "6",
        },
        {
          sticks: [{}, { length: "8 ft" }, { length: "40", count: "2", cost: "4.50", name: "short end" }],
          layers: [{ name: "mirror", thickness: "1/8" }, { thickness: "1/4" }],
        },
      ),
    );
    expect(brief).toEqual({
      sides: 8,
      slope: 30,
      pose: "corner-down",
      opening: { acrossFlats: 14.5 },
      at: "outerBack",
      profile: molding({ width: 2.25, thickness: 0.75, madeFor: { slope: 30 } }),
      contents: [
        { name: "mirror", thickness: 0.125 },
        { name: "layer 2", thickness: 0.25 },
      ],
      clearance: 0.0625,
      unit: "in",
      saw: miterSaw({
        miter: { left: 52, right: 52, reads: "from-fence", step: 0.25 },
        bevel: { left: 45, right: 0, reads: "from-table", step: 0.25 },
        depth: 3,
        crosscut: 12,
        gaugeReach: 18,
      }),
      kerf: 0.09375,
      rough: { method: "mitered", allowance: 0.5 },
      shows: "back",
      lay: "propped",
      sticks: [
        { id: "stick 1", length: 96 },
        { id: "short end", length: 40, count: 2, cost: 4.5 },
      ],
    });
    expect([frames, keep]).toEqual([3, 6]);
  });

  test("with its wood, its year, its costs and how it hangs", () => {
    const { brief, issues } = readJob(
      jobOf(
        {
          ...TRAY,
          acceptedGap: "0.4",
          fastenerRoom: "0",
          species: "black walnut",
          grain: "quarter-sawn",
          driest: "5.5",
          cost: "18.50",
          costPer: "meter",
          hangs: "wire",
          wireAngle: "40",
          screwDepth: "10",
          extraMass: "1.5",
        },
        {
          layers: [
            { name: "pane", thickness: "2", material: "glass", cost: "24" },
            { name: "bottom", thickness: "6", material: "molding" },
          ],
        },
      ),
    );
    expect(issues).toEqual([]);
    expect(brief).toMatchObject({
      acceptedGap: 0.4,
      fastenerRoom: 0,
      species: "black walnut",
      grain: "quarter-sawn",
      moisture: { made: 8, seasons: [5.5, 12] },
      cost: { amount: 18.5, per: "meter" },
      hanging: { by: "wire", wireAngle: 40, screwDepth: 10, extraMass: 1.5 },
      contents: [
        { name: "pane", thickness: 2, material: "glass", cost: 24 },
        { name: "bottom", thickness: 6, material: { species: "black walnut" } },
      ],
    });
  });

  test("whichever answer is chosen", () => {
    for (const [name, { choices = [] }] of Object.entries(WOOD_FIELDS)) {
      for (const value of choices) {
        const said = { ...TRAY, species: "white ash", cost: "2", hangs: "wire", [name]: value };
        expect(readJob(jobOf(said)).issues).toEqual([]);
      }
    }
  });

  test("with level measures alone", () => {
    const level = { ...TRAY, known: "level", levelWidth: "48", lap: "6", depth: "12" };
    expect(readJob(jobOf(level)).brief).toMatchObject({ measured: { levelWidth: 48, lap: 6, depth: 12 }, slope: 20 });
    expect(readJob(jobOf({ ...level, holds: "measure", size: "200", at: "innermost" })).brief?.at).toBe("sight");
    expect(readJob(jobOf({ ...level, lap: "", holds: "measure", size: "200", at: "innermost" })).brief?.at).toBe(
      "wall",
    );
    expect(readJob(jobOf({ ...level, holds: "measure", size: "200", at: "outermost" })).brief?.at).toBe("outer");
  });

  test("with a sheet, a spring angle and an allowance that is not asked", () => {
    const { brief } = readJob(jobOf({ ...TRAY, holds: "cutFrom", allowance: "3", slopeAs: "spring", slope: "38" }));
    expect(brief?.opening).toEqual({ cutFrom: { width: 300, height: 200 } });
    expect(brief?.slope).toBe(52);
  });

  test("which planFrame takes, and whose plan is the page's", () => {
    const state = exampleJob();
    const { plan } = planJob(state);
    expect(plan?.geometry).toEqual(planFrame(readJob(state).brief!).geometry);
    expect(plan?.stockJobs[0]?.pieces[0]?.count).toBe(9);
    const three = { ...state, values: { ...state.values, frames: "3", keep: "200" } };
    expect(planJob(three).plan?.stockJobs[0]).toMatchObject({ pieces: [{ count: 27 }], keep: 200 });
  });
});

describe("what is wrong is said beside its field", () => {
  test("when it can't be read", () => {
    expect(words({ ...TRAY, width: "wide", slope: "steep", sides: "six", kerf: "1,234", height: "-3" })).toEqual({
      width: "This can't be read as a length: a number is missing.",
      slope: "This can't be read as an angle: a number is missing.",
      sides: "This is counted in whole numbers, such as 6.",
      kerf: "This can't be read as a length: the comma could mark decimals or thousands; write 1.234 or 1234.",
      height: "This has to be more than zero.",
    });
    expect(words({ ...TRAY, clearance: "-1" })).toEqual({ clearance: "This can't be less than zero." });
    expect(words(TRAY, { sticks: [{ length: "0", cost: "dear", count: "2.5" }] })).toEqual({
      "sticks.0.length": "This has to be more than zero.",
      "sticks.0.cost": "This has to be a plain number, such as 12 or 12.50.",
      "sticks.0.count": "This is counted in whole numbers, such as 6.",
    });
  });

  test("when it is out of range", () => {
    expect(words({ ...TRAY, sides: "2", slope: "95" })).toEqual({
      sides: "This has to be a whole number from 3 to 1000.",
      slope: "This has to be degrees from -90 to 90.",
    });
    expect(words({ ...TRAY, slopeAs: "plumb", slope: "100" })).toEqual({
      slope: "This has to be degrees from 0 to 90.",
    });
    expect(words({ ...TRAY, scaleStep: "60" })).toEqual({ scaleStep: "This has to be degrees from 0.000001 to 45." });
    expect(words({ ...TRAY, miterReach: "100" })).toEqual({ miterReach: "This has to be degrees from 0 to 90." });
    expect(words({ ...TRAY, bevelLeft: "100" })).toEqual({ bevelLeft: "This has to be degrees from 0 to 90." });
    expect(words({ ...TRAY, bevelRight: "100" })).toEqual({ bevelRight: "This has to be degrees from 0 to 90." });
    expect(words({ ...TRAY, width: "1e300" })).toHaveProperty("width");
    const walnut = { ...TRAY, species: "black walnut", hangs: "wire" };
    const percent = "This has to be a moisture in percent from 0 to 300.";
    expect(words({ ...walnut, made: "301" })).toEqual({ made: percent });
    expect(words({ ...walnut, dampest: "400", wireAngle: "2" })).toEqual({
      dampest: percent,
      wireAngle: "This has to be degrees from 5 to 85.",
    });
    expect(words({ ...walnut, extraMass: "5000" })).toEqual({ extraMass: "This has to be kilograms from 0 to 1000." });
    expect(words(TRAY, { layers: [{ name: "bottom", thickness: "4", material: "molding" }] })).toEqual({
      "layers.0.material": "Say which wood the molding is of.",
    });
    expect(words(TRAY, { layers: [{ name: "backing", thickness: "3", material: "sheet" }] })).toEqual({
      "layers.0.density": "Say how dense the sheet is.",
    });
    expect(words(TRAY, { layers: [{ name: "backing", thickness: "3", material: "sheet", density: "0" }] })).toEqual({
      "layers.0.density": "This has to be kilograms per cubic meter from 1 to 100000.",
    });
    expect(words({ ...TRAY, frames: "0" })).toEqual({ frames: "At least one frame has to be made." });
  });

  test("all of it at once, whatever else is wrong or needed", () => {
    const { issues, needed } = readJob(
      jobOf({ ...TRAY, width: "", height: "tall", sides: "2", rabbetWidth: "60" }, { sticks: [{ length: "1e101" }] }),
    );
    expect(issues.map(({ field }) => field).sort()).toEqual(["height", "rabbetWidth", "sides", "sticks.0.length"]);
    expect(needed).toEqual(["width"]);
  });

  test("when sizes do not go together", () => {
    expect(words({ ...TRAY, rabbetWidth: "60" })).toEqual({
      rabbetWidth: "This is too wide for the molding: the rabbet's wall needs wood behind it.",
    });
    expect(words({ ...TRAY, rabbetDepth: "19" })).toEqual({
      rabbetDepth: "This is too deep for the molding: a lip has to be left.",
    });
    expect(words({ ...TRAY, milled: "milled", slope: "90" })).toEqual({
      milled: "No molding can be milled for so steep a slope.",
    });
    const tight =
      "The opening is too small for this molding and number of sides: the sides would have no length at the inside.";
    expect(words({ ...TRAY, holds: "measure", size: "4" })).toEqual({ size: tight });
    expect(words({ ...TRAY, width: "2", height: "2" })).toEqual({ width: tight });
    expect(words(TRAY, { sticks: [{ length: "900", name: "oak" }, {}, { length: "800", name: "oak" }] })).toEqual({
      "sticks.2.name": "Another row has this name already.",
    });
  });

  test("in the row where it was typed, blank rows counted", () => {
    const many = "This has to be a whole number from 0 to 1000000000.";
    expect(words(TRAY, { sticks: [{}, { length: "900", count: "2000000000" }] })).toEqual({ "sticks.1.count": many });
  });

  test.each([
    ["opening.contains.width", "width"],
    ["opening.cutFrom.height", "height"],
    ["opening.contains.allowance", "allowance"],
    ["opening.acrossFlats", "size"],
    ["opening", "width"],
    ["measured.lap", "lap"],
    ["molding.width", "moldingWidth"],
    ["molding.thickness", "thickness"],
    ["molding.rabbet.width", "rabbetWidth"],
    ["molding.rabbet.depth", "rabbetDepth"],
    ["molding.rabbet", "rabbetDepth"],
    ["molding.madeFor.slope", "milled"],
    ["rough.allowance", "roughAllowance"],
    ["saw.miter.right", "miterReach"],
    ["saw.bevel.left", "bevelLeft"],
    ["saw.bevel.right", "bevelRight"],
    ["saw.miter.step", "scaleStep"],
    ["saw.depth", "sawDepth"],
    ["saw.crosscut", "crosscut"],
    ["saw.gaugeReach", "gaugeReach"],
    ["offPlumb", "slope"],
    ["acceptedGap", "acceptedGap"],
    ["moisture.seasons[1]", "dampest"],
    ["cost.amount", "cost"],
    ["hanging.screwDepth", "screwDepth"],
    ["contents[1].cost", "layers.1.cost"],
    ["sides", "sides"],
    ["sticks[2].id", "sticks.2.name"],
    ["contents[0].thickness", "layers.0.thickness"],
  ])("%s is shown at %s", (path, field) => {
    expect(issueField(path, "contains")).toBe(field);
    if (path === "opening") expect(issueField(path, "measure")).toBe("size");
  });

  test("and always beside a field that is there", () => {
    const wrong = [
      { ...TRAY, moldingWidth: "1e300" },
      { ...TRAY, thickness: "1e101" },
      { ...TRAY, rough: "square", roughAllowance: "1e101" },
      { ...TRAY, sawDepth: "1e101" },
      { ...TRAY, crosscut: "1e101" },
      { ...TRAY, gaugeReach: "1e101" },
      { ...TRAY, clearance: "1e101" },
      { ...TRAY, kerf: "1e101" },
      { ...TRAY, holds: "measure", measure: "perimeter", size: "1e-99" },
      { ...TRAY, known: "level", levelWidth: "1e101" },
      { ...TRAY, known: "level", levelWidth: "40", lap: "1e101" },
      { ...TRAY, slopeAs: "spring", slope: "-4" },
    ];
    for (const values of wrong) {
      const { issues } = planJob(jobOf(values));
      expect(issues.length, JSON.stringify(values)).toBeGreaterThan(0);
      for (const { field, words: said } of issues) {
        expect(isFieldName(field), field).toBe(true);
        expect(said).toMatch(/^[A-Z].*\.$/);
        expect(said).not.toMatch(/`|\(number\)|undefined/);
      }
    }
  });
});

test("every field has a label, an explanation in a sentence, and a word for each of its answers", () => {
  for (const [name, { choices, kind }] of Object.entries(FIELDS)) {
    const { label, explain, choices: named = {} } = FORM.fields[name as FieldName];
    expect(label, name).toMatch(/\S/);
    expect(explain, name).toMatch(/^[A-Z0-9].*\.$/);
    expect(choices === undefined, name).toBe(kind !== "choice");
    expect(Object.keys(named), name).toEqual(choices ?? []);
    for (const answer of Object.values(named)) expect(answer, name).toMatch(/\S/);
  }
});
