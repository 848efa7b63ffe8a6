import { raise, type SawingRule } from "./sawing-rule.js";

/** The graduations that cost least still open the last joint by more than the accepted gap. */
export const reach: SawingRule = ({ plan, acceptedGap: limit, cutSteps }) => {
  if (plan.graduations === null) return null;
  const { best, slopeRange } = plan.graduations;
  // A setting that is on its graduations opens nothing but what rounding leaves.
  if (best.opens === "nowhere" || !(best.jointGap > limit)) return null;
  const { jointGap, miterMiss, bevelMiss, miter: miterGraduation, bevel: bevelGraduation, slopeOff } = best;
  const where =
    slopeRange === 0 ? "with the angle that has to be 0 left at 0" : "while its sides stand near their slope";
  const sentence = `No marks of the saw's scales close the ring ${where}: even those that cost least open the last joint visibly. Set finer than the marks, and prove the setting on scrap by closing a ring of test pieces.`;
  return raise("reach", "notice", cutSteps, sentence, {
    length: { gap: jointGap, limit },
    angle: {
      miterMiss,
      bevelMiss,
      miterGraduation,
      bevelGraduation,
      slopeOff,
      ...(slopeRange === 0 ? {} : { slopeSearched: slopeRange }),
    },
  });
};
