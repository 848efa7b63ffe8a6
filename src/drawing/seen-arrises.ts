import type { FrameGeometry, PlacedArris } from "../frame/index.js";
import { sectionAt } from "../profile/index.js";

/** Points this close above each other, as a share of the section's size, are one. */
const SAME_HEIGHT: number = 1e-9;

/** The named arrises of a frame that are seen from above: nothing of the section stands over them. */
export function arrisesSeenFromAbove(geometry: FrameGeometry): [name: string, arris: PlacedArris][] {
  const { profile, slope, arrises } = geometry;
  if (profile === null) return [];
  const { outline } = sectionAt(profile, slope);
  const reach = outline.map(({ out, up }) => Math.abs(out) + Math.abs(up));
  const tolerance = Math.max(...reach) * SAME_HEIGHT;
  const isCovered = (arris: PlacedArris): boolean =>
    outline.some((from, index) => {
      const to = outline[(index + 1) % outline.length]!;
      const [low, high] = from.out < to.out ? [from, to] : [to, from];
      if (!(low.out < arris.out - tolerance && arris.out + tolerance < high.out)) return false;
      const share = (arris.out - low.out) / (high.out - low.out);
      return low.up + share * (high.up - low.up) > arris.up! + tolerance;
    });
  return Object.entries(arrises).filter(([, arris]) => !isCovered(arris));
}
