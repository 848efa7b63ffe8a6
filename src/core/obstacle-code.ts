/**
 * Why a saw cannot make a cut.
 *
 * `miter-range-...` and `bevel-range-...`: the scale does not go so far to that hand. `depth`: the stick stands higher than the blade reaches. `crosscut`: the line of
 * cut is longer than the saw crosscuts. `no-flat-back`: the back has no flat that a wedge could carry. `rocks`: the stick rests on less than a tenth of its
 * width. `tips-over`: its center of gravity is not above what it rests on. `needs-cradle`: it stands on one edge.
 */
export type ObstacleCode =
  | "miter-range-left"
  | "miter-range-right"
  | "bevel-range-left"
  | "bevel-range-right"
  | "depth"
  | "crosscut"
  | "no-flat-back"
  | "rocks"
  | "tips-over"
  | "needs-cradle";
