import { describe, expect, test } from "vitest";
import type { Hazard } from "miterwright/errors";
import { planFrame, type ContentsLayer, type FrameBrief, type FramePlan } from "miterwright/frame";
import { hazardText, operationText } from "miterwright/words";
import { molding } from "miterwright/profile";
import { miterSaw, tableSaw } from "miterwright/saw";
import type { Formats } from "miterwright/units";
import { plain, rabbeted } from "../frame/briefs.js";
import { formatsWith, loose } from "../formats.js";
import { HAZARD_CASES } from "../frame/hazard-cases.js";
import { heed } from "../frame/heed.js";

function planOf(changes: Partial<FrameBrief>): FramePlan {
  return planFrame({ sides: 6, profile: rabbeted, opening: { side: 400 }, ...changes } as FrameBrief);
}
function raised(changes: Partial<FrameBrief>, code: string): Hazard[] {
  return planOf(changes).hazards.filter((hazard) => hazard.code === code);
}
const glass = { name: "pane", thickness: 2, material: "glass" } as const;
const board = { name: "board", thickness: 3 } as const;
const LEVEL = { profile: undefined, measured: { levelWidth: 45, lap: 6 } } as unknown as Partial<FrameBrief>;

describe("what goes in is sawn, cut by a glazier, or not there", () => {
  test.each<[string, Partial<FrameBrief>, FramePlan["contents"]["work"]]>([
    ["a rabbet with nothing named for it", {}, "sawn"],
    ["a pane", { contents: [glass] }, "glass"],
    ["two panes", { contents: [glass, glass] }, "glass"],
    ["a pane and a board", { contents: [glass, board] }, "sawn"],
    ["a mirror by its name alone", { contents: [{ name: "old Mirror", thickness: 4 }] }, "glass"],
    ["glass by its name alone", { contents: [{ name: "picture glass", thickness: 2 }] }, "glass"],
    [
      "a mirror of known density",
      { contents: [{ name: "mirror", thickness: 4, material: { density: 2500 } }] },
      "glass",
    ],
    ["a mirror of acrylic", { contents: [{ name: "mirror", thickness: 3, material: "acrylic" }] }, "sawn"],
    ["plexiglass", { contents: [{ name: "plexiglass", thickness: 3 }] }, "sawn"],
    ["a board of fiberglass", { contents: [{ name: "fiberglass", thickness: 3 }] }, "sawn"],
    ["plain stock", { profile: plain }, "none"],
    ["a sheet cut to a plain frame", { profile: plain, opening: { cutFrom: { width: 500, height: 400 } } }, "sawn"],
    ["level measures with a lip", LEVEL, "sawn"],
  ])("%s: %j", (_, changes, work) => {
    const plan = planOf({ ...changes, opening: changes.opening ?? { side: 90 } });
    expect(plan.contents.work).toBe(work);
    const codes = plan.hazards.map(({ code }) => code);
    // So small a panel is held by a short edge, and large ones leave the gauge's guide.
    expect(codes.some((code) => code === "deep-panel" || code === "short-panel-edge")).toBe(work === "sawn");
  });

  test("no pane is ripped", () => {
    const narrow = { sides: 4, opening: { side: 100 } };
    expect(raised({ ...narrow, contents: [board] }, "narrow-rip")).toHaveLength(1);
    expect(raised({ ...narrow, contents: [glass] }, "narrow-rip")).toEqual([]);
  });
});

describe("art that touches glass", () => {
  const layer = (name: string): ContentsLayer => ({ name, thickness: 1 });
  test.each(["print", "Photograph", "watercolors", "tide chart", "oil on canvas", "art"])("is noted for %s", (name) => {
    const [hazard] = raised({ contents: [glass, layer(name)] }, "art-on-glass");
    expect(hazard).toMatchObject({ signal: "notice" });
    expect(heed(hazard!)).toContain(`"${name}" lies against glass`);
    expect(raised({ contents: [glass, layer("mat"), layer(name)] }, "art-on-glass")).toEqual([]);
    expect(raised({ contents: [layer("window mount"), layer(name), glass] }, "art-on-glass")).toHaveLength(1);
  });

  test.each(["mat", "backing paper", "mount board", "spacer", "artichoke", "printer's tray"])(
    "is not for %s, which is no art or keeps it apart",
    (name) => {
      expect(raised({ contents: [glass, layer(name)] }, "art-on-glass")).toEqual([]);
    },
  );

  test("is not said of acrylic, nor without a pane", () => {
    expect(raised({ contents: [{ ...layer("sheet"), material: "acrylic" }, layer("print")] }, "art-on-glass")).toEqual(
      [],
    );
    expect(raised({ contents: [layer("print")] }, "art-on-glass")).toEqual([]);
  });

  test("leaves out a mass that nobody knows", () => {
    expect(raised({ contents: [{ name: "glass", thickness: 2 }] }, "glass-handling")[0]!.numbers).toEqual({});
  });
});

describe("at the saw", () => {
  test("what lies under the leaning blade is told apart: an offcut endangers, the piece only has to be clamped", () => {
    const found = new Set<string>();
    for (const slope of [20, -20, 50, -50]) {
      for (const saw of [tableSaw(), miterSaw()]) {
        const plan = planOf({ slope, saw, lay: "flat" });
        const under = plan.sawing.lay!.first.underBlade;
        const [hazard] = plan.hazards.filter(({ code }) => /^(?:piece|offcut)-under-bevel$/.test(code));
        found.add(under);
        expect(hazard!.code).toBe(under === "offcut" ? "offcut-under-bevel" : "piece-under-bevel");
        expect(hazard!.signal).toBe("warning");
        expect(heed(hazard!)).toMatch(under === "offcut" ? /^The offcut lies under/ : /^The piece that is kept/);
      }
    }
    expect([...found].sort()).toEqual(["kept", "offcut"]);
  });

  test("a piece that the last cut frees is held by hand only where it is long enough, and at the fence that is meant", () => {
    const sentence = (changes: Partial<FrameBrief>): string => heed(raised(changes, "trapped-piece")[0]!);
    const saw = miterSaw();
    expect(sentence({ saw })).toContain("Hold the piece itself against the fence until");
    expect(sentence({ saw, opening: { side: 150 } })).toContain(
      "Keep the piece itself down with a hold-down against the fence until",
    );
    // A gauge's stop travels with the piece, and without a stop nothing is caught.
    expect(raised({}, "trapped-piece")).toEqual([]);
    expect(raised({ saw, rough: { method: "mitered", allowance: 10 } }, "trapped-piece")).toEqual([]);
  });

  test("a cradle is warned of where the section is not known too, which it is then said to be", () => {
    const propped = { ...LEVEL, slope: 30, lay: "propped" } as Partial<FrameBrief>;
    expect(raised(propped, "fasteners")).toMatchObject([{ signal: "warning", numbers: {} }]);
    expect(heed(raised(propped, "balance-not-known")[0]!)).toMatch(
      /^With level measures alone it is not known whether/,
    );
    expect(raised({ ...propped, lay: "flat" }, "fasteners")).toEqual([]);
    expect(raised({ ...propped, lay: "flat" }, "balance-not-known")).toEqual([]);
  });

  test("a cradle goes round with the stick that lies in it", () => {
    const tell = { formats: formatsWith() };
    const flip = (lay: "propped" | "flat"): string =>
      operationText(planOf({ slope: 30, lay }).sawing.operations[1]!, tell).lines[0]!;
    expect(flip("propped")).toMatch(/^Flip the stick end for end, and its cradle with it, still with its back in the/);
    expect(flip("flat")).toMatch(/^Flip the stick end for end, still with its back on the table/);
  });
});

describe("a saw that does not reach", () => {
  test("is said to with the reason, in the lay that was asked for, and what would do instead", () => {
    const low = { saw: tableSaw({ depth: 30 }) };
    const plan = planOf({ ...low, lay: "sight-edge-down" });
    expect(plan.sawing.lay).toBeNull();
    expect(plan.hazards[0]).toMatchObject({
      code: "capacity",
      numbers: {
        height: 52,
        depth: expect.closeTo(30 * Math.cos(Math.PI / 6), 9) as unknown,
        miter: 0,
        bevel: expect.closeTo(30, 9) as unknown,
      },
      kinds: { height: "length", depth: "length", miter: "angle", bevel: "angle" },
      facts: { lay: "asked-for-others-work" },
    });
    expect(heed(plan.hazards[0]!)).toBe(
      "The stick can't be cut lying as was asked for. In this position the stick stands higher than the blade reaches at this bevel. The stick tips over in this position: its center of gravity is not above what it rests on. It can be cut in another position: see every way to lay the stick.",
    );
    const none = planOf({ saw: tableSaw({ depth: 5 }) });
    expect(heed(none.hazards[0]!)).toBe(
      "No way to lay the stick suits this saw. In this position the stick stands higher than the blade reaches at this bevel.",
    );
    expect(none.hazards[0]!.numbers).toMatchObject({ height: 19, depth: 5 });
  });

  test("is said to with the depth that it has at that bevel", () => {
    const { slope, saw } = { slope: 30, saw: tableSaw({ depth: 30, depthAt45: 16 }) };
    const [hazard] = planOf({ slope, saw, lay: "flat" }).hazards;
    expect(hazard).toMatchObject({ code: "capacity", numbers: { height: 19, depth: 16 } });
    const steep = planOf({ slope, saw: tableSaw({ depth: 19.5 }), lay: "flat" });
    const { bevel } = steep.sawing.lays[0]!;
    expect(steep.hazards[0]!.numbers).toMatchObject({ height: 19, depth: 19.5 * Math.cos((bevel * Math.PI) / 180) });
  });

  test("is no reason to hold back what concerns the pieces", () => {
    const codes = planOf({ sides: 12, opening: { side: 60 }, saw: tableSaw({ depth: 5 }) }).hazards.map(
      ({ code }) => code,
    );
    expect(codes).toEqual(
      expect.arrayContaining(["capacity", "short-piece", "thrown-offcut", "end-grain", "rip-fence", "dust"]) as unknown,
    );
  });
});

describe("a hazard in words", () => {
  const formats = formatsWith({ length: (value) => `${value.toFixed(0)} mm` });
  const numbersOf = (given: Hazard, own: Formats = formats): string =>
    loose(hazardText(given, { formats: own }).numbers);
  const [hazard] = planOf({ opening: { side: 100 } }).hazards;

  test("has its numbers in the reader's units, finely where rounding would lose what they say", () => {
    const [first, limit] = [hazard!.numbers["length"]!, hazard!.numbers["limit"]!];
    expect(numbersOf(hazard!)).toBe(`length ${first.toFixed(0)} mm, limit ${limit} mm`);
    const gap = {
      ...hazard!,
      numbers: { jointGap: 0.3, limit: 0.25 },
      kinds: { jointGap: "length", limit: "length" },
    } as const;
    const small = (value: number): string => `${value.toFixed(2)} mm`;
    expect(numbersOf(gap, { ...formats, small })).toBe("gap 0.30 mm, limit 0.25 mm");
    expect(numbersOf(gap)).toBe("gap 0 mm, limit 0 mm");
  });

  test.each<[string, unknown, string]>([
    ["nothing", null, "Expected `hazard` to be an object, got null"],
    ["no numbers", { ...hazard!, numbers: 3 }, "Expected `hazard.numbers` to be an object, got 3 (number)"],
    [
      "no facts where its code has some",
      { ...hazard!, code: "tip" },
      "Expected `hazard.facts` to be an object, got undefined",
    ],
    [
      "a fact that its code does not have",
      { ...hazard!, code: "tip", facts: { fence: "garden" } },
      'Expected `hazard.facts.fence` to be one of "saw", "gauge", got "garden" (string)',
    ],
    [
      "no names where its code has some",
      { ...hazard!, code: "panel-lap", names: {} },
      "Expected `hazard.names.layer` to be a string that is not empty, got undefined",
    ],
    [
      "a code that no rule has",
      { ...hazard!, code: "seat" },
      'Expected `hazard.code` to be one of "short-piece", "short-rest", "trapped-piece", ',
    ],
    [
      "another signal",
      { ...hazard!, signal: "dire" },
      'Expected `hazard.signal` to be one of "danger", "warning", "caution", "notice", got "dire" (string)',
    ],
  ])("is refused for %s", (_, given, message) => {
    expect(() => hazardText(given as never, { formats })).toThrow(message);
  });

  test("is named in steps by a code that a rule has", () => {
    const [operation] = planOf({}).sawing.operations;
    const damaged = { ...operation!, hazards: ["dust", "seat"] };
    expect(() => operationText(damaged as never, { formats })).toThrow(
      /^Expected `operation\.hazards\[1\]` to be one of "short-piece", .*, "panel-lap", got "seat" \(string\)$/,
    );
  });
});

test("a source is told where a rule is printed, and not where it is common practice or computed", () => {
  const told = (hazards: readonly Hazard[]): string[] =>
    hazards.map((hazard) => hazardText(hazard, { formats: formatsWith() }).source);
  expect(told(raised({ slope: 70, contents: [board] }, "seating-impossible"))).toEqual([""]);
  expect(told(raised({}, "dust"))).toEqual([""]);
  const [narrow] = HAZARD_CASES["narrow-rip"].raises;
  const printed = planFrame(narrow!).hazards.filter(({ code }) => code === "narrow-rip");
  expect(told(printed)[0]).toMatch(/^HSE, Woodworking Information Sheet 16/);
});

describe("in the rabbet", () => {
  test("what can't be held is said to, with what to change", () => {
    const impossible = raised({ slope: 70, contents: [board] }, "seating-impossible");
    expect(impossible.map(heed)).toEqual([
      "The rabbet is too shallow: at this slope its wall ends before it reaches the front of level contents. Choose another rabbet, slope or molding before you cut.",
    ]);
    expect(impossible).toMatchObject([
      {
        signal: "notice",
        facts: { reason: "past-mouth" },
        numbers: { slope: 70 },
        source: "computed",
      },
    ]);
    const tight = raised({ profile: plain, opening: { side: 20 }, clearance: 20 }, "no-contents-left");
    expect(tight.map(heed)).toEqual([
      "The clearance leaves nothing of the opening: take less of it, or a larger opening.",
    ]);
    expect(tight).toMatchObject([
      {
        signal: "notice",
        numbers: { clearance: 20 },
        source: "computed",
      },
    ]);
  });

  test("little to bear on is a caution, and a warning where it holds glass", () => {
    const narrow = { profile: molding({ width: 50, thickness: 20, rabbet: { width: 4, depth: 9 } }), clearance: 2 };
    expect(raised({ ...narrow, contents: [board] }, "narrow-lip")).toMatchObject([
      { signal: "caution", numbers: { lap: 2, limit: 3 } },
    ]);
    expect(raised({ ...narrow, contents: [glass] }, "narrow-lip")[0]).toMatchObject({ signal: "warning" });
  });

  test("it is said what level measures do not tell", () => {
    const sloping = { ...LEVEL, slope: 20, contents: [board] } as Partial<FrameBrief>;
    expect(raised(sloping, "seating-not-known").map(heed)).toEqual([
      "With level measures alone it is not known how the tilted rabbet holds the contents: try them in an offcut of the molding, propped at its slope.",
    ]);
    expect(raised({ ...sloping, slope: 0 }, "seating-not-known")).toEqual([]);
    expect(raised({ ...sloping, contents: [] }, "seating-not-known")).toEqual([]);
  });

  test("too little room is a notice, and a caution for glass that lacks more than a hair", () => {
    const signal = (material: "acrylic" | "glass", short: number): string => {
      const contents = [{ name: "sheet", thickness: 2, material }];
      const large = { opening: { side: 4000 }, contents };
      const { needed } = planOf(large).contents.room[0]!;
      return raised({ ...large, clearance: needed - short }, "panel-room")[0]!.signal;
    };
    expect([signal("acrylic", 0.05), signal("acrylic", 0.2)]).toEqual(["notice", "notice"]);
    expect([signal("glass", 0.05), signal("glass", 0.11)]).toEqual(["notice", "caution"]);
  });
});
