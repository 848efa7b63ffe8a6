import { expect, test } from "vitest";
import { drawStock } from "miterwright/drawing";
import { planFrame, type FrameBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { shopSheet } from "miterwright/sheet";
import { fitStock } from "miterwright/stock";
import { formatsWith } from "../formats.js";

/** Square roughs of 23 in: 18 in of opening, 2 in of width at each end and half an inch to spare at each. */
const brief: FrameBrief = {
  unit: "in",
  sides: 4,
  slope: 0,
  opening: { side: 18 },
  profile: molding({ width: 2, thickness: 1 }),
  kerf: 0.125,
  rough: { method: "square", allowance: 0.5 },
  sticks: [{ id: "poplar", length: 96 }],
};
const tell = { formats: formatsWith({ length: (value) => `<${value}>` }) };

test("what four pieces of 23 leave of a stick of 96 is said alike everywhere, a kerf of 1/8 for each of the five cuts", () => {
  const plan = planFrame(brief);
  const fit = fitStock(plan.stockJobs[0]!);
  expect(plan.sawing.rough.length).toBe(23);
  // One cut squares the stick's end, and one parts each piece.
  expect(plan.materials.moldingLength).toBe(4 * 23 + 5 * 0.125);
  const short = plan.hazards.find(({ code }) => code === "short-rest");
  expect(short?.numbers).toMatchObject({ rest: 3.375 });
  expect(fit.layouts.map(({ offcut }) => offcut)).toEqual([96 - 92 - 5 * 0.125]);
  expect(drawStock(plan.stockJobs[0]!, fit, tell).description).toContain("offcut <3.375>");
  const sheet = shopSheet(plan, { ...tell, fits: [fit] });
  expect(sheet).toContain("use up &lt;92.625&gt; of molding");
  expect(sheet.match(/&lt;3\.\d+&gt;/g)).toEqual(expect.arrayContaining(["&lt;3.375&gt;"]));
  expect(sheet).not.toMatch(/&lt;3\.(?:25|5)&gt;/);
});
