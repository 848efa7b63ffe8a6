import { describe, expect, test } from "vitest";
import { isInputError } from "miterwright/errors";
import { planFrame, type FrameBrief, type FramePlan, type ProfileBrief } from "miterwright/frame";
import { movementLines, english, type Words } from "miterwright/words";
import { formatters } from "miterwright/units";
import { molding } from "miterwright/profile";
import { loose } from "../formats.js";
import { plain, rabbeted } from "../frame/briefs.js";

const formats = formatters({ unit: "mm" });

/** The sentences, with spaces that compare easily. */
function told(plan: FramePlan, words: Words = english): string[] {
  return loose(movementLines(plan, { formats, words }));
}

function wordsOf(changes: Partial<ProfileBrief>): string[] {
  const brief: FrameBrief = { sides: 4, profile: rabbeted, opening: { side: 400 }, ...changes };
  return told(planFrame(brief));
}

describe("a year in words", () => {
  test("says in which season the joints open, where and by how much, and what the lip does", () => {
    expect(wordsOf({ species: "white oak" })).toEqual([
      "In the dry season, at 6 % moisture, the joints open inside by 0.56 mm; in the damp season, at 12 % moisture, they open outside by 1.12 mm, as far as glue does not hold them. They are fitted at 8 %; a gap of 0.25 mm is accepted.",
      "The molding's inner edge draws back by up to 0.39 mm at every side; its lip shrinks by up to 0.07 mm and swells by up to 0.14 mm. Along their grain the pieces hardly move.",
    ]);
  });

  test("takes the worst season of either direction, and says nothing of one that does not come", () => {
    const year = (made: number, ...seasons: number[]): string =>
      wordsOf({ species: "white oak", profile: plain, moisture: { made, seasons } })[0]!;
    expect(year(12, 11, 7.25, 9)).toMatch(
      /^In the dry season, at 7\.25 % moisture, the joints open inside by [\d.]+ mm, as far/,
    );
    expect(year(6, 7, 9.04, 8)).toMatch(
      /^In the damp season, at 9\.04 % moisture, the joints open outside by [\d.]+ mm, as far/,
    );
    expect(year(8, 8)).toBe("The joints are fitted at 8 % moisture, and no season moves them.");
    expect(wordsOf({ species: "white oak", profile: plain })[1]).toMatch(/at every side\. Along their grain/);
    expect(wordsOf({ species: "white oak", moisture: { made: 8, seasons: [8] } })).toHaveLength(1);
  });

  test("says of every layer what it needs, whether it gets it, and what the lip still laps", () => {
    const contents = [
      { name: "pane", thickness: 2, material: "acrylic" as const },
      { name: "lid", thickness: 5, material: { species: "white oak" as const } },
    ];
    expect(wordsOf({ contents, clearance: 1 })).toEqual([
      "pane, from 5 °C to 40 °C. It was put in at 20 °C. It grows by up to 0.29 mm at a side, and the clearance of 1 mm is enough. It draws back by up to 0.21 mm; the lip still laps it by 7.79 mm.",
      "lid, from 6 % to 12 % moisture. It was put in at 8 %. It grows by up to 3.02 mm at a side, and the clearance of 1 mm is too little. It draws back by up to 1.51 mm; the lip still laps it by 6.49 mm.",
    ]);
    const narrow = molding({ width: 40, thickness: 20, rabbet: { width: 4, depth: 10 } });
    expect(wordsOf({ contents, profile: narrow, clearance: 3 })[1]).toMatch(
      /; the lip then no longer laps it and falls short by 0\.4\d mm\.$/,
    );
    expect(wordsOf({ contents, profile: plain, clearance: 3 })[1]).toMatch(/It draws back by up to 1\.49 mm\.$/);
  });

  test("is written with the words that are given", () => {
    const movement: Words["movement"] = {
      ...english.movement,
      openJoints: ({ seasons, made, acceptedGap }) =>
        `${seasons.map(({ season, moisture, opens, gap }) => [season, moisture, opens, gap].join(" ")).join(", ")}; ${made}, ${acceptedGap}`,
      sightEdge: ({ retreat, lip }) => `${retreat}, ${lip?.shrinks} to ${lip?.swells}`,
      layerRoom: ({ name, lap, enough }) => `${name} ${enough} ${lap?.holds} ${lap?.by}`,
    };
    const plan = planFrame({
      sides: 4,
      profile: rabbeted,
      opening: { side: 400 },
      species: "white oak",
      contents: [{ name: "pane", thickness: 2, material: "acrylic" }],
      clearance: 1,
    });
    expect(told(plan, { ...english, movement })).toEqual([
      "dry 6 % inside 0.56 mm, damp 12 % outside 1.12 mm; 8 %, 0.25 mm",
      "0.39 mm, 0.07 mm to 0.14 mm",
      "pane true true 7.39 mm",
    ]);
    const still: Words["movement"] = { ...english.movement, stillJoints: ({ made }) => `still at ${made}` };
    const even = planFrame({
      sides: 4,
      profile: rabbeted,
      opening: { side: 400 },
      species: "white oak",
      moisture: { made: 8, seasons: [8] },
    });
    expect(told(even, { ...english, movement: still })).toEqual(["still at 8 %"]);
  });

  test("ends with what is not known", () => {
    const brief: FrameBrief = {
      sides: 4,
      slope: 20,
      measured: { levelWidth: 40 },
      opening: { side: 400 },
      species: "white oak",
    };
    const plan = planFrame(brief);
    expect(told(plan).slice(2)).toEqual([
      "Only level measures of the molding are known: the joints are taken to open as if all of the width taken level moved like the faster of width and thickness, which is the most that it can.",
      "The lip's width is not known: what it adds to the open joints is not counted.",
    ]);
  });

  test("is empty for a plan that knows of nothing that moves", () => {
    expect(wordsOf({ contents: [{ name: "print", thickness: 1 }] })).toEqual([]);
  });

  test("is the same of a plan that went through JSON", () => {
    const plan = planFrame({ sides: 4, profile: rabbeted, opening: { side: 400 }, species: "white oak" });
    expect(told(JSON.parse(JSON.stringify(plan)) as typeof plan)).toEqual(told(plan));
  });
});

describe("refused are", () => {
  const plan = planFrame({ sides: 4, profile: plain, opening: { side: 400 }, species: "white oak" });

  test.each<[unknown, unknown, string]>([
    [null, { formats }, "Expected `plan` to be an object, got null"],
    [{}, { formats }, "Expected `brief` to be an object, got undefined"],
    [{ ...plan, movement: 5 }, { formats }, "Expected `movement` to be an object, got 5 (number)"],
    [{ ...plan, movement: {} }, { formats }, "Expected `movement.made` to be a finite number, got undefined"],
    [{ ...plan, contents: {} }, { formats }, "Expected `contents.possible` to be true or false, got undefined"],
    [plan, {}, "Expected `formats` to be an object, got undefined"],
    [plan, 5, "Expected `options` to be an object, got 5 (number)"],
  ])("%j with %j", (given, options, message) => {
    try {
      movementLines(given as never, options as never);
      expect.unreachable();
    } catch (error) {
      expect(isInputError(error) && error.message).toBe(message);
    }
  });
});
