import fc from "fast-check";
import { numberHazards, planFrame, type FrameBrief, type FramePlan } from "miterwright/frame";
import { describePlan, type Report, type Step } from "miterwright/report";
import { formatters, type LengthUnit } from "miterwright/units";
import { arrisLabel, english, frameCheckText, hazardText, operationText, testCutsText } from "miterwright/words";
import { describe, expect, test } from "vitest";
import { anyBrief } from "../drawing/frames.js";
import { EXACT } from "../formats.js";
import { FORMATS, PLANS, blockOf, blocksOf, fitsOf } from "./reports.js";

/** A report in which every number is written to the last digit. */
function exactly(plan: FramePlan): Report {
  return describePlan(plan, { formats: EXACT, fits: fitsOf(plan) });
}

/** The facts of a report at a glance, by name. */
function factsOf(report: Report): Readonly<Record<string, string>> {
  const { facts } = blockOf(report, "facts", ["glance", "measures"]);
  return Object.fromEntries(facts.map(({ name, value }) => [name, value]));
}

const KINDS = Object.entries(PLANS);
const SAWN = KINDS.filter(([, { sawing }]) => sawing.lay !== null);

describe.each(KINDS)("the report of %s", (_, plan) => {
  const report = exactly(plan);
  const { geometry, materials, sawing, checks } = plan;

  test("has the measures of the plan at a glance, miter and bevel first", () => {
    const facts = factsOf(report);
    const { opening, overall, levelWidth, slope, sides, pieces } = geometry;
    const scales = sawing.lay?.first;
    expect(facts).toMatchObject({
      ...(scales === undefined
        ? {}
        : { "miter scale": `A${scales.miter.reading}`, "bevel scale": `A${scales.bevel.reading}` }),
      pieces: `${sides}, longest line L${pieces[0].longest.length}`,
      sides: `${sides}, standing on a side`,
      slope: slope === 0 ? "none, it lies flat" : `A${slope}`,
      "opening, side": `L${opening.side}`,
      "opening, across flats": `L${opening.acrossFlats}`,
      "overall, across flats": `L${overall.polygon.acrossFlats}`,
      "overall, across corners": `L${overall.polygon.acrossCorners}`,
      "molding, width taken level": `L${levelWidth}`,
      "molding needed": `L${materials.moldingLength}`,
    });
    const first = scales === undefined ? [] : ["miter scale", "bevel scale"];
    expect(Object.keys(facts).slice(0, first.length + 1)).toEqual([...first, "pieces"]);
    expect(facts["height on the bench"]).toBe(overall.height === null ? undefined : `L${overall.height}`);
    const mass = materials.mass.total;
    expect(facts["mass"] === undefined).toBe(mass === null);
    if (mass !== null) expect(facts["mass"]).toContain(FORMATS.mass(mass));
    const cost = materials.cost?.total ?? null;
    expect(facts["cost"] === undefined).toBe(cost === null);
    if (cost !== null) expect(facts["cost"]).toContain(FORMATS.money(cost));
  });

  test("has every length as a number and as it is written", () => {
    const { rows, cells } = blockOf(report, "table", ["frame", "lengths"]);
    Object.keys(geometry.arrises).forEach((arris, index) => {
      expect(rows[index]!.slice(1, 3)).toEqual([arrisLabel(arris), geometry.pieces[0].lengths[arris]]);
      expect(cells[index]![2]).toBe(`L${geometry.pieces[0].lengths[arris]!}`);
    });
  });

  test("has every lay with its readings", () => {
    const { rows } = blockOf(report, "table", ["saw", "lays"]);
    expect(rows.map((row) => row.slice(1, 3))).toEqual(
      sawing.lays.map(({ first }) => [first.miter.reading, first.bevel.reading]),
    );
  });

  test("has every check of the loose pieces and of the dry frame", () => {
    const { cells } = blockOf(report, "table", ["checks", "checks"]);
    const write = { length: EXACT.length, angle: EXACT.angle };
    expect(cells.map(([what, , value]) => [what, value])).toEqual(
      checks
        .filter(({ when }) => when !== "glued")
        .map((check) => [frameCheckText(check, { sides: geometry.sides }), write[check.kind](check.value)]),
    );
  });

  test("has every hazard by its number, the gravest first", () => {
    const { hazards } = blockOf(report, "hazards", ["hazards", "hazards"]);
    expect(hazards).toEqual(
      numberHazards(plan).map(({ number, hazard }) => {
        const { title, sentence, numbers, source } = hazardText(hazard, { formats: EXACT });
        const behind = [numbers, source].filter((part) => part !== "").join("; ");
        return { number, signal: hazard.signal, title, sentence, behind };
      }),
    );
  });

  test("says first what has to be mended, and only then", () => {
    const [first] = blocksOf(report, "glance");
    const notReady = /can't be held|no lay|runs short/.test(_);
    expect(first?.name).toBe(notReady ? "not-ready" : "measures");
    if (first?.kind !== "list") return;
    expect(first.isStrong).toBe(true);
    for (const item of first.items) expect(item).toMatch(/^Not ready to cut\. /);
  });
});

describe.each(SAWN)("the steps of %s", (_, plan) => {
  const { steps } = blockOf(exactly(plan), "steps", ["steps", "steps"]);
  const { operations } = plan.sawing;

  test("are the operations in order, with their sentences", () => {
    expect(steps.map(({ step, kind, title, lines }) => ({ step, kind, title, lines }))).toEqual(
      operations.map((operation) => ({
        step: operation.step,
        kind: operation.kind,
        ...operationText(operation, { formats: EXACT }),
      })),
    );
  });

  test("name the hazards that concern them, by number", () => {
    steps.forEach(({ hazards, heed }, index) => {
      const { hazards: codes } = operations[index]!;
      const numbers = numberHazards(plan).flatMap(({ number, hazard }) =>
        codes.includes(hazard.code) ? [number] : [],
      );
      expect(hazards).toEqual(numbers);
      expect(heed).toBe(numbers.length === 0 ? null : english.steps.heed({ hazards: numbers }));
    });
    expect(steps.some(({ hazards }) => hazards.length > 0)).toBe(true);
  });

  test("tell miter, bevel and the length that is set", () => {
    const scale = ({ reading, toward }: { reading: number; toward: string }): string =>
      toward === "none" ? `A${reading}` : `A${reading} to the ${toward}`;
    expect(steps.map(({ settings }) => settings)).toEqual(
      operations.map(({ placement, measure }) => [
        { name: "miter scale", value: scale(placement.miter) },
        { name: "bevel scale", value: scale(placement.bevel) },
        ...(measure === null ? [] : [{ name: "length", value: `L${measure.length}` }]),
      ]),
    );
  });

  test("have a figure each, and the last one the finished piece", () => {
    const figures = steps.map((step: Step) => step.figures.map((figure) => [figure.name, figure.step]));
    const cuts = operations.map(({ step }) => [["cut", step]] as unknown[]);
    cuts.at(-1)!.push(["piece", null]);
    expect(figures).toEqual(cuts);
  });

  test("come after what the scales must show and how that is proved", () => {
    const { rows } = blockOf(exactly(plan), "table", ["saw", "settings"]);
    const { miter, bevel } = plan.sawing.lay!.first;
    const shown = rows.map(([, shows]) => String(shows));
    expect(shown.map((shows) => Number(/^A([\d.e-]+)/.exec(shows)![1]))).toEqual([miter.reading, bevel.reading]);
    const names = exactly(plan).sections.map(({ name }) => name);
    expect(names.indexOf("proof")).toBe(names.indexOf("steps") - 1);
    const { items } = blockOf(exactly(plan), "list", ["proof", "proof"]);
    expect(items).toEqual(testCutsText(plan.sawing.testCuts!, { formats: EXACT }).lines);
  });
});

describe("formatters", () => {
  test("are those of the brief's unit where none are given", () => {
    for (const unit of ["mm", "cm", "m", "in", "ft"] as const satisfies readonly LengthUnit[]) {
      const plan = planFrame({ sides: 6, opening: { side: 9 }, measured: { levelWidth: 1.5 }, unit });
      expect(describePlan(plan)).toEqual(describePlan(plan, { formats: formatters({ unit }) }));
      expect(factsOf(describePlan(plan))["opening, side"]).toBe(formatters({ unit }).length(9));
    }
  });

  test("that are given write every length and angle", () => {
    const plan = PLANS["a tray"]!;
    const millimeters = JSON.stringify(describePlan(plan, { formats: formatters({ unit: "mm", decimalMarker: "," }) }));
    expect(millimeters).toMatch(/\d,\d+\u00a0mm/);
    expect(millimeters).not.toMatch(/\d\.\d+(?:\u00a0mm|°)/);
  });
});

test("words that are given stand in the place of the English ones, in titles and sentences", () => {
  const words = {
    ...english,
    reports: {
      ...english.reports,
      planTitle: ({ sides }: { sides: number }) => `Gezeitentablett, ${sides} Seiten`,
      sections: { ...english.reports.sections, steps: "Schritt für Schritt" },
    },
    steps: { ...english.steps, keep: ({ side }: { side: string }) => `Behalte ${side}.` },
  };
  const report = describePlan(PLANS["a tray"]!, { words });
  expect(report.title).toBe("Gezeitentablett, 9 Seiten");
  expect(report.sections.find(({ name }) => name === "steps")!.title).toBe("Schritt für Schritt");
  const { steps } = blockOf(report, "steps", ["steps", "steps"]);
  for (const { lines } of steps) expect(lines.filter((line) => line.startsWith("Behalte"))).toHaveLength(1);
});

test("what nothing goes into has no panel to be cut from a board", () => {
  const panelOf = (contents: FrameBrief["contents"]): string | undefined => {
    const plan = planFrame({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40, lap: 6 }, contents });
    return blockOf(exactly(plan), "list", ["contents", "seating"]).items.find((item) => item.startsWith("Panel"));
  };
  expect(panelOf([{ name: "board", thickness: 3 }])).toContain("; cut from L400 × L");
  expect(panelOf([])).toMatch(/^Panel: 6 equal sides .* across corners L400\.$/);
});

test("any plan is told with the numbers that it has", () => {
  fc.assert(
    fc.property(anyBrief, (brief) => {
      const plan = planFrame(brief);
      const report = exactly(plan);
      const { opening, overall, pieces } = plan.geometry;
      const facts = factsOf(report);
      expect(facts["opening, side"]).toBe(`L${opening.side}`);
      expect(facts["overall, across corners"]).toBe(`L${overall.polygon.acrossCorners}`);
      const { rows } = blockOf(report, "table", ["frame", "lengths"]);
      const lengths = Object.values(pieces[0].lengths);
      expect(rows.slice(0, lengths.length).map((row) => row[2])).toEqual(lengths);
      const steps = report.sections.some(({ name }) => name === "steps")
        ? blockOf(report, "steps", ["steps", "steps"]).steps
        : [];
      expect(steps.map(({ step }) => step)).toEqual(plan.sawing.operations.map(({ step }) => step));
      const { hazards } = blockOf(report, "hazards", ["hazards", "hazards"]);
      expect(hazards).toHaveLength(plan.hazards.length);
      for (const { hazards: named } of steps)
        for (const number of named) expect(hazards[number - 1]?.number).toBe(number);
    }),
    { numRuns: 60 },
  );
});
