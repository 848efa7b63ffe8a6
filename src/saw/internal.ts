/** What other modules of the library use of this one, and no entry shows. */
export { wedgeUnder } from "./cradle.js";
export { cutSizeKernel } from "./cut-size.js";
export { SAW } from "./parse-saw.js";
export { placementKernel, type RolledStick } from "./place-cut.js";
export { scaleSetting } from "./scale-setting.js";
export { SQUARE_SIDES, sideSurfaces, type SideSurfaces } from "./side-surfaces.js";
export {
  contact,
  cradle,
  cutSize,
  hand,
  lyingSection,
  obstacle,
  obstacleCode,
  obstacles,
  placement,
  saw,
  scale,
  stickEnd,
  surface,
} from "./stored-cut.js";
