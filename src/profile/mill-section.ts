import { refuse } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import { about } from "./about.js";
import type { ReadMolding } from "./read-molding.js";
import { outOf } from "./tilt.js";

/** The corners of a molding before its face is cut, counter-clockwise from the sight edge's back arris. */
export interface MilledSection {
  /** The sight edge's back arris; of a rabbet the lower corner of its lip. */
  readonly sightBack: Point;
  /** The rabbet's wall, from the ledge to the back. */
  readonly wall: { readonly wallLedge: Point; readonly wallMouth: Point } | undefined;
  /** The outer edge at the back. */
  readonly outerBack: Point;
  /** The outer edge at the face. */
  readonly outerFace: Point;
  /** The sight edge at the face. */
  readonly sightFace: Point;
}

/**
 * The corners of a molding whose surfaces are square or milled for a slope.
 *
 * Built from the sight edge's back arris, at x = 0: level steps go along (cos s, -sin s) and plumb ones along (sin s,
 * cos s), since these turn level and plumb when tilted by s. The lowest point of the back then becomes y = 0, and the face
 * y = thickness.
 */
export function millSection(molding: ReadMolding): MilledSection {
  const { width, thickness, rabbet, slope, plumbOuter, plumbInner, levelRabbet, levelBack } = molding;
  const cos = cosDeg(slope);
  const sin = sinDeg(slope);

  let ledge: Point | undefined;
  let mouth: Point = { x: 0, y: 0 };
  if (rabbet !== undefined) {
    const { width: lap, depth } = rabbet;
    ledge = levelRabbet ? { x: lap * cos, y: -lap * sin } : { x: lap, y: 0 };
    mouth = levelRabbet ? { x: ledge.x - depth * sin, y: ledge.y - depth * cos } : { x: lap, y: -depth };
  }

  // The back runs outward from the mouth, in steps of (1, fall), to the outermost point or to below it.
  const fall = levelBack ? -sin / cos : 0;
  const outerBackAt = (x: number): Point => ({ x, y: mouth.y + (x - mouth.x) * fall });
  const step = outOf(1, fall, cos, sin);
  let outerBack = outerBackAt(mouth.x + (width - outOf(mouth.x, mouth.y, cos, sin)) / step);
  const raise = -Math.min(0, mouth.y, outerBack.y);
  // A square outer edge of a reverse section is outermost at the face.
  if (!plumbOuter && sin < 0) outerBack = outerBackAt((width + (thickness - raise) * sin) / cos);

  const raised = ({ x, y }: Point): Point => ({ x: x + 0, y: y + raise + 0 });
  const sightBack = raised({ x: 0, y: 0 });
  const wall = ledge && { wallLedge: raised(ledge), wallMouth: raised(mouth) };
  outerBack = raised(outerBack);
  const outPerHeight = sin / cos;
  const outerFace = { x: outerBack.x + (plumbOuter ? (thickness - outerBack.y) * outPerHeight : 0), y: thickness };
  const sightFace = { x: plumbInner ? (thickness - sightBack.y) * outPerHeight + 0 : 0, y: thickness };

  const section = { sightBack, wall, outerBack, outerFace, sightFace };
  checkRoom(molding, section);
  return section;
}

/** Refuses sizes that leave no back, no lip or no face, so that each has its own sentence. */
function checkRoom(molding: ReadMolding, section: MilledSection): void {
  const { width, thickness, rabbet, milled, slope, levelRabbet } = molding;
  const { sightBack, wall, outerBack, outerFace, sightFace } = section;
  const back = wall?.wallMouth ?? sightBack;
  // A level rabbet as wide as the molding leaves nothing, or a sliver that is only rounding.
  if (rabbet !== undefined && ((levelRabbet && rabbet.width >= width) || !(outerBack.x > back.x))) {
    const room = levelRabbet ? `the width (${width})` : `what the level width (${width}) leaves at this slope`;
    refuse("impossible", "rabbet.width", rabbet.width, `less than ${room}, since the wall needs wood behind it`);
  }
  const taken = Math.max(sightBack.y, wall?.wallLedge.y ?? 0, outerBack.y);
  if (!(taken < thickness)) {
    if (milled) {
      refuse(
        "impossible",
        "thickness",
        thickness,
        `more than ${about(taken)}, which its back and rabbet take up at this slope`,
      );
    } else if (rabbet !== undefined) {
      refuse(
        "impossible",
        "rabbet.depth",
        rabbet.depth,
        `less than the thickness (${thickness}), so that a lip is left`,
      );
    }
  }
  if (!(outerFace.x > sightFace.x)) {
    refuse("impossible", "width", width, "wide enough for the outer edge and the sight edge to reach the face apart");
  }
  const reach = Math.max(Math.abs(back.x), Math.abs(outerBack.x), Math.abs(outerFace.x), Math.abs(sightFace.x));
  if (!(reach <= 1e100))
    refuse("impossible", "madeFor.slope", slope, "less steep: its section would reach beyond 1e100");
}
