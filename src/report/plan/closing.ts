import type { FramePlan } from "../../frame/index.js";
import { glueUpLines, lastJointText, sawFaultText, surfaceLabel } from "../../words/index.js";
import { listOf, paragraph, sectionOf, tableOf, type Pen } from "../pen.js";
import type { ReportSection } from "../report.js";
import { checkTable } from "../tables/check-table.js";

/** Misses of a setting below this are none. */
const NO_MISS: number = 1e-9;
/** Changes of the slope below this are not told. */
const NO_SLOPE: number = 0.01;
/** The error of a saw whose effect is told, in degrees. */
const TENTH: number = 0.1;

/** What to measure on the loose pieces, the dry and the glued frame. */
export function checksSection({ checks, geometry }: FramePlan, pen: Pen): ReportSection[] {
  return sectionOf("checks", pen, tableOf("checks", checkTable(checks, geometry.sides, pen)));
}

/** How the last joints are made, and what that takes at the accepted gap. */
function lastJointLines({ assembly, brief }: FramePlan, { words, fine }: Pen): string[] {
  const { lastJoint } = assembly;
  const how = lastJointText(lastJoint, { words });
  const gap = fine.length(brief.acceptedGap);
  if (lastJoint.made === "trimmed-halves") {
    const { trim, loss } = lastJoint;
    if (trim === null || loss === null) return [how];
    return [how, words.closing.trimmed({ gap, trim: fine.length(trim), loss: fine.length(loss) })];
  }
  const { length, planMiter } = lastJoint;
  if (length === null || planMiter === null) return [how];
  return [how, words.closing.closing({ gap, length: fine.length(length), angle: fine.angle(planMiter) })];
}

/** Order of gluing, bevel blocks and cauls, and how the last joint is made. */
export function gluingSection(plan: FramePlan, pen: Pen): ReportSection[] {
  const { glueUp } = plan.assembly;
  const { bevelBlocks, cauls } = glueUp;
  const { closing } = pen.words;
  const { angle } = pen.formats;
  const { high } = bevelBlocks;
  return sectionOf("gluing", pen, [
    ...listOf("stages", glueUpLines(glueUp, pen), { marker: "number" }),
    ...paragraph("clamping", [
      ...(high === "neither"
        ? []
        : [closing.bevelBlocks({ angle: angle(bevelBlocks.angle), high: surfaceLabel(high, pen) })]),
      closing.cauls({ angle: angle(cauls.angle) }),
      closing.corners,
    ]),
    ...paragraph("last-joint", lastJointLines(plan, pen)),
  ]);
}

function toleranceLines({ assembly, brief }: FramePlan, { words, fine }: Pen): string[] {
  if (assembly.tolerance === null) return [];
  const { shared, random } = assembly.tolerance;
  const settings = (["miter", "bevel"] as const).flatMap((name) => {
    const [alike, each] = [shared[name], random[name]];
    if (alike === null) return [];
    return [{ name, alike: fine.angle(alike), each: each === null ? null : fine.angle(each) }];
  });
  return settings.length === 0 ? [] : [words.closing.tolerance({ gap: fine.length(brief.acceptedGap), settings })];
}

/** What the marks to set do where they are not exact, and why they are not the nearest ones. */
function bestMarkLines({ sawing, geometry }: FramePlan, { words, fine }: Pen): string[] {
  if (sawing.graduations === null) return [];
  const { best, nearest } = sawing.graduations;
  if (Math.max(best.miterMiss, best.bevelMiss) < NO_MISS) return [];
  const isNearest = best.miter === nearest.miter && best.bevel === nearest.bevel;
  return [
    words.closing.bestGraduations({
      miter: fine.angle(best.miter),
      bevel: fine.angle(best.bevel),
      gap: fine.length(best.jointGap),
      slope: Math.abs(best.slopeOff) < NO_SLOPE ? null : fine.angle(geometry.slope + best.slopeOff),
      nearestGap: isNearest ? null : fine.length(nearest.jointGap),
    }),
  ];
}

/** What a tenth of a degree of each fault does, where that can be seen. */
function faultLines({ assembly, brief }: FramePlan, { words, fine }: Pen): string[] {
  if (assembly.sawErrors === null) return [];
  const seen = (size: number): string | null => (size > brief.acceptedGap / 10 ? fine.length(size) : null);
  return assembly.sawErrors.faults.flatMap((fault) => {
    const { jointGap, slopeOff, step } = fault;
    const does = {
      gap: seen(jointGap),
      slope: slopeOff >= NO_SLOPE ? fine.angle(slopeOff) : null,
      step: seen(step),
    };
    if (does.gap === null && does.slope === null && does.step === null) return [];
    const values = { fault: sawFaultText(fault, { words }), error: fine.angle(TENTH), ...does };
    return [words.closing.faultEffect(values)];
  });
}

/** How true the saw must be, which marks to set, and what its errors do to this frame. */
export function truenessSection(plan: FramePlan, pen: Pen): ReportSection[] {
  const lines = [...toleranceLines(plan, pen), ...bestMarkLines(plan, pen), ...faultLines(plan, pen)];
  return sectionOf("trueness", pen, listOf("trueness", lines));
}
