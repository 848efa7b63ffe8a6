import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sawPlan, frameGeometry, type Operation, type RoughMethod } from "miterwright/frame";
import { operationText } from "miterwright/words";
import { miterSaw, tableSaw } from "miterwright/saw";
import { formatsWith } from "../formats.js";
import { planeFromWords, stickAxes, type Shop } from "../laws/saw.js";
import { briefs, plain } from "./briefs.js";

const roughs = fc.constantFrom<RoughMethod>(
  { method: "none" },
  { method: "square", allowance: 12 },
  { method: "mitered", allowance: 12 },
);
const saws = fc.constantFrom(tableSaw(), miterSaw());

const tell = { formats: formatsWith({ length: String, angle: String }) };

describe("where a stop may stand", () => {
  test("is where the farthest point of the finished end comes, on the side that is kept, as the stick lies in space", () => {
    let checked = 0;
    fc.assert(
      fc.property(briefs, roughs, saws, (brief, rough, saw) => {
        const frame = frameGeometry(brief);
        const { operations, lay } = sawPlan(frame, { saw, rough });
        if (lay === null) return;
        const { placement, stopRule } = operations.at(-1)!;
        const { profile, slope } = frame;
        const instruction = { ...placement, fence: saw.fence, slope };
        const axes = stickAxes(instruction);
        // The finished end as the first cut left it, its points as [right, away, up].
        const made = operations.find(({ kind }) => kind === "first-end")!.placement;
        const normal = planeFromWords({ ...made, fence: saw.fence, slope });
        const points = profile!.outline.map(({ x, y }): Shop => {
          const along = -(normal.across * x + normal.through * y) / normal.along;
          const at = (axis: 0 | 1 | 2): number =>
            along * axes.along[axis] + x * axes.across[axis] + y * axes.through[axis];
          return [at(0), at(1), at(2)];
        });
        const away = placement.kept === "left" ? -1 : 1;
        const farthest = Math.max(...points.map((point) => away * point[0]));
        const scale = 1e-6 * frame.overall.polygon.side;
        const touching = points.filter((point) => farthest - away * point[0] < scale);
        const fence = (saw.fence === "near" ? Math.min : Math.max)(...points.map((point) => point[1]));
        const distance = Math.min(...touching.map((point) => Math.abs(point[1] - fence)));
        expect(stopRule).toMatchObject({ side: placement.kept, touches: "long-point", end: "end" });
        expect(stopRule.never).not.toBe(stopRule.side);
        expect(Math.abs(stopRule.fromFence! - distance)).toBeLessThan(scale);
        // A gauge carries its stop along with the piece; on the fence of a miter saw the stop stays where it is.
        expect(stopRule.travels).toBe(saw.fence === "near");
        expect(stopRule.comesFree).toBe(rough.method === "none");
        expect(stopRule.moveAway).toBe(rough.method === "none" && saw.fence === "far");
        checked += 1;
      }),
    );
    expect(checked).toBeGreaterThan(100);
  });

  const rules = (rough: RoughMethod, saw = miterSaw()): [string, Operation["stopRule"]["touches"], boolean][] =>
    sawPlan(frameGeometry({ sides: 6, slope: 30, profile: plain, opening: { side: 400 } }), {
      rough,
      saw,
    }).operations.map(({ kind, stopRule }) => [kind, stopRule.touches, stopRule.moveAway]);

  test("depends on how pieces are parted", () => {
    expect(rules({ method: "none" })).toEqual([
      ["first-end", null, false],
      ["second-end", "long-point", true],
    ]);
    expect(rules({ method: "square", allowance: 9 })).toEqual([
      ["crosscut", "square-end", true],
      ["first-end", "square-end", false],
      ["second-end", "long-point", false],
    ]);
    expect(rules({ method: "mitered", allowance: 9 })).toEqual([
      ["first-end", null, false],
      ["second-end", "long-point", false],
    ]);
    for (const method of ["square", "mitered"] as const)
      expect(rules({ method, allowance: 9 }, tableSaw()).map(([, , moveAway]) => moveAway)).not.toContain(true);
    expect(rules({ method: "none" }, tableSaw()).map(([, , moveAway]) => moveAway)).not.toContain(true);
  });

  test("names the end that touches it and the hands, whichever is kept", () => {
    const rulesOf = (saw: ReturnType<typeof tableSaw>, rough: RoughMethod): Partial<Operation["stopRule"]>[] =>
      sawPlan(frameGeometry({ sides: 6, slope: -30, profile: plain, opening: { side: 400 } }), {
        rough,
        saw,
      }).operations.map(({ stopRule: { side, never, end, fromFence } }) => ({ side, never, end, fromFence }));
    const left = { side: "left", never: "right" };
    const right = { side: "right", never: "left" };
    expect(rulesOf(tableSaw(), { method: "square", allowance: 9 })).toEqual([
      { ...left, end: "start", fromFence: 0 },
      { ...right, end: "start", fromFence: 0 },
      { ...right, end: "end", fromFence: 0 },
    ]);
    expect(rulesOf(tableSaw(), { method: "none" })[0]).toEqual({ ...right, end: null, fromFence: null });
    expect(rulesOf(miterSaw(), { method: "mitered", allowance: 9 })).toEqual([
      { ...left, end: null, fromFence: null },
      { ...right, end: "end", fromFence: 40 },
    ]);
  });

  test("is not known for a molding without a section, but the side is", () => {
    const frame = frameGeometry({ sides: 6, slope: 30, measured: { levelWidth: 40 }, opening: { side: 400 } });
    const last = sawPlan(frame).operations.at(-1)!;
    expect(last.stopRule).toEqual({
      side: "left",
      never: "right",
      touches: "long-point",
      end: "end",
      fromFence: null,
      comesFree: true,
      travels: true,
      moveAway: false,
    });
    expect([last.size, last.bladeHeight]).toEqual([null, null]);
  });
});

describe("the words", () => {
  const lines = (rough: RoughMethod, saw = tableSaw(), slope = 30): string[][] =>
    sawPlan(frameGeometry({ sides: 6, slope, profile: plain, opening: { side: 400 } }), {
      rough,
      saw,
    }).operations.map((operation) => [...operationText(operation, tell).lines]);

  test("say where no stop may stand", () => {
    const stops = (rough: RoughMethod, saw = tableSaw()): (string | undefined)[] =>
      lines(rough, saw).map((all) => all.find((line) => line.startsWith("No stop")));
    expect(stops({ method: "none" })).toEqual([
      "No stop on either side of the blade at this cut.",
      "No stop to the left of the blade. The one to the right sits on the gauge's own fence and travels with the piece, which comes free: hold the piece itself against fence and stop until the blade is behind it. The point meets it 40 out from the fence.",
    ]);
    expect(stops({ method: "none" }, miterSaw())[1]).toBe(
      "No stop to the left of the blade; move the one to the right away before the cut, since the piece comes free.",
    );
    expect(stops({ method: "square", allowance: 9 }, miterSaw())[0]).toBe(
      "No stop to the right of the blade; one to the left only sets the length: move it away before the cut.",
    );
    expect(stops({ method: "square", allowance: 9 })).toEqual([
      "No stop to the right of the blade. One to the left that sets the length sits on the gauge's own fence and travels with the piece, which comes free: hold the piece itself against fence and stop until the blade is behind it.",
      "No stop to the left of the blade: what is there must come free.",
      "No stop to the left of the blade: what is there must come free. The point meets it 40 out from the fence: press the stick to the fence.",
    ]);
  });

  test("speak of no stop as set where no line sets one: of a molding known by level measures", () => {
    const measured = (saw: ReturnType<typeof tableSaw>): string => {
      const frame = frameGeometry({ sides: 6, slope: 30, measured: { levelWidth: 40 }, opening: { side: 400 } });
      const { lines: all } = operationText(sawPlan(frame, { saw }).operations.at(-1)!, tell);
      expect(all.filter((line) => line.startsWith("Stop"))).toEqual([]);
      return all.find((line) => line.startsWith("No stop"))!;
    };
    expect(measured(tableSaw())).toBe(
      "No stop to the right of the blade. One to the left that sets the length sits on the gauge's own fence and travels with the piece, which comes free: hold the piece itself against fence and stop until the blade is behind it.",
    );
    expect(measured(miterSaw())).toBe(
      "No stop to the left of the blade; one to the right only sets the length: move it away before the cut.",
    );
  });

  test("say where the wood tears, and whether that shows", () => {
    const tears = (saw: ReturnType<typeof tableSaw>): string[] =>
      lines({ method: "none" }, saw).map((all) => all.find((line) => line.startsWith("Tear-out"))!);
    expect(tears(tableSaw())).toEqual([
      "Tear-out: face (table, shows) and outer edge (fence, shows).",
      "Tear-out: face (table, shows) and sight edge (fence, shows).",
    ]);
  });

  test("say how high the blade stands, or how deep one from above cuts", () => {
    const blades = (saw: ReturnType<typeof tableSaw>): string =>
      lines({ method: "none" }, saw, 0)[0]!.find((line) => line.startsWith("Blade"))!;
    expect(blades(tableSaw())).toBe("Blade: 26 above the table; the work stands 20 high.");
    expect(blades(tableSaw({ depth: 24 }))).toBe("Blade: 24 above the table; the work stands 20 high.");
    expect(blades(miterSaw())).toBe("Blade: cuts 20 deep; the work stands 20 high.");
  });
});
