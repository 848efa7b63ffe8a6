import type { FrameBrief, ProfileBrief } from "miterwright/frame";
import { slopeFromPlumb, slopeFromSpring } from "miterwright/miter";
import { innermostPoint, molding, outermostPoint, type Profile } from "miterwright/profile";
import { miterSaw, tableSaw, type Saw } from "miterwright/saw";
import type { Values } from "./fields.js";
import type { PageWords } from "./labels/page-words.js";
import type { PlacedRow, ReadFields } from "./read-fields.js";

/**
 * A number under a name, for spreading into options that take none.
 *
 * @param key - the name
 * @param value - the number, if there is one
 * @returns an object with that key, or an empty one
 */
export function optional<K extends string>(key: K, value: number | undefined): { readonly [P in K]?: number } {
  return value === undefined ? {} : ({ [key]: value } as { readonly [P in K]?: number });
}

/**
 * The slope, however its angle is given.
 *
 * @param fields - the form
 * @returns degrees
 * @throws {InputError} when the angle is out of range
 */
export function slopePart({ values, numbers }: ReadFields): number {
  const given = numbers.get("slope");
  if (given === undefined) return 0;
  if (values.slopeAs === "plumb") return slopeFromPlumb(given);
  return values.slopeAs === "spring" ? slopeFromSpring(given) : given;
}

/**
 * The molding's section. A rabbet of no width and no depth is none.
 *
 * @param fields - the form, with width and thickness
 * @param slope - the slope, for a molding that is milled for it
 * @returns the section
 * @throws {InputError} when the sizes do not go together
 */
export function moldingPart({ values, numbers }: ReadFields, slope: number): Profile {
  const [width, depth] = [numbers.get("rabbetWidth") ?? 0, numbers.get("rabbetDepth") ?? 0];
  return molding({
    width: numbers.get("moldingWidth")!,
    thickness: numbers.get("thickness")!,
    ...(width > 0 || depth > 0 ? { rabbet: { width, depth } } : {}),
    ...(values.milled === "milled" ? { madeFor: { slope } } : {}),
  });
}

/**
 * What decides the frame's size.
 *
 * @param fields - the form
 * @returns the brief's opening
 */
export function openingPart({ values, numbers }: ReadFields): FrameBrief["opening"] {
  const box = { width: numbers.get("width"), height: numbers.get("height") };
  const opening =
    values.holds === "measure"
      ? { [values.measure]: numbers.get("size") }
      : values.holds === "cutFrom"
        ? { cutFrom: box }
        : { contains: { ...box, ...optional("allowance", numbers.get("allowance")) } };
  // Which key it has is known to the form alone; `tryParseBrief` looks at it.
  return opening as unknown as FrameBrief["opening"];
}

/**
 * The arris at which a measure of the opening is taken.
 *
 * @param values - the form's answers
 * @param profile - the section, where it is known
 * @param slope - the slope
 * @param hasLap - whether a molding of level measures has a lip
 * @returns the name of an arris, or `opening`
 */
export function placePart(
  values: Values,
  profile: Profile | null,
  slope: number,
  hasLap: boolean,
): ProfileBrief["at"] & string {
  if (values.holds !== "measure" || values.at === "opening") return "opening";
  if (profile === null) return values.at === "outermost" ? "outer" : hasLap ? "sight" : "wall";
  const { arris } = values.at === "outermost" ? outermostPoint(profile, slope) : innermostPoint(profile, slope);
  return arris ?? "opening";
}

/**
 * What the layers in the rabbet are.
 *
 * @param fields - the form
 * @param layers - the rows of the layers that say something
 * @param page - the page's texts
 * @returns the brief's contents
 */
export function contentsPart(
  { values, numbers }: ReadFields,
  layers: readonly PlacedRow[],
  page: PageWords,
): unknown[] {
  const { unnamed } = page.lists.layers;
  return layers.map(({ row, index }) => {
    const material = row["material"] ?? "";
    const materials: Readonly<Record<string, unknown>> = {
      molding: values.species === "" ? undefined : { species: values.species },
      sheet: { density: numbers.get(`layers.${index}.density`) },
    };
    return {
      name: (row["name"] ?? "").trim() || unnamed({ number: index + 1, isOnly: layers.length === 1 }),
      thickness: numbers.get(`layers.${index}.thickness`),
      ...(material === "" ? {} : { material: Object.hasOwn(materials, material) ? materials[material] : material }),
      ...optional("cost", numbers.get(`layers.${index}.cost`)),
    };
  });
}

/**
 * The wood and its year, what it costs, and how the frame hangs.
 *
 * @param fields - the form
 * @returns the parts of the brief
 */
export function woodPart({ values, numbers }: ReadFields): Partial<FrameBrief> {
  const cost = numbers.get("cost");
  const moistures = ["made", "driest", "dampest"].map((name) => numbers.get(name));
  const [made = 8, driest = 6, dampest = 12] = moistures;
  const isMoistureSaid = moistures.some((moisture) => moisture !== undefined);
  const part = {
    ...(values.species === "" ? {} : { species: values.species, grain: values.grain }),
    ...(values.species !== "" && isMoistureSaid ? { moisture: { made, seasons: [driest, dampest] } } : {}),
    ...(cost === undefined ? {} : { cost: { amount: cost, per: values.costPer } }),
    ...(values.hangs === "" ? {} : { hanging: hangingPart({ values, numbers }) }),
  };
  // The choices are the words that the brief knows; `tryParseBrief` looks at them.
  return part as Partial<FrameBrief>;
}

function hangingPart({ values, numbers }: Pick<ReadFields, "values" | "numbers">): object {
  return {
    by: values.hangs,
    ...optional("wireAngle", numbers.get("wireAngle")),
    ...optional("screwDepth", numbers.get("screwDepth")),
    ...optional("extraMass", numbers.get("extraMass")),
  };
}

/**
 * The saw, with what differs from the usual one of its kind.
 *
 * @param fields - the form
 * @returns the saw
 */
export function sawPart({ values, numbers }: ReadFields): Saw {
  const base = values.saw === "miter" ? miterSaw() : tableSaw();
  const reach = numbers.get("miterReach");
  const step = optional("step", numbers.get("scaleStep"));
  return {
    ...base,
    miter: {
      ...base.miter,
      ...(reach === undefined ? {} : { left: reach, right: reach }),
      reads: values.miterReads as Saw["miter"]["reads"],
      ...step,
    },
    bevel: {
      ...base.bevel,
      ...optional("left", numbers.get("bevelLeft")),
      ...optional("right", numbers.get("bevelRight")),
      reads: values.bevelReads as Saw["bevel"]["reads"],
      ...step,
    },
    ...optional("depth", numbers.get("sawDepth")),
    ...optional("crosscut", numbers.get("crosscut")),
    ...optional("gaugeReach", numbers.get("gaugeReach")),
  };
}
