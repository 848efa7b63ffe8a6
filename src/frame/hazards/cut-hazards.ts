import type { HazardFence } from "../../core/hazard.js";
import type { Obstacle, Saw } from "../../saw/index.js";
import { depthAt } from "../sawing/lay-result.js";
import { usualDepth } from "../sawing/usual-lengths.js";
import { raise, type HazardRule, type SawingFacts } from "./hazard-rule.js";

/** The fence that a stick lies at, where a saw has two. */
function fenceOf(saw: Saw): HazardFence {
  return saw.fence === "near" ? "gauge" : "saw";
}

/** No lay suits the saw, or not the lay that was asked for; the obstacles are those of that lay, else of the first. */
export const capacity: HazardRule<SawingFacts> = ({ sawing: { lay: chosen, lays, saw }, wantedLay }) => {
  if (chosen !== null) return [];
  const asked = wantedLay === undefined ? undefined : lays.find(({ lay }) => lay === wantedLay);
  const { first, obstacles, size, bevel } = asked ?? lays[0]!;
  const othersWork = lays.some(({ possible }) => possible);
  const isBeyond = (code: Obstacle["code"]): boolean => obstacles.some((obstacle) => obstacle.code === code);
  const length = {
    ...(size !== null && isBeyond("depth") ? { height: size.height, depth: depthAt(saw, bevel) } : {}),
    ...(size !== null && isBeyond("crosscut") ? { line: size.line, crosscut: saw.crosscut! } : {}),
  };
  return raise("capacity", "warning", {
    steps: [],
    quantities: { length, angle: { miter: first.miter.degrees, bevel: first.bevel.degrees } },
    facts: {
      lay: asked === undefined ? "none-works" : othersWork ? "asked-for-others-work" : "asked-for",
      obstacles: obstacles.map(({ code }) => code),
    },
  });
};

/** A saw with a gauge has a rip fence too, which is in the way of what is crosscut. */
export const ripFence: HazardRule<SawingFacts> = ({ sawing: { lay, saw }, cutSteps: steps }) =>
  lay === null || saw.fence === "far" ? [] : raise("rip-fence", "warning", { steps });

/** The same where no lay suits the saw: it then comes after what is said of the pieces. */
export const ripFenceOfNoLay: HazardRule<SawingFacts> = ({ sawing: { lay, saw } }) =>
  lay !== null || saw.fence === "far" ? [] : raise("rip-fence", "warning", { steps: [] });

/** With the piece on the open side of the blade only what is loose lies under it. */
export const offcutUnderBevel: HazardRule<SawingFacts> = ({ sawing: { lay }, cutSteps: steps }) => {
  if (lay?.first.underBlade !== "offcut") return [];
  return raise("offcut-under-bevel", "warning", { steps, quantities: { angle: { bevel: lay.first.bevel.degrees } } });
};

/** Under the blade the hand and the stop are on the side of the wood that can bind. */
export const pieceUnderBevel: HazardRule<SawingFacts> = ({ sawing: { lay, saw }, cutSteps: steps }) => {
  if (lay?.first.underBlade !== "kept") return [];
  const quantities = { angle: { bevel: lay.first.bevel.degrees } };
  return raise("piece-under-bevel", "warning", { steps, quantities, facts: { fence: fenceOf(saw) } });
};

/** The cut takes more of the blade than usual saws have, and the saw does not say how much it has. */
export const depthNotKnown: HazardRule<SawingFacts> = ({ sawing: { lay }, unit, cutSteps: steps }) => {
  if (lay?.depthInDoubt !== true) return [];
  const length = { depth: lay.size!.depth, usual: usualDepth(unit) };
  return raise("depth-not-known", "caution", { steps, quantities: { length } });
};

/** A propped stick, of which no section tells whether it tips. */
export const balanceNotKnown: HazardRule<SawingFacts> = ({ sawing: { lay, saw }, cutSteps: steps }) => {
  if (lay?.cradle !== null || !lay.first.cradled) return [];
  return raise("balance-not-known", "warning", { steps, facts: { fence: fenceOf(saw) } });
};

/** A stick that tips in its cradle. */
export const tips: HazardRule<SawingFacts> = ({ sawing: { lay, saw }, cutSteps: steps }) => {
  const cradle = lay?.cradle ?? null;
  if (cradle === null || cradle.steady) return [];
  const quantities = { length: { overhang: cradle.widenBy } };
  return raise("tip", "warning", { steps, quantities, facts: { fence: fenceOf(saw) } });
};

/** A cradle, into which the blade cuts. */
export const fasteners: HazardRule<SawingFacts> = ({ sawing: { lay }, cutSteps: steps }) => {
  if (lay?.first.cradled !== true) return [];
  const quantities = lay.cradle === null ? {} : { length: { rise: lay.cradle.rise } };
  return raise("fasteners", "warning", { steps, quantities });
};

/** A stick that is flipped end for end, so that its other edge comes to the fence. */
export const flipError: HazardRule<SawingFacts> = ({ sawing }) => {
  const flipped = sawing.operations.find((operation) => operation.move === "flip-end-for-end");
  return flipped === undefined ? [] : raise("flip-error", "notice", { steps: [flipped.step] });
};

/** The graduations that cost least still open the last joint by more than the accepted gap. */
export const reach: HazardRule<SawingFacts> = ({ sawing: { graduations }, acceptedGap: limit, cutSteps: steps }) => {
  if (graduations === null) return [];
  const { best, slopeRange } = graduations;
  // A setting that is on its graduations opens nothing but what rounding leaves.
  if (best.opens === "nowhere" || !(best.jointGap > limit)) return [];
  const { jointGap, miterMiss, bevelMiss, miter: miterGraduation, bevel: bevelGraduation, slopeOff } = best;
  const angle = {
    miterMiss,
    bevelMiss,
    miterGraduation,
    bevelGraduation,
    slopeOff,
    ...(slopeRange === 0 ? {} : { slopeSearched: slopeRange }),
  };
  return raise("reach", "notice", { steps, quantities: { length: { jointGap, limit }, angle } });
};

/** Wood dust, of every cut. */
export const dust: HazardRule<SawingFacts> = () => raise("dust", "warning", { steps: [] });
