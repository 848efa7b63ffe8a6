import { checkObject } from "../core/check.js";
import { box, maybe, orNull, point, readStored, record, type Fields } from "../core/stored.js";
import type { SawPlan, FrameContents, FrameGeometry } from "../frame/index.js";
import { frameGeometry, sawPlan } from "../frame/internal.js";

/** What of a frame's contents is drawn. */
export type DrawnContents = Pick<FrameContents, "contained" | "sheet" | "center">;

/** A frame's geometry, or a plan that holds it, as it was made or read back from JSON. */
export type FrameToDraw =
  | FrameGeometry
  | {
      /** The frame. */
      readonly geometry: FrameGeometry;
      /** What goes into it; drawn where it is given. */
      readonly contents?: DrawnContents;
    };

/** A plan whose sawing is drawn. */
export interface SawingToDraw {
  /** The frame. */
  readonly geometry: FrameGeometry;
  /** How its pieces are cut. */
  readonly sawing: SawPlan;
}

/** Reads a frame's geometry from wherever it stands. */
export function readGeometry(frame: unknown): FrameGeometry {
  const given = checkObject(frame, "frame");
  return readStored(given["geometry"] ?? given, "geometry", frameGeometry);
}

/** A frame's geometry, or a plan that holds it and perhaps its saw plan. */
export type FrameToTell = FrameGeometry | (Pick<SawingToDraw, "geometry"> & Partial<Pick<SawingToDraw, "sawing">>);

/** Reads a frame's geometry, and its saw plan where one is given. */
export function readFrame(frame: unknown): { readonly geometry: FrameGeometry; readonly sawing: SawPlan | null } {
  const { sawing } = checkObject(frame, "frame");
  return {
    geometry: readGeometry(frame),
    sawing: sawing === undefined ? null : readStored(sawing, "sawing", sawPlan),
  };
}

const CONTENTS: Fields<DrawnContents> = {
  contained: (value, path) => orNull(value, path, box),
  sheet: (value, path) => orNull(value, path, box),
  center: (value, path) => orNull(value, path, point),
};

/** Reads what of a frame's contents is drawn, where contents are given. */
export function readContents(frame: unknown): DrawnContents | undefined {
  const { contents } = checkObject(frame, "frame");
  return readStored(contents, "contents", (value, path) => maybe(value, path, (v, p) => record(v, p, CONTENTS)));
}

/** Reads a plan's geometry and saw plan. */
export function readSawing(plan: unknown): SawingToDraw {
  const sawing = readStored(checkObject(plan, "plan")["sawing"], "sawing", sawPlan);
  return { geometry: readGeometry(plan), sawing };
}
