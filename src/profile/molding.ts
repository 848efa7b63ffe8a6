import { refuse, reject } from "../core/check.js";
import type { Point } from "../core/geometry-types.js";
import { chamfer } from "./chamfer.js";
import { findCrossing } from "./find-crossing.js";
import { millSection } from "./mill-section.js";
import type { ArrisesOf, MoldingOptions } from "./molding-options.js";
import type { Profile } from "./profile.js";
import { readMolding } from "./read-molding.js";

/**
 * The section of a molding from its sizes.
 *
 * A rectangle of width by thickness, x = 0 at the sight edge's back arris and y = 0 at the back, with the rabbet taken out of
 * the back at the sight edge: the lip above it is thickness - depth thick. Cuts then shape the face. A molding that is
 * `madeFor` a slope s has chosen surfaces milled so that they stand plumb or lie level once the molding is tilted: they run
 * along (sin s, cos s) or (cos s, -sin s) in the section.
 *
 * @param options - the sizes in the caller's length unit, the rabbet, the face cuts and what it is made for
 * @returns the profile; its arrises follow the options
 * @throws {InputError} when an option is out of range, or together they leave no back, no lip, no face or a cut-through section
 * @example
 * ```ts
 * import { molding } from "miterwright/profile";
 *
 * const profile = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });
 * profile.arrises.wallLedge; //=> { x: 8, y: 10 }
 * profile.arrises.sightBack; //=> { x: 0, y: 10 }
 *
 * const tray = molding({ width: 40, thickness: 20, madeFor: { slope: 45 } });
 * tray.arrises.outerFace.x - tray.arrises.outerBack.x; //=> 20
 * ```
 */
export function molding<const O extends MoldingOptions>(options: O & NoOtherKeys<O>): Profile<ArrisesOf<O>> {
  const read = readMolding(options);
  const { sightBack, wall, outerBack, outerFace, sightFace } = millSection(read);
  const arrises: Record<string, Point> = { sightFace, sightBack, outerFace, outerBack };
  Object.assign(arrises, wall);

  let faceLeft = outerFace.x - sightFace.x;
  const sightEnds = [sightFace];
  const outerEnds = [outerFace];
  for (const cut of read.face) {
    if (cut.at === "sightFace") {
      const { face, edge } = chamfer(cut, sightFace, sightBack, faceLeft);
      sightEnds.splice(0, 1, face, edge);
      arrises["sightFace"] = face;
      arrises["sightCut"] = edge;
    } else {
      const { face, edge } = chamfer(cut, outerFace, outerBack, faceLeft);
      outerEnds.splice(0, 1, edge, face);
      arrises["outerFace"] = face;
      arrises["outerCut"] = edge;
    }
    faceLeft -= cut.width;
  }

  const rabbet = wall === undefined ? [] : [wall.wallLedge, wall.wallMouth];
  const outline = [sightBack, ...rabbet, outerBack, ...outerEnds, ...sightEnds];
  if (findCrossing(outline) !== undefined) {
    if (read.face.length > 0) refuse("impossible", "face", options.face, "cuts that do not go through into the rabbet");
    reject(
      "impossible",
      "rabbet",
      options.rabbet,
      "Expected `rabbet` to leave the section in one piece, but its surfaces meet",
    );
  }
  const profile = { outline, arrises: arrises as Profile<ArrisesOf<O>>["arrises"] };
  return read.milled ? Object.assign(profile, { madeFor: read.slope }) : profile;
}

/** Forbids keys that are not options, so that a misspelled one does not compile although the options' own type is inferred. */
type NoOtherKeys<O> = { readonly [K in Exclude<keyof O, keyof MoldingOptions>]: never };
