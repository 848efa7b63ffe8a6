import { raise, type CuttingRule } from "./cutting-rule.js";

/** The marks of the scales that cost least still open the last joint by more than is accepted. */
export const reach: CuttingRule = ({ plan, gap: limit, cutSteps }) => {
  const best = plan.marks?.best;
  // A setting that is on its marks opens nothing but what rounding leaves.
  if (best === undefined || best.opens === "nowhere" || !(best.gap > limit)) return null;
  const { gap, miterMiss, bevelMiss, miter: miterMark, bevel: bevelMark, slopeOff } = best;
  const sentence =
    "No marks of the saw's scales close the ring: even those that cost least open the last joint visibly. Set finer than the marks, and prove the setting on scrap by closing a ring of test pieces.";
  return raise("reach", "care", cutSteps, sentence, {
    length: { gap, limit },
    angle: { miterMiss, bevelMiss, miterMark, bevelMark, slopeOff },
  });
};
