import type { PlanPanelOptions } from "miterwright/panel";

/** Panels that have caught, or would catch, a careless planner: how many cuts each takes, and why it is here. */
export const HARD_PANELS: readonly {
  readonly options: PlanPanelOptions;
  readonly cuts: number;
  readonly why: string;
}[] = [
  { options: { polygon: { sides: 3, apothem: 100 } }, cuts: 2, why: "the widest setting: 30 degrees" },
  { options: { polygon: { sides: 4, apothem: 100 } }, cuts: 0, why: "the blank itself" },
  {
    options: { polygon: { sides: 4, apothem: 100 }, pose: "corner-down" },
    cuts: 0,
    why: "a square hung on its corner is still cut square",
  },
  {
    options: { polygon: { sides: 8, apothem: 100 }, pose: "corner-down" },
    cuts: 4,
    why: "on its corner it would have no side on its blank",
  },
  {
    options: { polygon: { sides: 12, apothem: 100 } },
    cuts: 8,
    why: "its quarter step reaches only the sides that exist",
  },
  {
    options: { polygon: { sides: 6, apothem: 100 }, pose: "corner-down" },
    cuts: 4,
    why: "left and right exist, top and bottom do not",
  },
  {
    options: { polygon: { sides: 9, apothem: 100 }, chain: "one" },
    cuts: 8,
    why: "a step that shares a divisor with 9 would never come round",
  },
  {
    options: { polygon: { sides: 10, apothem: 100 } },
    cuts: 8,
    why: "an even step reaches the odd sides only from the opposite side",
  },
  { options: { polygon: { sides: 5, apothem: 1e-100 } }, cuts: 4, why: "as small as lengths get" },
  { options: { polygon: { sides: 5, apothem: 1e100 } }, cuts: 4, why: "as large as lengths get" },
  {
    options: { polygon: { sides: 7, apothem: 1 }, clearance: 1 - 2 ** -52 },
    cuts: 6,
    why: "a clearance that leaves a hair",
  },
  { options: { polygon: { sides: 101, apothem: 100 } }, cuts: 100, why: "fifty errors deep on either side" },
];
