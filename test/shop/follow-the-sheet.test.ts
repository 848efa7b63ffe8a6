import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planFrame, type FramePlan, type RoughMethod } from "miterwright/frame";
import { arrisLabel, english, type Words } from "miterwright/words";
import { shopSheet } from "miterwright/sheet";
import { describePlan, type Block, type Report, type Step } from "miterwright/report";
import { molding } from "miterwright/profile";
import { miterSaw, tableSaw, type Saw } from "miterwright/saw";
import { formatAngle, formatLength, formatters, type Formats } from "miterwright/units";
import { elementsOf, textOf } from "../drawing/read-xml.js";
import { loose } from "../formats.js";
import { briefs } from "../frame/briefs.js";
import { readSheet } from "../sheet/read-sheet.js";
import { follow, rawStick, reach, type Floor, type Workpiece } from "./shop-floor.js";

const fine: Formats = {
  ...formatters({ unit: "mm" }),
  length: (value) => formatLength(value, "mm", { digits: 9 }),
  angle: (degrees) => formatAngle(degrees, { digits: 10 }),
};

/** A block of a plan's report by its section and name. */
function blockOf<K extends Block["kind"]>(
  { sections }: Report,
  kind: K,
  [section, name]: readonly [section: string, name: string],
): Extract<Block, { kind: K }> {
  const found = sections.find((one) => one.name === section)?.blocks.find((block) => block.name === name);
  if (found?.kind !== kind) throw new Error(`the report has no ${kind} ${section}.${name}`);
  return found as Extract<Block, { kind: K }>;
}

/** What a plan's report says that is to be done, and how the scales count. */
function workOf(plan: FramePlan, words?: Words): { readonly steps: readonly Step[]; readonly scales: Floor["scales"] } {
  const report = loose(describePlan(plan, { formats: fine, words }));
  const [miter, bevel] = blockOf(report, "table", ["saw", "settings"]).cells;
  const scale = (row: readonly string[]): { shows: string; counts: string } => ({ shows: row[1]!, counts: row[2]! });
  return {
    steps: blockOf(report, "steps", ["steps", "steps"]).steps,
    scales: { Miter: scale(miter!), Bevel: scale(bevel!) },
  };
}

function floorOf(plan: FramePlan, scales: Floor["scales"]): Floor {
  return { fence: plan.brief.saw.fence, slope: plan.geometry.slope, labelOf: (arris) => arrisLabel(arris), scales };
}

/** Makes one piece of a frame by following the steps of its report, one after the other. */
function makePiece(plan: FramePlan, words?: Words): Workpiece {
  const { steps, scales } = workOf(plan, words);
  const floor = floorOf(plan, scales);
  let piece = rawStick(plan.geometry.profile!, plan.geometry.pieces[0].longest.length * 3);
  let lying: Parameters<typeof follow>[2] = null;
  if (steps.length !== plan.sawing.operations.length) throw new Error("the report has not as many steps as the plan");
  for (const step of steps) ({ piece, lying } = follow(step, piece, lying, floor));
  return piece;
}

/** Lengths of a made piece along every named arris. */
function lengthsOf(piece: Workpiece): Record<string, number> {
  return Object.fromEntries(
    Object.entries(piece.profile.arrises).map(([arris, point]) => [
      arris,
      reach(piece.end, point) - reach(piece.start, point),
    ]),
  );
}

const roughs = fc.constantFrom<RoughMethod>(
  { method: "none" },
  { method: "square", allowance: 15 },
  { method: "mitered", allowance: 15 },
);
const saws = fc.constantFrom<Saw>(
  tableSaw(),
  miterSaw(),
  tableSaw({ bevel: { left: 0, right: 46, reads: "from-table", step: 0.25 } }),
  tableSaw({ miter: { left: 60, right: 60, reads: "from-fence", step: 1 } }),
);

describe("a maker who follows the sentences of the report", () => {
  test("gets every planned length and both planned ends", () => {
    let made = 0;
    fc.assert(
      fc.property(briefs, roughs, saws, (brief, rough, saw) => {
        const plan = planFrame({ ...brief, rough, saw });
        if (plan.sawing.lay === null) return;
        made += 1;
        const piece = makePiece(plan);
        const { lengths, start, end } = plan.geometry.pieces[0];
        for (const [arris, length] of Object.entries(lengthsOf(piece))) expect(length).toBeCloseTo(lengths[arris]!, 5);
        for (const [got, wanted] of [
          [piece.start, start.plane],
          [piece.end, end.plane],
        ] as const) {
          expect(got.along).toBeCloseTo(wanted.along, 9);
          expect(got.across).toBeCloseTo(wanted.across, 9);
          expect(got.through).toBeCloseTo(wanted.through, 9);
        }
      }),
    );
    expect(made).toBeGreaterThan(100);
  });

  test("gets them in every lay that a saw with a wide reach allows", () => {
    const saw = tableSaw({
      miter: { left: 90, right: 90, reads: "from-square", step: 0.5 },
      bevel: { left: 90, right: 90, reads: "from-vertical", step: 0.5 },
    });
    const seen = new Set<string>();
    fc.assert(
      fc.property(
        briefs,
        fc.constantFrom("flat", "propped", "sight-edge-down", "outer-edge-down", "face-down"),
        (brief, lay) => {
          const plan = planFrame({ ...brief, saw, lay });
          if (plan.sawing.lay === null) return;
          seen.add(lay);
          const lengths = lengthsOf(makePiece(plan));
          for (const [arris, length] of Object.entries(plan.geometry.pieces[0].lengths))
            expect(lengths[arris]).toBeCloseTo(length, 5);
        },
      ),
    );
    expect([...seen].sort()).toEqual(["face-down", "flat", "outer-edge-down", "propped", "sight-edge-down"]);
  });

  test("gets them from a stick that lies on a back milled level, without a cradle", () => {
    for (const slope of [25, -40]) {
      for (const rough of [{ method: "none" }, { method: "square", allowance: 15 }] as const) {
        const profile = molding({ width: 60, thickness: 50, madeFor: { slope, back: true } });
        const plan = planFrame({ sides: 7, slope, profile, rough, opening: { side: 300 } });
        expect(plan.sawing.lay).toMatchObject({ lay: "propped", cradle: null });
        const lengths = lengthsOf(makePiece(plan));
        for (const [arris, length] of Object.entries(plan.geometry.pieces[0].lengths))
          expect(lengths[arris]).toBeCloseTo(length, 5);
      }
    }
  });

  test("assembles a ring that closes, piece against piece", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const plan = planFrame(brief);
        if (plan.sawing.lay === null) return;
        const piece = makePiece(plan);
        const { sides, slope } = plan.geometry;
        const [cosine, sine] = [Math.cos((slope * Math.PI) / 180), Math.sin((slope * Math.PI) / 180)];
        // Join the next piece to the end of the one before: turn by 360 / n and move until one corner meets; then all must.
        const turn = (2 * Math.PI) / sides;
        const place = (along: number, point: { x: number; y: number }, k: number): [number, number, number] => {
          const out = point.x * cosine - point.y * sine;
          const up = point.x * sine + point.y * cosine;
          return [
            along * Math.cos(k * turn) + out * Math.sin(k * turn),
            along * Math.sin(k * turn) - out * Math.cos(k * turn),
            up,
          ];
        };
        const { outline } = piece.profile;
        let position: [number, number] = [0, 0];
        const first = outline.map((point) => place(reach(piece.start, point), point, 0));
        for (let k = 0; k < sides; k += 1) {
          const ends = outline.map((point) => place(reach(piece.end, point), point, k));
          const starts = outline.map((point) => place(reach(piece.start, point), point, k + 1));
          const step = [ends[0]![0] - starts[0]![0], ends[0]![1] - starts[0]![1]] as const;
          for (const [index, end] of ends.entries()) {
            expect(end[0] - starts[index]![0]).toBeCloseTo(step[0], 4);
            expect(end[1] - starts[index]![1]).toBeCloseTo(step[1], 4);
            expect(end[2] - starts[index]![2]).toBeCloseTo(0, 6);
          }
          position = [position[0] + step[0], position[1] + step[1]];
        }
        // After the last joint the next piece would lie exactly on the first.
        expect(Math.hypot(...position) / plan.geometry.overall.polygon.circumradius).toBeLessThan(1e-6);
        expect(first).toHaveLength(outline.length);
      }),
      { numRuns: 80 },
    );
  });
});

test("the sheet prints exactly the sentences of the report, step by step", () => {
  fc.assert(
    fc.property(briefs, roughs, saws, (brief, rough, saw) => {
      const plan = planFrame({ ...brief, rough, saw });
      if (plan.sawing.lay === null) return;
      const { elements } = readSheet(shopSheet(plan, { formats: fine }));
      const printed = elements
        .filter(({ name }) => name === "article")
        .map((article) => {
          const within = elementsOf(article);
          const [head] = within.filter(({ name }) => name === "h3");
          return [head!, ...within.filter(({ name }) => name === "li")].map((element) => loose(textOf(element)));
        });
      const { steps } = workOf(plan);
      expect(printed).toEqual(
        steps.map(({ step, title, heed, lines }) => [`${step}. ${title}`, ...(heed === null ? [] : [heed]), ...lines]),
      );
    }),
    { numRuns: 30 },
  );
});

describe("the shop floor itself", () => {
  const plan = planFrame({
    sides: 6,
    slope: 30,
    lay: "flat",
    opening: { side: 400 },
    profile: {
      outline: [
        { x: 0, y: 0 },
        { x: 40, y: 0 },
        { x: 40, y: 20 },
        { x: 0, y: 20 },
      ],
      arrises: { outerBack: { x: 40, y: 0 } },
    },
  });
  const { steps, scales } = workOf(plan);
  const floor = floorOf(plan, scales);
  const raw = rawStick(plan.geometry.profile!, 900);
  const [first, second] = steps as [Step, Step];
  /** A step in which words stand for others. */
  const misread = (
    { kind, lines, settings }: Step,
    right: string,
    wrong: string,
  ): Pick<Step, "kind" | "lines" | "settings"> => {
    const change = (text: string): string => text.replace(right, wrong);
    return {
      kind,
      lines: lines.map(change),
      settings: settings.map(({ name, value }) => ({ name, value: change(value) })),
    };
  };

  test.each([
    ["its outer edge at the fence", "its sight edge at the fence"],
    ["Keep the part to the left", "Keep the part to the right"],
    ["runs to the left", "runs to the right"],
    ["leans to the left", "leans to the right"],
  ])("makes another piece when %j is read as %j", (right, wrong) => {
    // What stands beside the step's number is misread with the sentence.
    const scale = { runs: "miter scale", leans: "bevel scale" }[right.split(" ")[0]!];
    const sentences = misread(first, right, wrong);
    expect(sentences.lines).not.toEqual(first.lines);
    const settings = sentences.settings.map(({ name, value }) =>
      name === scale ? { name, value: value.replace("to the left", "to the right") } : { name, value },
    );
    const { plane } = plan.geometry.pieces[0].end;
    const good = follow(first, raw, null, floor).piece.end;
    expect(good.across).toBeCloseTo(plane.across, 9);
    if (scale !== undefined) expect(() => follow(sentences, raw, null, floor)).toThrow(/^not so/);
    const bad = follow({ ...sentences, settings }, raw, null, floor).piece;
    const cut = bad.end.across === 0 ? bad.start : bad.end;
    expect(
      Math.abs(cut.across - plane.across) + Math.abs(cut.through - plane.through) + Math.abs(cut.along - plane.along),
    ).toBeGreaterThan(0.1);
  });

  test("makes other pieces by words that take left for right", () => {
    const swapped: Words = {
      ...english,
      steps: {
        ...english.steps,
        bevel: (values) =>
          english.steps.bevel(values).replace(/(left|right)\.$/, (hand) => (hand === "left." ? "right." : "left.")),
        toSide: ({ setting, toward }) => english.steps.toSide({ setting, toward }),
      },
    };
    expect(() => makePiece(plan, swapped)).toThrow(/^not so/);
    const both: Words = {
      ...swapped,
      steps: {
        ...swapped.steps,
        miter: (values) =>
          english.steps
            .miter(values)
            .replace(/the (left|right) as/, (_, hand) => `the ${hand === "left" ? "right" : "left"} as`),
        toSide: ({ setting, toward }) =>
          english.steps.toSide({ setting, toward: toward === "left" ? "right" : "left" }),
      },
    };
    let lengths: Record<string, number> = {};
    try {
      lengths = lengthsOf(makePiece(plan, both));
    } catch (error) {
      // The stop may find it out first.
      expect(String(error)).toMatch(/another arris meets the stop first|the arris is not so high/);
    }
    expect(lengths["outerBack"]).not.toBeCloseTo(plan.geometry.pieces[0].lengths["outerBack"], 5);
  });

  test.each([
    ["its sight edge", "its outer edge", /^not so/],
    ["down on the table", "20 mm above the table", /^the arris is not so high/],
    ["Stop to the left", "Stop to the right", /^not so/],
  ])("stops where %j is told as %j", (right, wrong, error) => {
    const { piece, lying } = follow(first, raw, null, floor);
    const other = misread(second, right, wrong);
    expect(other.lines).not.toEqual(second.lines);
    expect(() => follow(other, piece, lying, floor)).toThrow(error);
  });

  test("stops where a setting beside the number is another than in the sentence", () => {
    const setTo = (name: string, value: string): Pick<Step, "kind" | "lines" | "settings"> => ({
      ...first,
      settings: first.settings.map((setting) => (setting.name === name ? { name, value } : setting)),
    });
    for (const name of ["miter scale", "bevel scale"])
      expect(() => follow(setTo(name, "12.5° to the left"), raw, null, floor)).toThrow(/^not so/);
    const { piece, lying } = follow(first, raw, null, floor);
    const longer = second.settings.map((setting) =>
      setting.name === "length" ? { ...setting, value: "1 mm" } : setting,
    );
    expect(() => follow({ ...second, settings: longer }, piece, lying, floor)).toThrow(/^not so/);
    const other = { ...scales, Miter: { ...scales.Miter, counts: "degrees between blade and fence" } };
    expect(() => follow(first, raw, null, { ...floor, scales: other })).toThrow(/^not so/);
  });

  test("stops at a sentence that it does not know", () => {
    expect(() => follow({ ...first, lines: ["Turn it over."] }, raw, null, floor)).toThrow();
    const { piece, lying } = follow(first, raw, null, floor);
    expect(() => follow({ ...second, lines: ["Turn it over."] }, piece, lying, floor)).toThrow(/^cannot follow/);
  });
});
