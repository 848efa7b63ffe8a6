import { cosDeg, sinDeg } from "../../core/degrees.js";
import { raise, type CuttingRule } from "./cutting-rule.js";

/**
 * To first order the last joint of a ring of n sticks cut in a lay rolled by r opens by 2n (cos r dm + cos m sin r db); its V is the level width over
 * cos h times that.
 */
export const reach: CuttingRule = ({ geometry, option, gap: limit, cutSteps }) => {
  const { miter, bevel } = option.first;
  const perEnd =
    Math.abs(cosDeg(option.rotation)) * miter.miss +
    cosDeg(miter.degrees) * Math.abs(sinDeg(option.rotation)) * bevel.miss;
  const angle = 2 * geometry.sides * perEnd;
  const gap = ((geometry.levelWidth / cosDeg(geometry.corners[0]!.planMiter)) * angle * Math.PI) / 180;
  if (!(gap > limit)) return null;
  const sentence =
    "Setting the scales to their nearest marks can open the last joint visibly: set finer than the marks, and prove the setting on scrap by closing a ring of test pieces.";
  return raise("reach", "care", cutSteps, sentence, {
    length: { gap, limit },
    angle: { miterMiss: miter.miss, bevelMiss: bevel.miss },
  });
};
