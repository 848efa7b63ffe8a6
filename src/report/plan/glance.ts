import type { FramePlan, PartialSum } from "../../frame/index.js";
import type { StockFit } from "../../stock/index.js";
import { hazardText, reasonText } from "../../words/index.js";
import { factsOf, listOf, namesText, sectionOf, tellWith, type Pen } from "../pen.js";
import type { Fact, ReportSection } from "../report.js";
import { shortageText } from "../stock/fit-status.js";
import { missingParts } from "./parts.js";

/** A plan with one of these is not one to cut by. */
const NOT_READY: readonly FramePlan["hazards"][number]["code"][] = ["missed-lip", "lip-not-known", "short-stick"];

/** What has to be mended first: contents that miss the lip or cannot be held, a rack that runs short, a cut that the saw cannot make. */
export function notReadyLines(plan: FramePlan, fits: readonly StockFit[], pen: Pen): readonly string[] {
  const { hazards, contents, sawing } = plan;
  const { reports, saws, contents: words } = pen.words;
  const grave = hazards
    .filter(({ code }) => NOT_READY.includes(code))
    .map((hazard) => {
      const { sentence, numbers } = hazardText(hazard, tellWith(pen));
      return reports.withNumbers({ sentence, numbers });
    });
  const reasons = [
    ...grave,
    ...(contents.reason === null ? [] : [words.notHeld({ reason: reasonText(contents.reason, pen) })]),
    ...(sawing.lay === null ? [saws.noLay] : []),
    ...fits.filter(({ status }) => status === "short").map((fit) => shortageText(fit, pen)),
  ];
  return reasons.map((reason) => reports.notReady({ reason }));
}

/** A sum that may be known in part; no fact at all where nothing of it is known. */
function sumFact(
  name: string,
  { sum, missing }: { readonly sum: PartialSum | null; readonly missing: readonly string[] },
  write: (value: number) => string,
  { words }: Pen,
): Fact[] {
  const total = sum?.total ?? null;
  if (total === null) return [];
  const value = write(total);
  return [
    {
      name,
      value: missing.length === 0 ? value : words.materials.atLeast({ sum: value, missing: namesText(missing) }),
    },
  ];
}

/** The frame's main measures. A job may ask for the pieces of several frames; all but their number is told of one. */
function mainFacts(plan: FramePlan, pen: Pen): Fact[] {
  const { geometry, materials, stockJobs, sawing } = plan;
  const { length, angle, mass, money } = pen.formats;
  const { frame, materials: words } = pen.words;
  const { sides, slope, pose, opening, overall, levelWidth, pieces } = geometry;
  const [{ count, longest }] = pieces;
  const inAll = stockJobs[0]?.pieces[0]?.count ?? count;
  const isOfMany = inAll > count;
  const { facts } = frame;
  const scales = sawing.lay?.first;
  return [
    ...(scales === undefined
      ? []
      : [
          { name: facts.miter, value: angle(scales.miter.reading) },
          { name: facts.bevel, value: angle(scales.bevel.reading) },
        ]),
    { name: facts.pieces, value: frame.pieces({ count, inAll, longest: length(longest.length) }) },
    { name: facts.sides, value: frame.sides({ sides, pose }) },
    { name: facts.slope, value: slope === 0 ? frame.flat : angle(slope) },
    { name: facts.openingSide, value: length(opening.side) },
    { name: facts.openingAcrossFlats, value: length(opening.acrossFlats) },
    { name: facts.overallAcrossFlats, value: length(overall.polygon.acrossFlats) },
    { name: facts.overallAcrossCorners, value: length(overall.polygon.acrossCorners) },
    { name: facts.levelWidth, value: length(levelWidth) },
    ...(overall.height === null ? [] : [{ name: facts.height, value: length(overall.height) }]),
    { name: words.facts.molding({ isOfMany }), value: length(materials.moldingLength) },
    ...sumFact(
      words.facts.mass({ isOfMany }),
      { sum: materials.mass, missing: missingParts(plan, "mass", pen) },
      mass,
      pen,
    ),
    ...sumFact(
      words.facts.cost({ isOfMany }),
      { sum: materials.cost, missing: missingParts(plan, "cost", pen) },
      money,
      pen,
    ),
  ];
}

/** The frame at a glance, and before it what has to be mended. */
export function glanceSection(plan: FramePlan, fits: readonly StockFit[], pen: Pen): ReportSection[] {
  return sectionOf("glance", pen, [
    ...listOf("not-ready", notReadyLines(plan, fits, pen), { marker: "none", isStrong: true }),
    ...factsOf("measures", mainFacts(plan, pen)),
  ]);
}
