import type { FrameBrief } from "miterwright/frame";
import { plain, rabbeted } from "./briefs.js";

/** Frames that have caught, or would catch, a careless planner. */
export const HARD_FRAMES: readonly { readonly brief: FrameBrief; readonly why: string; readonly refused?: true }[] = [
  {
    brief: { sides: 3, profile: plain, opening: { side: 139 } },
    why: "a triangle whose sight edges have hardly a length left",
  },
  {
    brief: { sides: 3, slope: 90, profile: plain, opening: { side: 300 } },
    why: "bevels of 60 degrees that no blade reaches: only a stick on edge can be cut",
  },
  { brief: { sides: 3, slope: -90, profile: plain, opening: { side: 300 } }, why: "the same with the sight edge up" },
  {
    brief: { sides: 1000, profile: plain, opening: { acrossFlats: 3000 } },
    why: "the most sides: pieces far too short, joints nearly end grain",
  },
  {
    brief: { sides: 7, slope: 1e-9, profile: rabbeted, opening: { side: 200 } },
    why: "a slope below what a saw can show: no cradle of a hair's height may be asked for",
  },
  { brief: { sides: 7, slope: 90 - 1e-9, profile: plain, opening: { side: 200 } }, why: "all but upright" },
  {
    brief: { sides: 8, slope: 45, profile: rabbeted, opening: { side: 1e-90 }, at: "outerBack" },
    why: "an opening smaller than its molding: refused, since the inside has no length",
    refused: true,
  },
  {
    brief: { sides: 6, slope: 50.8, profile: rabbeted, opening: { side: 300 } },
    why: "the rabbet's wall just ends below the contents' front: 9 tan s is 11 at 50.71 degrees",
  },
  {
    brief: { sides: 6, slope: 50.7, profile: rabbeted, opening: { side: 300 } },
    why: "the rabbet's wall just reaches the contents' front",
  },
  {
    brief: { sides: 5, slope: -40, profile: rabbeted, opening: { contains: { width: 400, height: 1 } } },
    why: "a strip as contents: hardly any height",
  },
  {
    brief: { sides: 5, pose: "corner-down", profile: rabbeted, opening: { cutFrom: { width: 1, height: 4000 } } },
    why: "a sheet so narrow that the panel is smaller than the lip: refused",
    refused: true,
  },
  {
    brief: { sides: 9, measured: { levelWidth: 1e-6, lap: 0 }, opening: { side: 1e6 } },
    why: "a hair of molding round a field",
  },
  { brief: { sides: 4, profile: plain, opening: { side: 300 }, kerf: 0 }, why: "a knife instead of a saw" },
  {
    brief: { sides: 4, profile: plain, opening: { side: 300 }, kerf: 500, sticks: [{ id: "short", length: 400 }] },
    why: "a kerf longer than the stick: there is no job to fit, and the plan says so",
  },
  {
    brief: { sides: 6, slope: 30, lay: 30, profile: plain, opening: { side: 400 } },
    why: "a lay in degrees that is the flat one",
  },
];
