import { raise, type SawingRule } from "./sawing-rule.js";

/** The graduations that cost least still open the last joint by more than the accepted gap. */
export const reach: SawingRule = ({ plan, acceptedGap: limit, cutSteps }) => {
  if (plan.graduations === null) return null;
  const { best, slopeRange } = plan.graduations;
  // A setting that is on its graduations opens nothing but what rounding leaves.
  if (best.opens === "nowhere" || !(best.jointGap > limit)) return null;
  const { jointGap, miterMiss, bevelMiss, miter: miterGraduation, bevel: bevelGraduation, slopeOff } = best;
  const angle = {
    miterMiss,
    bevelMiss,
    miterGraduation,
    bevelGraduation,
    slopeOff,
    ...(slopeRange === 0 ? {} : { slopeSearched: slopeRange }),
  };
  return raise("reach", "notice", cutSteps, { quantities: { length: { jointGap, limit }, angle } });
};
