import { describe, expect, test } from "vitest";
import { planFrame, type FramePlan, type ProfileBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { shopSheet } from "miterwright/sheet";
import { layLines, english } from "miterwright/words";
import { formatsWith } from "../formats.js";
import { plain } from "../frame/briefs.js";

type Changes = Omit<Partial<ProfileBrief>, "measured">;
const tell = { formats: formatsWith() };
const plan = (brief: Changes): FramePlan => planFrame({ sides: 6, profile: plain, opening: { side: 400 }, ...brief });

describe("a lay in words", () => {
  const lines = (brief: Changes): readonly string[] => layLines(plan(brief).sawing.lay!, tell);

  test("says how the stick lies and what it gives up", () => {
    expect(lines({})).toEqual(["The stick lies flat on its back."]);
    expect(lines({ sides: 8, slope: 60 })).toEqual([
      "The stick lies face down.",
      "Its showing side lies on the table, where the teeth leave the wood: back it with scrap, or score the line.",
    ]);
    expect(lines({ slope: 30, lay: "flat" })).toEqual([
      "The stick lies flat on its back.",
      "The piece lies under the leaning blade: clamp it.",
    ]);
    expect(lines({ slope: 30, lay: "propped" })).toEqual([
      "The stick lies propped at its slope, in a cradle.",
      "It does not lie there by itself: a cradle holds it.",
    ]);
    expect(
      lines({ sides: 4, slope: 90, profile: molding({ width: 150, thickness: 18 }), lay: "sight-edge-down" }),
    ).toEqual([
      "The stick lies on its sight edge.",
      "It stands high on a narrow surface: clamp it upright.",
      "Its showing side does not lie up, so it can tear out where it meets the fence: back it with scrap, or score the line.",
    ]);
  });

  test("is on the sheet", () => {
    const sheet = shopSheet(plan({ sides: 8, slope: 60 }), tell);
    expect(sheet).toContain("Its showing side lies on the table");
  });

  test("is told in other words where such are given, and refused where it is none", () => {
    const { lay } = plan({ slope: 30, lay: "flat" }).sawing;
    const lays = { ...english.lays, lies: ({ lay: how }: { lay: string }): string => `Lay it ${how}.` };
    expect(layLines(lay!, { ...tell, words: { ...english, lays } })[0]).toBe("Lay it flat on its back.");
    expect(() => layLines({ ...lay!, givenUp: ["calm"] } as never, tell)).toThrow(
      'Expected `lay.givenUp[0]` to be one of "steady", "open-side", "showing-side-up", got "calm" (string)',
    );
    expect(() => layLines(lay!, {} as never)).toThrow("Expected `formats` to be an object, got undefined");
  });
});
