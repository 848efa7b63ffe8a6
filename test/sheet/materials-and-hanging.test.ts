import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planFrame, type FrameBrief } from "miterwright/frame";
import { shopSheet } from "miterwright/sheet";
import { anyBrief, measuredPlan, plan } from "../drawing/frames.js";
import { SHORT } from "../formats.js";
import { readSheet } from "./read-sheet.js";

const TELL = { formats: SHORT };

describe("the sheet says", () => {
  test("what it weighs and costs, as far as that is known", () => {
    const whole = plan({
      sides: 9,
      slope: -10,
      species: { radial: 4, tangential: 8, specificGravity: 0.6 },
      cost: { amount: 5, per: "meter" },
      contents: [
        { name: "pane", thickness: 2, material: "glass", cost: 7.5 },
        { name: "chart", thickness: 0.5 },
      ],
    });
    const { text, tables } = readSheet(shopSheet(whole, TELL));
    const { mass, cost, parts } = whole.materials;
    const kg = (value: number): string => `${Number(value.toPrecision(3))} kg`;
    expect(text).toContain(`mass at least ${kg(mass.total!)}`);
    expect(text).toContain(`cost at least ${cost!.total!.toFixed(2)}`);
    expect(text).toContain(`It weighs ${kg(parts[0]!.mass!)} and costs ${parts[0]!.cost!.total!.toFixed(2)}.`);
    expect(text).toContain("board feet (");
    expect(text).toContain("They go in through a mouth that is");
    expect(text).toContain("if the glass is as thick as it may be)");
    expect(tables["Layers from the front"]!.map((row) => row.slice(-2))).toEqual([
      ["mass", "cost"],
      [kg(parts[1]!.mass!), "7.50"],
      ["?", "?"],
    ]);
  });

  test("masses and forces as the reader reads them", () => {
    const hung = plan({ sides: 9, species: "white ash", hanging: { by: "two-hooks" } });
    const mass = (kilograms: number): string => `${(1000 * kilograms).toFixed(0)} grams`;
    const force = (newtons: number): string => `${(newtons / 1000).toFixed(4)} kilonewtons`;
    const { text } = readSheet(shopSheet(hung, { formats: { ...SHORT, mass, force } }));
    expect(text).toContain(`mass ${mass(hung.materials.mass.total!)}`);
    expect(text).toContain("kilonewtons). Each hook");
    expect(text).not.toMatch(/\d (?:kg|N)\b/);
    expect(() => shopSheet(hung, { formats: { ...SHORT, force: 3 as never } })).toThrow(
      "Expected `formats.force` to be a function that writes a force as text, got 3 (number)",
    );
  });

  test("how much room the contents lack, or how far they stand proud", () => {
    const text = (thickness: number): string =>
      readSheet(shopSheet(plan({ contents: [{ name: "board", thickness }] }), TELL)).text;
    expect(text(7)).toContain(`${SHORT.length(2)} of depth, plumb, is left behind them, ${SHORT.length(3)} is wanted.`);
    expect(text(10)).toContain(`they stand ${SHORT.length(1)} proud of the rabbet.`);
  });

  test("how it hangs: where, on what, by which wire, and with what load", () => {
    const hanging = { by: "wire", wireAngle: 35, screwDepth: 12, extraMass: 2 } as const;
    const hung = plan({ sides: 9, slope: 20, species: "black cherry", hanging });
    const { text } = readSheet(shopSheet(hung, TELL));
    if (hung.hanging?.possible !== true) throw new Error("the tray hangs");
    const { fixings, below, apart, seat, wire, load } = hung.hanging;
    expect(text).toContain(
      `By a wire between two hangers, on sides ${fixings[0].side + 1} and ${fixings[1].side + 1} (counted counter-clockwise from 1`,
    );
    expect(text).toContain(
      `${SHORT.length(below)} below the top, ${SHORT.length(apart)} apart, which is ${SHORT.length(fixings[0].fromCorner)} from the upper corner`,
    );
    expect(text).toContain(`leans ${SHORT.angle(20)} from the wall, opening outward`);
    expect(text).toContain(`screws ${SHORT.length(seat!.deepest)} deep at the most; these go in ${SHORT.length(12)}.`);
    expect(text).toContain(`The wire is ${SHORT.length(wire!.length)} from hanger to hanger`);
    expect(text).toContain(`its hook is ${SHORT.length(wire!.belowTop)} below the frame's top.`);
    expect(text).toContain(`It weighs ${Number(load.mass!.toPrecision(3))} kg (`);
    expect(text).toContain(`carries ${Number(load.pull!.toPrecision(3))} N; common practice, which is no advice,`);
    expect(readSheet(shopSheet(plan({ hanging: { by: "two-hooks" } }), TELL)).text).toContain(
      "Each hook and hanger carries 50 % of the weight, which is not known: weigh the frame.",
    );
    expect(readSheet(shopSheet(measuredPlan({ hanging: { by: "wire", wireAngle: 80 } }), TELL)).text).toContain(
      "above the frame's top, where it shows.",
    );
    expect(readSheet(shopSheet(plan(), TELL)).text).not.toContain("Hanging");
  });

  test("why it cannot hang", () => {
    const outline = [
      { x: 20, y: 0 },
      { x: 40, y: 40 },
      { x: 0, y: 40 },
    ];
    const text = readSheet(shopSheet(plan({ profile: { outline, arrises: {} }, hanging: { by: "wire" } }), TELL)).text;
    expect(text).toContain("so a hanger has nothing to lie on");
  });
});

test("any frame that hangs has a well-formed sheet, with masses and costs that are numbers", () => {
  const hanging = fc.record({
    by: fc.constantFrom("wire" as const, "two-hooks" as const),
    wireAngle: fc.double({ min: 5, max: 85, noNaN: true }),
    screwDepth: fc.double({ min: 1e-6, max: 1e3, noNaN: true }),
    extraMass: fc.double({ min: 0, max: 1000, noNaN: true }),
  });
  const material = fc.constantFrom(
    "glass" as const,
    "acrylic" as const,
    { density: 700 },
    { expansion: 1e-5 },
    undefined,
  );
  fc.assert(
    fc.property(anyBrief, hanging, material, (brief, hangs, made) => {
      const contents = (brief.contents ?? []).map((layer) => ({
        ...layer,
        ...(made === undefined ? {} : { material: made }),
        cost: { amount: 12.5, per: "square-foot" as const },
      }));
      const cost = { amount: 3, per: "board-foot" as const };
      const frame = planFrame({ ...brief, contents, cost, species: "white ash", hanging: hangs } as FrameBrief);
      const sheet = shopSheet(frame, TELL);
      expect(sheet).not.toMatch(/NaN|undefined|Infinity|\[object/);
      expect(readSheet(sheet).text).toContain("Hanging");
    }),
    { numRuns: 40 },
  );
});
