import {
  checkArray,
  checkFields,
  checkInside,
  checkLength,
  checkOneOf,
  checkWord,
  refuse,
  reject,
} from "../core/check.js";
import type { FaceArris, RabbetSize } from "./molding-options.js";

/** A face cut, checked. One of `depth` and `angle` is given. */
export interface ReadCut {
  /** The arris it takes off. */
  readonly at: FaceArris;
  /** How much of the face it takes. */
  readonly width: number;
  /** How far it goes down the edge. */
  readonly depth: number | undefined;
  /** Its angle to the face in degrees. */
  readonly angle: number | undefined;
  /** Its name in error texts. */
  readonly path: string;
}

/** Options of a molding, checked one by one, with the defaults filled in. A square molding is one made for slope 0. */
export interface ReadMolding {
  /** Level width. */
  readonly width: number;
  /** Thickness. */
  readonly thickness: number;
  /** The rabbet, if any. */
  readonly rabbet: RabbetSize | undefined;
  /** The face cuts. */
  readonly face: readonly ReadCut[];
  /** Whether it is made for a slope. */
  readonly milled: boolean;
  /** That slope in degrees, else 0. */
  readonly slope: number;
  /** Whether the outer edge stands plumb there. */
  readonly plumbOuter: boolean;
  /** Whether the sight edge stands plumb there. */
  readonly plumbInner: boolean;
  /** Whether the rabbet stands plumb and level there. */
  readonly levelRabbet: boolean;
  /** Whether the back lies level there. */
  readonly levelBack: boolean;
}

const ARRISES: readonly FaceArris[] = ["sightFace", "outerFace"];

function readRabbet(value: unknown): RabbetSize {
  const rabbet = checkFields(value, "rabbet", ["width", "depth"]);
  return { width: checkLength(rabbet["width"], "rabbet.width"), depth: checkLength(rabbet["depth"], "rabbet.depth") };
}

function readCut(value: unknown, path: string): ReadCut {
  const cut = checkFields(value, path, ["cut", "at", "width", "depth", "angle"]);
  checkWord(cut["cut"], `${path}.cut`, ["chamfer"]);
  const at = checkWord(cut["at"], `${path}.at`, ARRISES);
  const width = checkLength(cut["width"], `${path}.width`);
  const second = checkOneOf(cut, path, ["depth", "angle"]);
  return {
    at,
    width,
    depth: second === "depth" ? checkLength(cut["depth"], `${path}.depth`) : undefined,
    angle: second === "angle" ? checkInside(cut["angle"], `${path}.angle`, 0, 90) : undefined,
    path,
  };
}

function readFace(value: unknown): ReadCut[] {
  const cuts = checkArray(value, "face", "an array of face cuts").map((cut, index) => readCut(cut, `face[${index}]`));
  cuts.forEach(({ at, path }, index) => {
    const earlier = cuts.findIndex((cut) => cut.at === at);
    if (earlier !== index)
      reject("conflict", `${path}.at`, at, `Expected one cut at "${at}", got face[${earlier}] and ${path}`);
  });
  return cuts;
}

function readFlag(flags: Readonly<Record<string, unknown>>, key: string, byDefault: boolean): boolean {
  const value = flags[key];
  if (value === undefined) return byDefault;
  return typeof value === "boolean" ? value : refuse("type", `madeFor.${key}`, value, "true or false");
}

/** Checks the options of a molding one by one. */
export function readMolding(options: unknown): ReadMolding {
  const given = checkFields(options, "", ["width", "thickness", "rabbet", "face", "madeFor"]);
  const width = checkLength(given["width"], "width");
  const thickness = checkLength(given["thickness"], "thickness");
  const rabbet = given["rabbet"] === undefined ? undefined : readRabbet(given["rabbet"]);
  const face = given["face"] === undefined ? [] : readFace(given["face"]);
  const milled = given["madeFor"] !== undefined;
  const madeFor = milled ? checkFields(given["madeFor"], "madeFor", ["slope", "outer", "inner", "rabbet", "back"]) : {};
  return {
    width,
    thickness,
    rabbet,
    face,
    milled,
    slope: milled ? checkInside(madeFor["slope"], "madeFor.slope", -90, 90) : 0,
    plumbOuter: readFlag(madeFor, "outer", true),
    plumbInner: readFlag(madeFor, "inner", false),
    levelRabbet: readFlag(madeFor, "rabbet", true),
    levelBack: readFlag(madeFor, "back", false),
  };
}
