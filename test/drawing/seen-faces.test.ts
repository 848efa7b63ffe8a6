import { expect, test } from "vitest";
import { seenFaces } from "../../src/drawing/piece-body.js";

test("of a body the faces that look to the viewer are seen, the farthest first", () => {
  // A block with a step in its upper side, counter-clockwise: floor, right wall, low tread, riser, high tread, left wall.
  const corners = [
    [0, 0],
    [40, 0],
    [40, 10],
    [25, 10],
    [25, 20],
    [0, 20],
  ].map(([across, toward]) => ({ across: across!, toward: toward! }));
  expect(seenFaces(corners)).toEqual([
    [2, 3],
    [4, 5],
  ]);
  const turned = corners.map(({ across, toward }) => ({ across: 40 - across, toward: 20 - toward }));
  expect(seenFaces(turned)).toEqual([[0, 1]]);
});
