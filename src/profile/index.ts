/**
 * Molding sections: their shape, how they stand once tilted, how wide they are then, and what their rabbet holds.
 *
 * @module
 */
export { parseProfile, tryParseProfile } from "./parse-profile.js";
export { levelWidth, type LevelWidthOptions } from "./level-width.js";
export { molding } from "./molding.js";
export type {
  Chamfer,
  EdgeArris,
  FaceArris,
  FaceCut,
  MadeFor,
  ArrisesOf,
  MoldingOptions,
  RabbetSize,
} from "./molding-options.js";
export type { Profile, RabbetArris, Section, SectionPoint } from "./profile.js";
export { innermostPoint, outermostPoint, type NamedSectionPoint } from "./outermost-point.js";
export { profileFromPoints, type ProfilePoints } from "./profile-from-points.js";
export { rabbetSeating } from "./rabbet-seating.js";
export type {
  RabbetContent,
  RabbetSeating,
  RabbetSeatingOptions,
  RabbetHold,
  RabbetLayer,
  RabbetMiss,
  SeatingReason,
} from "./rabbet-seating-types.js";
export { sectionArea } from "./section-area.js";
export { sectionCentroid } from "./section-centroid.js";
export { sectionExtent, type SectionExtent } from "./section-extent.js";
export { sectionAt } from "./section-at.js";
