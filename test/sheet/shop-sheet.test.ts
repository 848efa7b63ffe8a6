import { frameCheckText, glueUpLines, hazardText, sawFaultText } from "miterwright/words";
import fc from "fast-check";
import { describe, expect, expectTypeOf, test } from "vitest";
import { isInputError } from "miterwright/errors";
import { numberHazards, planFrame, stockJob, type FramePlan } from "miterwright/frame";
import { operationText, testCutsText, arrisLabel } from "miterwright/words";
import { tableSaw } from "miterwright/saw";
import { shopSheet, type SheetOptions } from "miterwright/sheet";
import { fitStock, type StockFit } from "miterwright/stock";
import { anyBrief, BATTEN, measuredPlan, plan } from "../drawing/frames.js";
import { layoutFaults } from "../drawing/read-drawing.js";
import { textOf } from "../drawing/read-xml.js";
import { formatsWith, loose, SHORT } from "../formats.js";
import { codesOf, codesRead } from "../laws/codes.js";
import { readSheet } from "./read-sheet.js";

const TELL = { formats: SHORT };

const contents = [
  { name: "acrylic", thickness: 2 },
  { name: "tide chart", thickness: 0.5 },
];
const tray = plan({ sides: 9, slope: 20, contents, clearance: 1, sticks: [{ id: "larch", length: 800 }] });
const fit = fitStock(tray.stockJobs[0]!, { stepLimit: 1e5 });
const html = shopSheet(tray, {
  formats: SHORT,
  fits: [fit],
  title: "Tide-pool tray",
  note: "For the long table.\n\nThe lid comes later.",
});
const sheet = readSheet(html);

/** How the captions of corners inside a blank say what P3 is. */
const NAMED = "P and the number of the side that starts there";

describe("the page", () => {
  test("is one document in English with one main heading, sections below it, and nothing from elsewhere", () => {
    expect(sheet.root.attributes).toEqual({ lang: "en" });
    const named = (name: string): string[] =>
      sheet.elements.filter((element) => element.name === name).map((element) => textOf(element));
    expect(named("h1")).toEqual(["Tide-pool tray"]);
    expect(named("title")[0]).toBe("Tide-pool tray");
    expect(named("h2")).toEqual(["The frame", "Sticks", "Hazards", "At the saw", "Dry fit and checks", "The panel"]);
    for (const { name, attributes } of sheet.elements) {
      expect(["script", "link", "img", "iframe", "object", "a", "base"]).not.toContain(name);
      expect(Object.keys(attributes).filter((key) => /^(?:on.*|src|href|srcset)$/.test(key))).toEqual([]);
    }
    expect(html).not.toMatch(/url\(|@import|@font-face|https?:(?!\/\/www\.w3\.org\/2000\/svg")/);
  });

  test("leaves margins that every printer can keep, on paper of 210 mm; the browser tests print it", () => {
    const style = textOf(sheet.elements.find(({ name }) => name === "style")!);
    const read = (pattern: RegExp): number => Number(pattern.exec(style)![1]);
    const margin = read(/@page\{margin:([\d.]+)mm\}/);
    expect(margin).toBeGreaterThanOrEqual(7);
    expect(read(/body\{max-width:([\d.]+)mm/)).toBeLessThanOrEqual(210 - 2 * margin);
  });

  test("keeps its tables accessible: every one has a caption and heads with a scope", () => {
    const tables = sheet.elements.filter(({ name }) => name === "table");
    expect(tables.length).toBeGreaterThan(4);
    for (const { name, attributes, children } of sheet.elements) {
      if (name === "table") expect(children[0]).toMatchObject({ name: "caption" });
      if (name === "th") expect(["row", "col"]).toContain(attributes["scope"]);
    }
  });

  test("holds well-made drawings: from above, section, piece, sticks, both steps, the panel and its first cut", () => {
    const drawings = html.match(/<svg.*?<\/svg>/gs)!;
    const titles = drawings.map((svg) => /<title>(.*?)<\/title>/.exec(svg)![1]);
    expect(titles).toEqual([
      "Frame of 9 sides seen from above",
      "Profile of a side, as it stands in the frame",
      "How 2 sticks are cut up",
      "Step 1: Cut the first end, 9 pieces",
      "Step 2: Cut the second end to length, 9 pieces",
      "Finished piece, one of 9",
      "Panel of 9 sides in its panel blank",
      "Cut 1 of the panel at the miter gauge",
    ]);
    for (const svg of drawings) expect(layoutFaults({ svg })).toEqual([]);
  });
});

describe("the sheet says", () => {
  test("the note, line by line", () => {
    const paragraphs = sheet.elements.filter(({ name }) => name === "p").map((element) => textOf(element));
    expect(paragraphs.slice(0, 2)).toEqual(["For the long table.", "The lid comes later."]);
  });

  test("every operation's sentences, in shop order", () => {
    let at = 0;
    for (const operation of tray.sawing.operations) {
      const { title, lines } = loose(operationText(operation, TELL));
      const numbers = numberHazards(tray).flatMap(({ number, steps }) =>
        steps.includes(operation.step) ? number : [],
      );
      expect(numbers.length).toBeGreaterThan(1);
      // What to heed stands before what to do.
      const heed = `Heed hazards ${numbers.slice(0, -1).join(", ")} and ${numbers.at(-1)!} above.`;
      for (const sentence of [`${operation.step}. ${title}`, heed, ...lines]) {
        const found = sheet.text.indexOf(sentence, at);
        expect([sentence, found > 0]).toEqual([sentence, true]);
        at = found;
      }
    }
  });

  test("the length at every arris, with the letter of the section, and where the tape goes", () => {
    const piece = tray.geometry.pieces[0];
    const arrises = Object.keys(tray.geometry.arrises);
    expect(sheet.tables["Finished length of every piece along every edge"]).toEqual([
      ["letter", "edge", "length", "tape"],
      ...arrises.map((arris, index) => [
        "abcdefg"[index],
        arrisLabel(arris),
        SHORT.length(piece.lengths[arris]!),
        arris === "outerBack" ? "measure here" : "",
      ]),
    ]);
  });

  test("what each scale must show, and the best graduation where the scale can't show it", () => {
    const { miter, bevel } = tray.sawing.lay!.first;
    const { best } = tray.sawing.graduations!;
    const exact = [
      [miter.reading, best.miter],
      [bevel.reading, best.bevel],
    ].map(
      ([reading, graduation]) =>
        `${SHORT.angle(reading!)} (best mark ${SHORT.angle(graduation!)}, marks every ${SHORT.angle(0.5)})`,
    );
    expect(sheet.tables["What the scales must show for either end"]).toEqual([
      ["scale", "must show", "it reads"],
      ["miter", exact[0], "degrees from a square cut"],
      ["bevel", exact[1], "degrees from an upright blade"],
    ]);
    const flat = readSheet(
      shopSheet(plan({ saw: tableSaw({ miter: { left: 60, right: 60, reads: "from-fence", step: 0.5 } }) }), TELL),
    );
    expect(flat.tables["What the scales must show for either end"]![1]).toEqual([
      "miter",
      SHORT.angle(60),
      "degrees between blade and fence",
    ]);
  });

  test("for how many frames its sticks are cut, where they are more than one", () => {
    const one = plan({ sides: 9, sticks: [{ id: "larch", length: 800 }] });
    const many = {
      ...one,
      stockJobs: [stockJob(one.geometry, { kerf: one.brief.kerf, sticks: one.stockJobs[0]!.sticks, frames: 3 })],
    };
    const { text } = readSheet(shopSheet(many, TELL));
    expect(text).toContain("pieces 9 a frame, 27 in all, longest line");
    expect(text).toMatch(/molding needed, a frame \d/);
    expect(readSheet(shopSheet(one, TELL)).text).toMatch(/pieces 9, longest line .* molding needed \d/);
  });

  test("every lay with its settings, its height and its depth along the blade, and whether it can be done or why not", () => {
    const why: Readonly<Record<string, string>> = {
      "miter-range-left": "miter too far",
      "miter-range-right": "miter too far",
      "bevel-range-left": "bevel too far",
      "bevel-range-right": "bevel too far",
      depth: "too high for the blade",
      crosscut: "too wide for the saw",
      "no-flat-back": "tips over",
      rocks: "tips over",
      "tips-over": "tips over",
      "needs-cradle": "needs a wedge",
    };
    const steep = plan({ sides: 4, slope: 60, saw: tableSaw({ depth: 40 }) });
    const rows = readSheet(shopSheet(steep, TELL)).tables["Every way to lay the stick"]!.slice(1);
    expect(rows).toHaveLength(steep.sawing.lays.length);
    steep.sawing.lays.forEach(({ first, obstacles, lay, size }, index) => {
      const [, miter, bevel, height, depth, possible] = rows[index]!;
      expect([miter, bevel]).toEqual([SHORT.angle(first.miter.reading), SHORT.angle(first.bevel.reading)]);
      expect([height, depth]).toEqual([SHORT.length(size!.height), SHORT.length(size!.depth)]);
      const wanted =
        lay === steep.sawing.lay?.lay
          ? "used"
          : obstacles.length === 0
            ? "yes"
            : [...new Set(obstacles.map(({ code }) => why[code]))].join(", ");
      expect(possible).toBe(wanted);
    });
    expect(rows.map((row) => row[0])).toEqual([
      "flat on its back",
      "face down",
      "propped at its slope",
      "on its sight edge",
      "on its outer edge",
    ]);
  });

  test("how the setting is proved on scrap, before the steps", () => {
    const { title, lines } = loose(testCutsText(tray.sawing.testCuts!, TELL));
    for (const line of lines) expect(sheet.text).toContain(line);
    expect(sheet.text.indexOf(title)).toBeLessThan(sheet.text.indexOf("1. Cut the first end"));
  });

  test("in which order steps and pieces follow each other", () => {
    expect(sheet.text).toContain("Do all steps for one piece before the next piece");
    const roughs = readSheet(shopSheet(plan({ rough: { method: "square", allowance: 20 } }), TELL));
    expect(roughs.text).toContain("Do every step for all pieces before the next step.");
  });

  test("what goes in: the panel, what the lip hides, what is left of the rabbet", () => {
    const { panel, box, hidden, seating: seat, stack } = tray.contents;
    if (seat?.possible !== true) throw new Error("the tray holds its contents");
    expect(sheet.text).toContain(
      `Panel: 9 equal sides of ${SHORT.length(panel!.side)}, across flats ${SHORT.length(panel!.acrossFlats)}, across corners ${SHORT.length(panel!.acrossCorners)}; cut from ${SHORT.length(box!.width)} × ${SHORT.length(box!.height)} as it stands.`,
    );
    expect(sheet.text).toContain(`Hidden by the lip: ${SHORT.length(hidden)} at every side`);
    expect(sheet.text).toContain(
      `Together ${SHORT.length(2.5)}; ${SHORT.length(stack!.left!)} of depth, plumb, is left behind them.`,
    );
    expect(sheet.text).toContain(
      `The wall leans away, so that their backs have ${SHORT.length(seat.roomLost)} of room at every side.`,
    );
    expect(sheet.tables["Layers from the front"]).toEqual([
      ["layer", "thick", "its back at"],
      ["acrylic", SHORT.length(2), SHORT.length(2)],
      ["tide chart", SHORT.length(0.5), SHORT.length(2.5)],
    ]);
  });

  test("how the panel is cut", () => {
    const panel = tray.panel!;
    const rows =
      sheet.tables[
        `Cuts at the miter gauge, swung ${SHORT.angle(panel.setting)} from square: gauge and blade stand at more than a right angle`
      ]!.slice(1);
    expect(rows.map((row) => row.slice(0, 3).map(Number))).toEqual(
      panel.cuts.map(({ step, side, against }) => [step, side + 1, against + 1]),
    );
    expect(sheet.text).toContain(
      `Square the panel blank to ${SHORT.length(panel.blank.width)} × ${SHORT.length(panel.blank.height)}.`,
    );
  });

  test("every name of a corner or an arris for one thing alone", () => {
    const names = (caption: string): string[] => sheet.tables[caption]!.slice(1).map(([name]) => name!);
    const corners = names(`Corners inside the panel blank, marked before the first cut: ${NAMED}`);
    const inside = tray.panel!.corners.flatMap((corner, index) => (corner.inside ? [`P${index + 1}`] : []));
    expect(corners).toEqual(inside);
    const letters = names("Finished length of every piece along every edge");
    expect(letters.filter((letter) => corners.includes(letter))).toEqual([]);
    expect(sheet.text).toContain("Sides are numbered counter-clockwise from 1, the side at the bottom.");
  });

  test("the cut list, what to take and how good it is", () => {
    expect(sheet.text).toContain("Take 2 × larch. No cheaper way to cut the sticks up exists: this is proven. ");
    const rows = sheet.tables["Cut list"]!.slice(1);
    const made = rows.map(([sticks, , pieces]) => Number(sticks!.split(" ")[0]) * Number(pieces!.split(" ")[0]));
    expect(made.reduce((sum, count) => sum + count, 0)).toBe(9);
    expect(
      rows.every(
        (row) =>
          row[1] === SHORT.length(800) &&
          row[2]!.endsWith(`× side ${SHORT.length(tray.stockJobs[0]!.pieces[0]!.length!)}`),
      ),
    ).toBe(true);
  });

  test("how often sticks are cut alike", () => {
    const short = plan({ sides: 9, slope: 20, sticks: [{ id: "larch", length: 420 }] });
    const alike = fitStock(short.stockJobs[0]!, { stepLimit: 1e5 });
    expect(alike.layouts.map(({ times }) => times)).toEqual([3]);
    const rows = readSheet(shopSheet(short, { formats: SHORT, fits: [alike] })).tables["Cut list"]!;
    expect(rows[1]!.slice(0, 3)).toEqual([
      "3 × larch",
      SHORT.length(420),
      `3 × side ${SHORT.length(short.stockJobs[0]!.pieces[0]!.length!)}`,
    ]);
  });

  test("quantities in one piece: no line is broken between a number and its unit", () => {
    expect(html).toContain(`${SHORT.length(tray.geometry.levelWidth).replace(" ", "\u00a0")}<`);
    expect(html.replace(/<svg.*?<\/svg>/gs, "")).not.toMatch(/\d mm/);
  });

  test("every check, with room for what is measured", () => {
    const rows = sheet.tables["Measure on the loose pieces, dry without glue, and again once glued"]!.slice(1);
    const WHEN = { pieces: "loose", dry: "dry", glued: "glued" };
    // What is measured again once the frame is glued has room for it in the same row.
    const again = ["opening-across-flats", "opening-across-corners", "flatness"];
    expect(rows).toEqual(
      tray.checks
        .filter(({ when }) => when !== "glued")
        .map((check) => [
          frameCheckText(check, tray.geometry),
          WHEN[check.when],
          SHORT[check.kind](check.value),
          check.tolerance === null ? "–" : `± ${SHORT[check.kind](check.tolerance)}`,
          "",
          again.includes(check.code) ? "" : "–",
        ]),
    );
    // Where the reader's digits round a tolerance away, it is none that can be measured.
    const coarse = formatsWith({ length: (value: number) => `${Math.round(value)} mm` });
    expect(readSheet(shopSheet(tray, { formats: coarse })).text).toContain("a hair");
    const glued = tray.checks.filter(({ when }) => when === "glued");
    expect(glued.map(({ value }) => value)).toEqual(
      again.map((code) => tray.checks.find((check) => check.code === code)!.value),
    );
  });

  test("every hazard, numbered, the gravest first, with what raised it, before the steps", () => {
    const places = tray.hazards.map((hazard) => sheet.text.indexOf(loose(hazardText(hazard, TELL).sentence)));
    expect(Math.min(...places)).toBeGreaterThan(0);
    expect(Math.max(...places)).toBeLessThan(sheet.text.indexOf("1. Cut the first end"));
    const words = { danger: "Danger", warning: "Warning", caution: "Caution", notice: "Notice" };
    const isList = ({ name, attributes }: (typeof sheet.elements)[number]): boolean =>
      name === "ol" && attributes["class"] === "columns";
    const items = sheet.elements.find(isList)!.children.map((item) => textOf(item as never));
    // The list numbers its items: each stands at its number.
    numberHazards(tray).forEach(({ number, hazard }) => {
      expect(items[number - 1]).toMatch(new RegExp(`^\\s*${words[hazard.signal]}\\.\\s`));
      expect(items[number - 1]).toContain(loose(hazardText(hazard, TELL).sentence));
    });
    expect(items).toHaveLength(tray.hazards.length);
    // People read no codes.
    const codes = tray.hazards.map(({ code }) => code).filter((code) => code.includes("-"));
    for (const code of codes) expect(sheet.text).not.toContain(code);
    // Printed sources are named, common practice is not repeated.
    const hazarded = readSheet(shopSheet(plan({ species: "white ash", acceptedGap: 0.01 }), TELL)).text;
    expect(hazarded).toMatch(/Notice\.\s+The seasons open.*; Forest Products Laboratory, Wood Handbook, FPL-GTR-190/);
    expect(hazarded).not.toContain("; common practice)");
    const short = tray.hazards.find(({ code }) => code === "short-piece")!;
    expect(sheet.text).toContain(
      `(length ${SHORT.length(short.numbers["length"]!)}, limit ${SHORT.length(short.numbers["limit"]!)})`,
    );
    const grain = tray.hazards.find(({ code }) => code === "end-grain")!;
    expect(sheet.text).toContain(`(plan miter ${SHORT.angle(20)}, limit ${SHORT.angle(grain.numbers["limit"]!)})`);
  });

  test("that it defers to the saw's manual, local codes and qualified advice, on every sheet", () => {
    for (const { text } of [sheet, readSheet(shopSheet(measuredPlan(), TELL))]) {
      expect(text).toContain(
        "it defers to the saw's manual, to local codes for glazing and hanging, and to qualified advice",
      );
    }
  });

  test("in which order it is glued, on which bevel blocks, and how its last joint is made", () => {
    for (const stage of glueUpLines(tray.assembly.glueUp)) expect(sheet.text).toContain(stage);
    expect(sheet.text).toContain(`Prop every piece on a bevel block of ${SHORT.angle(20)}, its outer edge the higher.`);
    expect(sheet.text).toContain(`Clamp against cauls of ${SHORT.angle(20)}`);
    expect(sheet.text).toContain("An odd number of sides has no straight halves");
    const even = readSheet(shopSheet(plan({ sides: 8 }), TELL)).text;
    expect(even).toContain("Trim both halves straight and glue them together, at corners 1 and 5.");
    expect(even).not.toContain("Prop every piece");
    const { lastJoint } = plan({ sides: 8 }).assembly;
    if (lastJoint.made !== "trimmed-halves") throw new Error("an even frame");
    expect(even).toContain(`the frame becomes ${SHORT.length(lastJoint.loss!)} narrower there`);
  });

  test("how true the saw must be and what its faults do, and which graduations make up for each other", () => {
    const { tolerance, sawErrors } = tray.assembly;
    expect(sheet.text).toContain(`the miter to ${SHORT.angle(tolerance!.shared.miter!)} where all cuts are off alike`);
    for (const fault of sawErrors!.faults)
      expect(sheet.text.includes(sawFaultText(fault))).toBe(fault.effect !== "idle");
    const eight = plan({ sides: 8, slope: 30 });
    const { best } = eight.sawing.graduations!;
    expect(readSheet(shopSheet(eight, TELL)).text).toContain(
      `On the best marks, miter ${SHORT.angle(best.miter)} with bevel ${SHORT.angle(best.bevel)}, the last joint opens ${SHORT.length(best.jointGap)} and the sides slope ${SHORT.angle(30 + best.slopeOff)}. The nearest mark of each would open it ${SHORT.length(eight.sawing.graduations!.nearest.jointGap)}.`,
    );
    const seven = plan({ sides: 7 });
    expect(readSheet(shopSheet(seven, TELL)).text).toContain(
      `On the best marks, miter 25.50° with bevel 0.00°, the last joint opens ${SHORT.length(seven.sawing.graduations!.best.jointGap)}. `,
    );
    expect(readSheet(shopSheet(plan({ sides: 6 }), TELL)).text).not.toContain("On the best marks");
  });
});

describe("a cradle", () => {
  const propped = plan({ slope: 25, lay: "propped" });

  test("is drawn and dimensioned where the lay needs one", () => {
    const { cradle } = propped.sawing;
    const text = readSheet(shopSheet(propped, TELL)).text;
    expect(text).toContain(
      `a wedge of ${SHORT.angle(25)}, ${SHORT.length(cradle!.levelRun)} wide and ${SHORT.length(cradle!.rise)} high, its sloping top ${SHORT.length(cradle!.top)}.`,
    );
    expect(shopSheet(propped, TELL)).toContain("<title>Cradle of 25.00°, cut across</title>");
    expect(text).toMatch(/The cradle\s+Make a cradle/);
    expect(html).not.toContain("Cradle of");
  });

  test("that a stick's lip would not clear says how high a base it needs", () => {
    expect(readSheet(shopSheet(plan({ slope: 75, lay: "propped" }), TELL)).text).toMatch(
      /The stick reaches [\d.]+ mm below the wedge's thin end: set the wedge on a base as high/,
    );
    expect(readSheet(shopSheet(propped, TELL)).text).not.toContain("below the wedge's thin end");
  });

  test("that would tip says by how much it must be widened", () => {
    const steep = plan({ slope: 75, lay: "propped" });
    expect(steep.sawing.cradle?.steady).toBe(false);
    expect(readSheet(shopSheet(steep, TELL)).text).toContain(
      `widen its base by ${SHORT.length(steep.sawing.cradle!.widenBy)} at least`,
    );
  });

  test("of a molding of which only level measures are known has its angle", () => {
    const text = readSheet(shopSheet(measuredPlan({ lay: "propped" }), TELL)).text;
    expect(text).toContain(`a wedge of ${SHORT.angle(20)} under its back, its outer edge the higher`);
    expect(text).toMatch(/The cradle\s+The stick lies in a cradle/);
  });
});

describe("without", () => {
  test("a title it has one of its own", () => {
    const headings = [plan({ sides: 5 }), plan({ sides: 5, slope: 12 })].map((frame) =>
      textOf(readSheet(shopSheet(frame, TELL)).elements.find(({ name }) => name === "h1")!),
    );
    expect(headings).toEqual([
      "Shop sheet: frame of 5 sides, lying flat",
      "Shop sheet: frame of 5 sides, sloping 12.00°",
    ]);
  });

  test("a fit it says how much molding is needed", () => {
    const { text, tables } = readSheet(shopSheet(tray, TELL));
    expect(text).toContain(`use up ${SHORT.length(tray.materials.moldingLength)} of molding`);
    expect(tables["Cut list"]).toBeUndefined();
  });

  test("a lay that suits the saw it says why, and has no steps", () => {
    const saw = tableSaw({
      miter: { left: 1, right: 1, reads: "from-square", step: 1 },
      bevel: { left: 1, right: 0, reads: "from-vertical", step: 1 },
    });
    const { text, tables } = readSheet(shopSheet(plan({ saw }), TELL));
    expect(text).toContain("No way to lay the stick suits this saw; the table says why.");
    expect(tables["Every way to lay the stick"]![1]![5]).toContain(
      "The miter to the left is more than this saw has: it goes to",
    );
    expect(text).not.toContain("1. Cut");
  });

  test("panes alone goes to the glazier: nothing is sawn", () => {
    const glazed = plan({ sides: 7, contents: [{ name: "pane", thickness: 2, material: "glass" }] });
    const { text, tables } = readSheet(shopSheet(glazed, TELL));
    const { panel, blank, corners } = glazed.panel!;
    expect(text).toContain(
      `Glass is not sawn. Have it cut by a glazier: 7 equal sides of ${SHORT.length(panel.side)} at ${SHORT.angle(panel.interiorAngle)}, across flats ${SHORT.length(panel.acrossFlats)}, across corners ${SHORT.length(panel.acrossCorners)}, out of ${SHORT.length(blank.width)} × ${SHORT.length(blank.height)}.`,
    );
    expect(text).not.toMatch(/Square the panel blank|miter gauge, swung/);
    expect(tables[`Corners inside that rectangle: ${NAMED}`]).toHaveLength(
      1 + corners.filter(({ inside }) => inside).length,
    );
    const many = plan({ sides: 100, contents: [{ name: "pane", thickness: 2, material: "glass" }] });
    const inside = many.panel!.corners.filter((corner) => corner.inside).length;
    expect(readSheet(shopSheet(many, TELL)).text).toContain(`${inside - 60} more corners follow in the same way.`);
    const backed = plan({
      contents: [
        { name: "pane", thickness: 2, material: "glass" },
        { name: "board", thickness: 3 },
      ],
    });
    expect(readSheet(shopSheet(backed, TELL)).text).toMatch(
      /Square the panel blank.*Glass is not sawn: have it cut by a glazier to the same sizes/,
    );
  });

  test("anything to hold it has no panel", () => {
    expect(readSheet(shopSheet(plan({ profile: BATTEN }), TELL)).text).not.toContain("Square the panel blank");
  });

  test("room for its contents it says why", () => {
    const { text } = readSheet(shopSheet(plan({ slope: 75, contents }), TELL));
    const reason = "The contents can't be held. The rabbet is too shallow";
    // Before all else, and where the contents are told of.
    expect(text.split(reason)).toHaveLength(3);
    expect(text).toContain(`Not ready to cut. ${reason}`);
  });
});

describe("a fit that is not proven", () => {
  const status = (changes: Partial<StockFit>): string =>
    readSheet(shopSheet(tray, { ...TELL, fits: [{ ...fit, ...changes }] })).text;

  test("says what could be saved", () => {
    const dearer = { status: "feasible", bound: fit.cost * (1 - 0.0321), relativeGap: 0.0321 } as const;
    expect(status(dearer)).toContain("Take 2 × larch. A cheaper way may exist; it would save 3.21 % at the most.");
    expect(status({ ...dearer, stopped: "steps" })).toContain("The search ran out of steps. A cheaper way may exist;");
  });

  test("says what is missing", () => {
    const poor = plan({ sides: 9, slope: 20, sticks: [{ id: "larch", length: 1000, count: 1 }] });
    const short = fitStock(poor.stockJobs[0]!, { stepLimit: 1e5 });
    expect(short).toMatchObject({ status: "short", shortage: "proven", unplaced: [{ piece: "side", count: 2 }] });
    const said = (shortage: NonNullable<StockFit["shortage"]>): string =>
      readSheet(shopSheet(poor, { ...TELL, fits: [{ ...short, shortage }] })).text;
    const proven = "The sticks can't give all pieces: still missing 2 × side.";
    expect(said("proven")).toContain(`Take 1 × larch. ${proven}`);
    expect(said("proven")).toContain(`Not ready to cut. ${proven}`);
    expect(said("not-found")).toContain("No way was found to get all pieces from the sticks: still missing 2 × side.");
  });
});

describe("text of the caller", () => {
  const worst = `<script>alert("1" & '2')</script><!-- \0`;

  test("is shown as text: title, note, names, arrises and what formatters write", () => {
    const profile = {
      ...BATTEN,
      arrises: {
        [worst]: BATTEN.outline[1]!,
        wallLedge: { x: 8, y: 9 },
        wallMouth: { x: 8, y: 0 },
        sightBack: { x: 0, y: 9 },
      },
    };
    const frame = plan({ profile, contents: [{ name: worst, thickness: 2 }], sticks: [{ id: worst, length: 2400 }] });
    const options: SheetOptions = {
      formats: formatsWith({ length: (value) => `${value}${worst}`, angle: (degrees) => `${worst}${degrees}` }),
      title: worst,
      note: `${worst}\n${worst}`,
      fits: [fitStock(frame.stockJobs[0]!, { stepLimit: 1e5 })],
    };
    const read = readSheet(shopSheet(frame, options));
    expect(read.elements.map(({ name }) => name)).not.toContain("script");
    expect(read.text.split("<script>alert").length).toBeGreaterThan(20);
  });
});

test("any plan has a well-formed sheet without a code of its data, the same after JSON", () => {
  fc.assert(
    fc.property(anyBrief, (brief) => {
      const frame = planFrame(brief);
      const made = shopSheet(frame, TELL);
      expect(made).not.toMatch(/NaN|undefined|Infinity|\[object/);
      const { text } = readSheet(made);
      for (const length of Object.values(frame.geometry.pieces[0].lengths))
        expect(text).toContain(SHORT.length(length));
      expect(shopSheet(JSON.parse(JSON.stringify(frame)) as FramePlan, TELL)).toBe(made);
      // With what the drawings say to those who hear them.
      const said = made.replace(/<style>.*?<\/style>/s, "").replace(/<[^>]*>/g, " ");
      expect(codesRead(said, codesOf(frame))).toEqual([]);
    }),
    { numRuns: 40 },
  );
});

describe("refused are", () => {
  function refusal(run: () => unknown): readonly [code: string, path: string, message: string] {
    try {
      run();
    } catch (error) {
      if (isInputError(error)) return [error.code, error.path, error.message];
      throw error;
    }
    throw new Error("nothing was refused");
  }

  test("plans that are none", () => {
    expect(refusal(() => shopSheet(null as never, TELL))).toEqual([
      "type",
      "plan",
      "Expected `plan` to be an object, got null",
    ]);
    expect(refusal(() => shopSheet(tray.geometry as never, TELL))).toEqual([
      "missing",
      "schemaVersion",
      "Expected `schemaVersion` to be 1, the form of plan that is known here, got undefined",
    ]);
    expect(refusal(() => shopSheet({ ...tray, checks: undefined } as never, TELL))).toEqual([
      "missing",
      "checks",
      "Expected `checks` to be an array, got undefined",
    ]);
  });

  test("options that are none", () => {
    expect(refusal(() => shopSheet(tray, { formats: { angle: SHORT.angle } as never }))).toEqual([
      "missing",
      "formats.length",
      "Expected `formats.length` to be a function that writes a length as text, got undefined",
    ]);
    expect(refusal(() => shopSheet(tray, { ...TELL, fit } as never))).toEqual([
      "unknown",
      "fit",
      "Expected no key but `fits`, `formats`, `words`, `paper`, `title`, `note`, got `fit`; did you mean `fits`?",
    ]);
    expect(refusal(() => shopSheet(tray, { ...TELL, paper: "a5" as never }))).toEqual([
      "unknown",
      "paper",
      'Expected `paper` to be one of "a4", "letter", got "a5" (string)',
    ]);
    expect(refusal(() => shopSheet(tray, { ...TELL, title: "" }))).toEqual([
      "range",
      "title",
      'Expected `title` to be a string that is not empty, got "" (string)',
    ]);
    expect(refusal(() => shopSheet(tray, { ...TELL, note: 5 as never }))).toEqual([
      "type",
      "note",
      "Expected `note` to be a string that is not empty, got 5 (number)",
    ]);
  });

  test("a fit without a job, or for another one", () => {
    const message =
      "Expected `fits` to be at most as many as the plan has stock jobs, 0, got 1; it has some when its brief offers sticks";
    expect(refusal(() => shopSheet(plan(), { formats: SHORT, fits: [fit] }))).toEqual(["conflict", "fits", message]);
    const other = plan({ sides: 9, sticks: [{ id: "oak", length: 2000 }] });
    expect(refusal(() => shopSheet(other, { formats: SHORT, fits: [fit] }))).toEqual([
      "conflict",
      "fits[0].layouts[0]",
      'Expected `fits[0]` to be a fit of its stock job: The job has no stick "larch"',
    ]);
  });
});

test("a sheet is a string, of a plan with arrises of any names", () => {
  expectTypeOf(shopSheet).returns.toEqualTypeOf<string>();
  expectTypeOf(shopSheet).toBeCallableWith(
    planFrame({ sides: 4, opening: { side: 100 }, measured: { levelWidth: 30 } }),
    TELL,
  );
});
