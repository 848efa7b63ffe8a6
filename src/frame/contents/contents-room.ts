import type { RegularPolygon } from "../../polygon/index.js";
import { panelRoom, type PanelRoom, type SideRoom } from "../../wood/index.js";
import type { ContentsLayer, FilledBrief } from "../brief/brief.js";
import { rangeOf } from "../materials/range-of.js";
import { moistureYear, temperatureYear, type Year } from "../materials/usual-year.js";

/** The room that one layer of the contents needs over the seasons. */
export interface LayerRoom {
  /** Which layer, by its place among the contents. */
  readonly layer: number;
  /** Its name. */
  readonly name: string;
  /** What it moves with: solid wood with its moisture in percent, a sheet with its temperature in degrees Celsius. */
  readonly with: "moisture" | "temperature";
  /** Its moisture or temperature when it was put in. */
  readonly made: number;
  /** The least that it meets, itself included. */
  readonly least: number;
  /** The most that it meets, itself included. */
  readonly most: number;
  /** The clearance that it needs: the most that it grows at any side. */
  readonly needed: number;
  /** Whether the brief's clearance gives it that. */
  readonly enough: boolean;
  /** The most that it draws back at any side. */
  readonly retreat: number;
  /** How far the lip still laps it where it bears, when both have drawn back the most, below 0 when it no longer does; `null` where no lip laps it at all. */
  readonly lapLeft: number | null;
  /** Every side of the frame, in order. */
  readonly sides: readonly SideRoom[];
}

/** What is needed besides the brief. */
export interface RoomFacts {
  /** The polygon that goes in; `null` when the clearance leaves nothing. */
  readonly panel: RegularPolygon | null;
  /** How far the lip laps it at every side, where it bears. */
  readonly lap: number;
  /** How far the lip draws back at the most. */
  readonly sightOpens: number;
}

/** The room of one layer, and what it meets; `null` where its movement is not known. */
function roomOf(
  { material }: ContentsLayer,
  panel: RegularPolygon,
  { moisture }: FilledBrief,
): { readonly by: LayerRoom["with"]; readonly year: Year; readonly room: PanelRoom } | null {
  const polygon = { sides: panel.sides, apothem: panel.apothem };
  if (typeof material === "object" && "species" in material) {
    const { species, grain = "flat-sawn", grainDirection = 0 } = material;
    const year = moistureYear(moisture);
    const wood = { species, grain, grainDirection, from: year.made, seasons: year.seasons };
    return { by: "moisture", year, room: panelRoom({ polygon, ...wood }) };
  }
  if (material === undefined || (typeof material === "object" && material.expansion === undefined)) return null;
  const year = temperatureYear(moisture);
  const room = panelRoom({ polygon, sheet: material, from: year.made, seasons: year.seasons });
  return { by: "temperature", year, room };
}

/**
 * The room that the layers of the contents need over the seasons.
 *
 * Every layer is taken as a panel as large as goes in, free to move and held at its center. The rabbet's walls are taken to stay: when the molding swells,
 * they move away a little.
 */
export function contentsRoom(brief: FilledBrief, facts: RoomFacts): LayerRoom[] {
  const { panel, lap, sightOpens } = facts;
  if (panel === null) return [];
  return brief.contents.flatMap((layer, index) => {
    const found = roomOf(layer, panel, brief);
    if (found === null) return [];
    const { by, year, room } = found;
    const [least, most] = rangeOf([year.made, ...year.seasons]);
    return {
      layer: index,
      name: layer.name,
      with: by,
      made: year.made,
      least,
      most,
      needed: room.room,
      enough: brief.clearance >= room.room,
      retreat: room.retreat,
      lapLeft: lap > 0 ? lap - room.retreat - sightOpens + 0 : null,
      sides: room.sides,
    };
  });
}
