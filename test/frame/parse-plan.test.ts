import { expect, test } from "vitest";
import { isInputError } from "miterwright/errors";
import { parsePlan, planFrame, type FramePlan } from "miterwright/frame";
import { shopSheet } from "miterwright/sheet";
import { formatsWith } from "../formats.js";
import { plain, rabbeted, throughJson } from "./briefs.js";

const tray: FramePlan = planFrame({
  sides: 9,
  slope: 30,
  profile: rabbeted,
  opening: { acrossFlats: 400 },
  contents: [{ name: "glass", thickness: 2, material: "glass" }],
  clearance: 1.5,
  species: "black cherry",
  hanging: { by: "wire" },
  sticks: [{ id: "cherry", length: 2400 }],
});

function pathOf(value: unknown): string {
  try {
    parsePlan(value);
  } catch (error) {
    if (isInputError(error)) return error.path;
    throw error;
  }
  return "taken";
}

test("a plan comes back from JSON as it was, as a copy", () => {
  const stored = throughJson(tray);
  const read = parsePlan(stored);
  expect(read).toEqual(tray);
  expect(read.geometry).not.toBe(stored.geometry);
  expect(read.geometry.pieces[0].lengths).not.toBe(stored.geometry.pieces[0].lengths);
});

test("a damaged plan is refused by the path of the damage", () => {
  expect(pathOf(null)).toBe("plan");
  expect(pathOf({ ...tray, geometry: { ...tray.geometry, slope: "steep" } })).toBe("plan.geometry.slope");
  expect(pathOf({ ...tray, stockJobs: [{ pieces: [], sticks: [] }, 3] })).toBe("plan.stockJobs[0].sticks");
  expect(pathOf({ ...tray, materials: { ...tray.materials, parts: [] } })).toBe("plan.materials.parts");
});

test("a reason is one of its codes, not a sentence", () => {
  const steep = planFrame({ sides: 6, slope: 70, profile: rabbeted, opening: { side: 300 } });
  expect(pathOf(steep)).toBe("taken");
  const { contents, geometry } = steep;
  const reason = "The rabbet is too shallow";
  expect(pathOf({ ...steep, contents: { ...contents, reason } })).toBe("plan.contents.reason");
  const seating = { ...geometry.seating, reason };
  expect(pathOf({ ...steep, geometry: { ...geometry, seating } })).toBe("plan.geometry.seating.reason");
  const hanging = { possible: false, by: "wire" };
  expect(pathOf({ ...steep, hanging: { ...hanging, reason: "no-wall-surface" } })).toBe("taken");
  expect(pathOf({ ...steep, hanging: { ...hanging, reason } })).toBe("plan.hanging.reason");
  expect(pathOf({ ...tray, movement: { ...tray.movement, unknown: ["lip-width"] } })).toBe("taken");
  expect(pathOf({ ...tray, movement: { ...tray.movement, unknown: ["its lip"] } })).toBe("plan.movement.unknown[0]");
});

test("a plan of another form is refused, by sheets too", () => {
  const flat = planFrame({ sides: 4, profile: plain, opening: { side: 200 } });
  expect(flat.schemaVersion).toBe(1);
  const other = { ...throughJson(flat), schemaVersion: 2 };
  expect(() => parsePlan(other)).toThrow(
    "Expected `plan.schemaVersion` to be 1, the form of plan that is known here, got 2 (number)",
  );
  expect(() => shopSheet(other as never, { formats: formatsWith() })).toThrow("Expected `schemaVersion` to be 1");
});
