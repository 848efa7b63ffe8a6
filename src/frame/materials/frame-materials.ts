import type { LengthUnit } from "../../core/geometry-types.js";
import { lumberOf, volumeIn } from "../../wood/internal.js";
import type { FilledBrief } from "../brief/brief.js";
import type { FrameContents } from "../contents/contents-plan.js";
import type { FrameGeometry } from "../frame-geometry.js";
import { densityOfLayer, densityOfWood } from "./material-density.js";
import { lumberSection, moldingVolume, type MoldingLumber } from "./molding-volume.js";
import { partCost, type PartCost } from "./part-cost.js";
import { finiteOrNull, partialSum, type PartialSum } from "./partial-sum.js";
import type { RoughPiece } from "../sawing/rough-length.js";
import { moistureYear } from "./usual-year.js";

/** One thing that a frame is made of: its molding, or a layer of its contents. */
export interface MaterialPart {
  /** `"molding"`, or the layer's name. */
  readonly name: string;
  /** Which layer, by its place among the contents from 0; `null` for the molding. */
  readonly layer: number | null;
  /** Its volume in the cube of the brief's unit; `null` where a molding has no section or the clearance leaves no panel. */
  readonly volume: number | null;
  /** Its density when the frame is made, in kilograms per cubic meter; `null` where it is not known. */
  readonly density: number | null;
  /** Its mass in kilograms; `null` where it is not known. */
  readonly mass: number | null;
  /** What it costs; `null` where the brief gives no cost for it. */
  readonly cost: PartCost | null;
}

/** What a frame takes, weighs and costs. */
export interface FrameMaterials {
  /** Number of pieces. */
  readonly pieces: number;
  /** Finished length of all pieces along their longest arris. */
  readonly finishedLength: number;
  /**
   * Length that all pieces use up of one stick: their lengths, a cut after each of them, and the cut that squares the stick's end before the first. Each
   * further stick takes one cut more. Offcuts come on top.
   */
  readonly moldingLength: number;
  /** The lumber that so much molding is milled from, before planing and waste; `null` where no section is known. */
  readonly lumber: MoldingLumber | null;
  /** The molding, then the layers of the contents from the front. */
  readonly parts: readonly MaterialPart[];
  /** Mass of the whole frame in kilograms. */
  readonly mass: PartialSum;
  /** What the whole frame costs, in the brief's currency; `null` where the brief gives no cost. */
  readonly cost: PartialSum | null;
}

/** Mass of a volume; `null` where either is not known. */
function massOf(volume: number | null, density: number | null, unit: LengthUnit): number | null {
  return volume === null || density === null ? null : finiteOrNull(volumeIn(volume * density, unit, "m"));
}

function moldingBlank({ profile }: FrameGeometry, length: number, unit: LengthUnit): MoldingLumber | null {
  if (profile === null) return null;
  const { width, thickness } = lumberSection(profile);
  const { boardFeet, cubicMeters } = lumberOf(width * thickness * length, unit);
  return { width, thickness, length, boardFeet, cubicMeters };
}

/**
 * What a frame takes, weighs and costs.
 *
 * The molding weighs its exact volume times the density of its wood. A layer weighs area times thickness times density, its area being the opening's less the
 * clearance. The cost of the molding counts its pieces, the stick that they use up or the lumber that they are milled from. The cost of a layer counts one piece or
 * the area of the rectangle that it is cut from: the brief's sheet, or else the upright box round it.
 */
export function frameMaterials(
  brief: FilledBrief,
  geometry: FrameGeometry,
  rough: RoughPiece,
  contents: FrameContents,
): FrameMaterials {
  const piece = geometry.pieces[0];
  const { unit } = brief;
  const { made } = moistureYear(brief.moisture);
  const moldingLength = piece.count * rough.pitch + rough.kerfAlong;
  const lumber = moldingBlank(geometry, moldingLength, unit);
  const volume = geometry.profile === null ? null : moldingVolume(geometry, geometry.profile);
  const density = densityOfWood(brief.species, made);
  const { panel, box } = contents;
  const sheet = contents.sheet ?? box;
  const area = sheet && sheet.width * sheet.height;
  const parts: MaterialPart[] = [
    {
      name: "molding",
      layer: null,
      volume,
      density,
      mass: massOf(volume, density, unit),
      cost: partCost(
        brief.cost,
        {
          pieces: piece.count,
          length: moldingLength,
          cubicMeters: lumber?.cubicMeters ?? null,
          boardFeet: lumber?.boardFeet ?? null,
        },
        unit,
      ),
    },
    ...brief.contents.map(({ name, thickness, material, cost }, layer) => {
      const filled = panel && finiteOrNull(panel.area * thickness);
      const weighs = densityOfLayer(material, made);
      const mass = massOf(filled, weighs, unit);
      return { name, layer, volume: filled, density: weighs, mass, cost: partCost(cost, { pieces: 1, area }, unit) };
    }),
  ];
  return {
    pieces: piece.count,
    finishedLength: piece.count * piece.longest.length,
    moldingLength,
    lumber,
    parts,
    mass: partialSum(parts.map((part) => ({ name: part.name, value: part.mass }))),
    cost: parts.every(({ cost }) => cost === null)
      ? null
      : partialSum(parts.map((part) => ({ name: part.name, value: part.cost?.total ?? null }))),
  };
}
