import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planFrame, type FramePlan, type RoughMethod } from "miterwright/frame";
import { operationText, arrisLabel } from "miterwright/words";
import { shopSheet } from "miterwright/sheet";
import { molding } from "miterwright/profile";
import { miterSaw, tableSaw, type Saw } from "miterwright/saw";
import { formatAngle, formatLength } from "miterwright/units";
import { briefs } from "../frame/briefs.js";
import { follow, rawStick, reach, type Workpiece } from "./shop-floor.js";

const fine = {
  length: (value: number): string => formatLength(value, "mm", { digits: 9 }),
  angle: (degrees: number): string => formatAngle(degrees, { digits: 10 }),
};

const CHARACTERS: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', "#39": "'" };

/** The sentences of every numbered step, read off the printed sheet. */
function stepsOnSheet(html: string): string[][] {
  const plain = (text: string): string =>
    text
      .replace(/<[^>]*>/g, "")
      .replace(/&([#\w]+);/g, (whole, name: string) => CHARACTERS[name] ?? whole)
      .replaceAll("\u00a0", " ");
  return [...html.matchAll(/<h3>\d+\. [^<]*<\/h3>\s*<ul>(.*?)<\/ul>/gs)].map(([, list]) =>
    [...list!.matchAll(/<li>(.*?)<\/li>/gs)].map(([, item]) => plain(item!)),
  );
}

/** Makes one piece of a frame by following the sentences of its sheet, one step after the other. */
function makePiece(plan: FramePlan): Workpiece {
  const shop = { fence: plan.brief.saw.fence, slope: plan.geometry.slope };
  let piece = rawStick(plan.geometry.profile!, plan.geometry.pieces[0].longest.length * 3);
  let lying: Parameters<typeof follow>[2] = null;
  const steps = stepsOnSheet(shopSheet(plan, fine));
  if (steps.length !== plan.sawing.operations.length) throw new Error("the sheet has not as many steps as the plan");
  for (const lines of steps) {
    ({ piece, lying } = follow(lines, piece, lying, shop, arrisLabel));
  }
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

describe("a maker who follows the sentences of the printed sheet", () => {
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

  test.each([
    ["its outer edge at the fence", "its sight edge at the fence"],
    ["runs to the left", "runs to the right"],
    ["leans to the left", "leans to the right"],
  ])("makes another piece when %j is read as %j", (right, wrong) => {
    const shop = { fence: "near" as const, slope: 30 };
    const lines = operationText(plan.sawing.operations[0]!, fine).lines;
    const misread = lines.map((line) => line.replace(right, wrong));
    expect(misread).not.toEqual(lines);
    const { plane } = plan.geometry.pieces[0].end;
    const good = follow(lines, rawStick(plan.geometry.profile!, 900), null, shop, arrisLabel).piece.end;
    expect(good.across).toBeCloseTo(plane.across, 9);
    const bad = follow(misread, rawStick(plan.geometry.profile!, 900), null, shop, arrisLabel).piece;
    const cut = bad.end.across === 0 ? bad.start : bad.end;
    expect(
      Math.abs(cut.across - plane.across) + Math.abs(cut.through - plane.through) + Math.abs(cut.along - plane.along),
    ).toBeGreaterThan(0.1);
  });

  test("stops at a sentence that is not so", () => {
    const shop = { fence: "near" as const, slope: 30 };
    const [first, second] = plan.sawing.operations.map((operation) => operationText(operation, fine).lines);
    const { piece, lying } = follow(first!, rawStick(plan.geometry.profile!, 900), null, shop, arrisLabel);
    expect(() =>
      follow(
        second!.map((line) => line.replace("its sight edge", "its outer edge")),
        piece,
        lying,
        shop,
        arrisLabel,
      ),
    ).toThrow(/^not so/);
    expect(() =>
      follow(
        second!.map((line) => line.replace("down on the table", "20 mm above the table")),
        piece,
        lying,
        shop,
        arrisLabel,
      ),
    ).toThrow(/^the arris is not so high/);
    expect(() => follow(["Turn it over."], piece, lying, shop, arrisLabel)).toThrow(/^cannot follow/);
  });
});
