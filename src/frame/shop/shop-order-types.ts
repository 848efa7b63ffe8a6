import type { Hand, Obstacle, Saw, ScaleSetting, StickSurface } from "../../saw/index.js";
import type { Operation, OperationKind } from "../sawing/operation.js";
import type { FramePlan } from "../plan-frame.js";

/** One frame of several that are cut together. */
export interface ShopFrame {
  /** What the caller calls it; no two may have the same name. */
  readonly name: string;
  /** Its plan, from `planFrame`; only `sawing` is read. */
  readonly plan: Pick<FramePlan, "sawing">;
  /** How many such frames are made, an integer from 1 to 1000; default 1. */
  readonly frames?: number | undefined;
}

/** Options of `shopOrder`. */
export interface ShopOrderOptions {
  /**
   * By how many degrees readings of one scale may differ and still share a setting, 0 to 5, bounds included; default 0, which leaves only equal ones together. The
   * saw is then set to their middle, so that no cut misses its angle by more than half of it; what that opens at the last joint tells `settingCost` or `reach`.
   */
  readonly tolerance?: number | undefined;
}

/** One operation of one frame, to be done at a setting. */
export interface ShopCut {
  /** The frame's name, as the caller gave it. */
  readonly name: string;
  /** The step in that frame's own plan. */
  readonly step: number;
  /** What the operation does. */
  readonly kind: OperationKind;
  /** How many times it is done at this visit of the setting. */
  readonly times: number;
  /** The surface against the fence. */
  readonly atFence: StickSurface;
  /** On which side of the blade the part lies that is kept. */
  readonly kept: Hand;
  /** How the stick comes from the operation before; `null` for a fresh stick. */
  readonly move: Operation["move"];
  /** The length to set, from the stop to the cut; `null` where the cut only trims an end. */
  readonly length: number | null;
  /** The arris along which it is taken; `null` without a length, or where the line has no name. */
  readonly arris: string | null;
  /** Where the stop touches the finished end; `null` without a stop or without a known section. */
  readonly stop: Operation["stop"];
  /** By how many degrees the shared setting misses this cut's own miter, 0 or more. */
  readonly miterOff: number;
  /** By how many degrees it misses this cut's own bevel, 0 or more. */
  readonly bevelOff: number;
}

/** What is set anew for a group: the saw itself is another, the blade's lean, the miter, or how sticks lie. */
export type ShopChange = "saw" | "bevel" | "miter" | "lay";

/** Cuts of any frames that are made at one setting, with the sticks lying alike. */
export interface ShopGroup {
  /** The saw, as an index into the order's `saws`. */
  readonly saw: number;
  /** What the miter scale must show. */
  readonly miter: ScaleSetting;
  /** What the bevel scale must show. */
  readonly bevel: ScaleSetting;
  /** The surface that lies on the table, or in the cradle. */
  readonly down: StickSurface;
  /** Whether the sticks lie in cradles, each frame's in its own. */
  readonly cradled: boolean;
  /** What has to be set anew, coming from the group before. */
  readonly changes: readonly ShopChange[];
  /** The cuts, the longest first, so that a stop moves one way only. */
  readonly cuts: readonly ShopCut[];
}

/** A frame that its saw cannot cut. */
export interface UncutFrame {
  /** What the caller calls it. */
  readonly name: string;
  /** Why not: what stands in the way of the lay that is tried first. */
  readonly obstacles: readonly Obstacle[];
}

/** Groups that are gone through in turn, once or several times over. */
export interface ShopRound {
  /** How many times: 1, or more for pieces that are cut on the stick itself, so that settings alternate. */
  readonly times: number;
  /** The groups, in order. */
  readonly groups: readonly ShopGroup[];
  /** What has to be set anew when the first group follows the last; empty where `times` is 1. */
  readonly again: readonly ShopChange[];
}

/** In which order the jobs of several frames are done. */
export interface ShopOrder {
  /** The different saws, in the order of the frames that bring them. */
  readonly saws: readonly Saw[];
  /** The work, saw by saw. */
  readonly rounds: readonly ShopRound[];
  /** How often something is set anew after a saw's first setting, by what it is. */
  readonly changes: Readonly<Record<Exclude<ShopChange, "saw">, number>>;
  /** Frames that no saw of theirs can cut, with the reasons; nothing of them is in `rounds`. */
  readonly left: readonly UncutFrame[];
}
