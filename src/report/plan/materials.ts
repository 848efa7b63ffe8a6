import type { FramePlan } from "../../frame/index.js";
import { hangingLines, movementLines } from "../../words/index.js";
import { listOf, paragraph, sectionOf, tellWith, type Pen } from "../pen.js";
import type { ReportSection } from "../report.js";

/** The lumber that the molding is milled from, and what it weighs and costs; nothing where neither is known. */
function lumberLines({ materials }: FramePlan, { words, formats }: Pen): string[] {
  const { lumber, parts } = materials;
  const molding = parts.find(({ layer }) => layer === null);
  const mass = molding?.mass ?? null;
  const cost = molding?.cost?.total ?? null;
  if (mass === null && cost === null) return [];
  const known = words.materials.weighsAndCosts({
    mass: mass === null ? null : formats.mass(mass),
    cost: cost === null ? null : formats.money(cost),
  });
  if (lumber === null) return [known];
  const bought = words.materials.lumber({
    boardFeet: formats.number(lumber.boardFeet),
    cubicMeters: formats.number(lumber.cubicMeters),
    width: formats.length(lumber.width),
    thickness: formats.length(lumber.thickness),
  });
  return [known, bought];
}

/** How much molding the pieces take. */
export function materialsSection(plan: FramePlan, pen: Pen): ReportSection[] {
  const { materials, sawing } = plan;
  const { method, length, kerfAlong } = sawing.rough;
  const { words, formats } = pen;
  const molding = words.materials.molding({
    pieces: materials.pieces,
    blank: method === "none" ? null : formats.length(length),
    molding: formats.length(materials.moldingLength),
    cut: formats.length(kerfAlong),
  });
  return sectionOf("materials", pen, paragraph("molding", [molding, ...lumberLines(plan, pen)]));
}

/** How the frame hangs: where the hangers go, what they lie on, the wire and the load. */
export function hangingSection(plan: FramePlan, pen: Pen): ReportSection[] {
  return sectionOf("hangers", pen, listOf("hangers", hangingLines(plan, tellWith(pen))));
}

/** What a year does to the frame and to what is in it. */
export function yearSection(plan: FramePlan, pen: Pen): ReportSection[] {
  return sectionOf("year", pen, listOf("movement", movementLines(plan, tellWith(pen))));
}
