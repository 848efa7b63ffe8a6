/**
 * A saw made of vectors alone: it reads the words of an instruction (what lies down, what is at the fence, where the line of cut runs, how the blade leans,
 * which side is kept), puts a stick there, and says which plane the blade cuts in the stick's own axes. It shares no formula with the library.
 */

/** A vector of the shop: right, away from you, up. */
export type Shop = readonly [right: number, away: number, up: number];

/** What an instruction says. */
export interface Instruction {
  readonly down: string;
  readonly cradled: boolean;
  readonly atFence: string;
  readonly fence: "near" | "far";
  /** Slope of the frame; it matters only in the cradle. */
  readonly slope: number;
  readonly kept: "left" | "right";
  readonly miter: { readonly degrees: number; readonly toward: string };
  readonly bevel: { readonly degrees: number; readonly toward: string };
}

/** A cut plane's unit normal, out of the wood that is kept, in the stick's axes. */
export interface Normal {
  readonly along: number;
  readonly across: number;
  readonly through: number;
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const dot = (a: Shop, b: Shop): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const minus = (a: Shop): Shop => [-a[0], -a[1], -a[2]];
const plus = (a: Shop, b: Shop): Shop => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const times = (a: Shop, k: number): Shop => [a[0] * k, a[1] * k, a[2] * k];
export const crossed = (a: Shop, b: Shop): Shop => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Which way each surface of the section faces: [across, through]. */
const FACING: Readonly<Record<string, readonly [number, number]>> = {
  back: [0, -1],
  face: [0, 1],
  "sight-edge": [-1, 0],
  "outer-edge": [1, 0],
};

/** The stick's axes in the shop, from the surface that lies down and the one at the fence. */
export function stickAxes(instruction: Instruction): { along: Shop; across: Shop; through: Shop } {
  const { down, cradled, atFence, fence, slope } = instruction;
  const toFence: Shop = [0, fence === "near" ? -1 : 1, 0];
  let across: Shop;
  let through: Shop;
  const below: Shop = [0, 0, -1];
  const [downX, downY] = FACING[down]!;
  const [fenceX, fenceY] = FACING[atFence]!;
  // Lying on a surface: the one that faces (x, y) in the section points down or to the fence.
  across = plus(times(below, downX), times(toFence, fenceX));
  through = plus(times(below, downY), times(toFence, fenceY));
  if (cradled) {
    // Then the cradle raises the stick to the slope about its length, the outer edge the higher for a positive slope.
    const [flatAcross, flatThrough] = [across, through];
    const [cosine, sine] = [Math.cos(radians(slope)), Math.sin(radians(slope))];
    across = plus(times(flatAcross, cosine), times(flatThrough, sine));
    through = plus(times(flatAcross, -sine), times(flatThrough, cosine));
  }
  // Along, across and through are a left-handed triple: counter-clockwise, outward, toward the viewer.
  return { along: minus(crossed(across, through)), across, through };
}

/** The plane that the blade cuts, in the stick's axes. */
export function planeFromWords(instruction: Instruction): Normal {
  const { kept, miter, bevel } = instruction;
  const m = radians(miter.toward === "left" ? -miter.degrees : miter.degrees);
  const b = radians(bevel.toward === "left" ? -bevel.degrees : bevel.degrees);
  const lineOfCut: Shop = [Math.sin(m), Math.cos(m), 0];
  const squareToLine: Shop = [Math.cos(m), -Math.sin(m), 0];
  const top = plus(times([0, 0, 1], Math.cos(b)), times(squareToLine, Math.sin(b)));
  const blade = crossed(lineOfCut, top);
  const normal = blade[0] > 0 === (kept === "left") ? blade : minus(blade);
  const { along, across, through } = stickAxes(instruction);
  return { along: dot(normal, along), across: dot(normal, across), through: dot(normal, through) };
}
