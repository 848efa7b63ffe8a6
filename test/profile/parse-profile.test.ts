import { expect, test } from "vitest";
import { tryParseProfile } from "miterwright/profile";
test("tryParseProfile tells of both coordinates of every point and arris, and of the slope", () => {
  const wrong = {
    outline: [{ x: "a", y: NaN }, 3, { x: 0, y: 20 }],
    arrises: { bead: { x: null }, wall: [] },
    madeFor: 91,
  };
  const outcome = tryParseProfile(wrong);
  expect(outcome.ok ? [] : outcome.issues.map(({ path, code }) => [path, code])).toEqual([
    ["profile.outline[0].x", "type"],
    ["profile.outline[0].y", "range"],
    ["profile.outline[1]", "type"],
    ["profile.arrises.bead.x", "type"],
    ["profile.arrises.bead.y", "missing"],
    ["profile.arrises.wall", "type"],
    ["profile.madeFor", "range"],
  ]);
});
