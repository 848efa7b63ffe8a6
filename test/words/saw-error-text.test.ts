import { describe, expect, test } from "vitest";
import { planFrame, type FramePlan, type ProfileBrief, type SawFault, type SawFaultEffect } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw, tableSaw, type Saw } from "miterwright/saw";
import { sawFaultText, sawMoveText, english } from "miterwright/words";

const profile = molding({ width: 40, thickness: 40 });
const FLIPS: Saw = tableSaw({ bevel: { left: 60, right: 0, reads: "from-vertical", step: 0.5 } });
const SLIDES: Saw = miterSaw({
  miter: { left: 60, right: 60, reads: "from-square", step: 0.5 },
  bevel: { left: 60, right: 60, reads: "from-vertical", step: 0.5 },
});

function planOf(changes: Partial<ProfileBrief>): FramePlan {
  return planFrame({ sides: 8, profile, opening: { side: 400 }, ...changes });
}
function faultOf(changes: Partial<ProfileBrief>, name: SawFault): SawFaultEffect {
  return planOf(changes).assembly.sawErrors!.faults.find(({ fault }) => fault === name)!;
}

describe("the faults of a saw", () => {
  test("are told in words that fit: a leaning blade dishes a flat frame, opens a standing one, and tips a propped one", () => {
    const words = (changes: Partial<ProfileBrief>, name: SawFault): string => sawFaultText(faultOf(changes, name));
    const upright = "A blade off upright where it reads upright: both ends are off alike, which adds up in every joint";
    expect(words({ saw: FLIPS, lay: "flat" }, "upright")).toBe(`${upright} and dishes the frame.`);
    expect(words({ saw: FLIPS, lay: "outer-edge-down" }, "upright")).toBe(`${upright} and opens the last one.`);
    expect(words({ saw: FLIPS, lay: "propped", slope: 30 }, "upright")).toBe(`${upright} and changes its slope.`);
    expect(words({ saw: FLIPS, lay: "flat", slope: 30 }, "upright")).toBe(
      `${upright} and opens the last one and changes its slope.`,
    );
    expect(words({ saw: SLIDES, lay: "flat" }, "upright")).toBe(
      "A blade off upright where it reads upright: the two ends are off opposite ways, which cancels in every joint.",
    );
    expect(words({ saw: FLIPS, slope: 30, lay: "flat" }, "square")).toBe(
      "A gauge off square where it reads 0: the two ends are off opposite ways, which cancels in every joint, but the pieces climb like a stair and leave a step at the last one.",
    );
    expect(words({ saw: FLIPS, lay: "flat" }, "lean")).toBe("The blade stays upright, so its scale does not matter.");
    expect(words({ saw: SLIDES, lay: "outer-edge-down" }, "swing")).toBe(
      "The gauge stays square, so its scale does not matter.",
    );
    expect(sawMoveText(planOf({ saw: SLIDES }).assembly.sawErrors!.move)).toBe(
      "The stick slides past the blade between its ends: gauge and blade both go to the other hand.",
    );
  });

  test("are told in other words where such are given", () => {
    const fault = faultOf({ saw: FLIPS, lay: "flat" }, "upright");
    const words = {
      ...english,
      sawFaults: { ...english.sawFaults, upright: ({ outcomes }: { outcomes: readonly string[] }) => outcomes.join() },
      sawMoves: { ...english.sawMoves, "flip-end-for-end": () => "turn it round" },
    };
    expect(sawFaultText(fault, { words })).toBe("dishes-frame");
    expect(sawMoveText("flip-end-for-end", { words })).toBe("turn it round");
  });

  test("are refused where they are none", () => {
    expect(() => sawFaultText({ fault: "square" } as never)).toThrow(
      'Expected `fault.effect` to be one of "adds", "cancels", "idle", got undefined',
    );
    expect(() => sawMoveText("roll" as never)).toThrow(
      'Expected `move` to be one of "flip-end-for-end", "slide-past-the-blade", got "roll" (string)',
    );
  });
});
