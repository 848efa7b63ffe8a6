/**
 * How wood moves with the weather: species, equilibrium moisture, movement across the grain, and what it does to a miter and to a panel; also the masses of
 * wood and glazing, and board feet.
 *
 * @module
 */
export type { WoodName } from "./wood-name.js";
export type { AcrossGrain, CoefficientWood, FigureSource, ShrinkingWood, Wood, WoodSpecies } from "./wood-species.js";
export { woodNames, woodSpecies } from "./wood-lookup.js";
export { type Climate, type Moisture, equilibriumMoisture } from "./moisture.js";
export type { Grain, GrainName } from "./grain.js";
export { seasonalMovement, type SeasonalMovement, type SeasonalMovementOptions } from "./seasonal-movement.js";
export { miterMovement, type MiterMovement, type MiterMovementOptions, type OpenMiter } from "./miter-movement.js";
export {
  panelRoom,
  type PanelRoom,
  type PanelRoomOptions,
  type PanelShape,
  type SheetPanel,
  type SideRoom,
  type SolidPanel,
} from "./panel-room.js";
export type { OwnSheetMaterial, SheetMaterial, SheetMaterialName } from "./sheet-material.js";
export { thermalExpansion, type ThermalExpansion, type ThermalExpansionOptions } from "./thermal-expansion.js";
export { boardMeasure, type BoardMeasure, type BoardMeasureOptions } from "./board-measure.js";
export { woodDensity, type WoodDensityOptions } from "./wood-density.js";
export { sheetMass, type SheetMassOptions, woodMass, type WoodMassOptions } from "./mass.js";
