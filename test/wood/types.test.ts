import {
  type Climate,
  equilibriumMoisture,
  miterMovement,
  type Moisture,
  panelRoom,
  seasonalMovement,
  sheetMass,
  type Wood,
  type WoodName,
  woodNames,
  type WoodSpecies,
  woodSpecies,
} from "miterwright/wood";
import { expect, expectTypeOf, test } from "vitest";

test("wrong calls do not compile", () => {
  const board = { species: "white oak", width: 5, grain: "flat-sawn", from: 8 } as const;
  const box = { width: 1, height: 1 };
  const wrong = [
    // @ts-expect-error a wood that is not in the table
    () => seasonalMovement({ ...board, species: "iron", to: 9 }),
    // @ts-expect-error no moisture after
    () => seasonalMovement({ ...board }),
    // @ts-expect-error half of a climate
    () => seasonalMovement({ ...board, to: { humidity: 40 } }),
    // @ts-expect-error half of a wood
    () => seasonalMovement({ ...board, to: 9, species: { radial: 4 } }),
    // @ts-expect-error no corner at all
    () => miterMovement({ ...board, to: 9 }),
    // @ts-expect-error both ways to say a corner
    () => miterMovement({ ...board, to: 9, sides: 4, turn: 90 }),
    // @ts-expect-error no shape at all
    () => panelRoom({ species: "white oak", grain: "flat-sawn", from: 8, seasons: [6] }),
    // @ts-expect-error two materials
    () => panelRoom({ box, species: "white oak", grain: "flat-sawn", sheet: "glass", from: 8, seasons: [6] }),
    // @ts-expect-error no grain at all
    () => panelRoom({ box, species: "white oak", from: 8, seasons: [6] }),
    // @ts-expect-error no unit at all
    () => sheetMass({ sheet: "glass", area: 1, thickness: 1 }),
    // @ts-expect-error a climate without its temperature
    () => equilibriumMoisture({ humidity: 40 }),
  ];
  for (const call of wrong) expect(call).toThrow(RangeError);
});

test("results and inputs have the types that their names say", () => {
  expectTypeOf(woodNames()).toEqualTypeOf<WoodName[]>();
  expectTypeOf(woodSpecies).parameter(0).toEqualTypeOf<string>();
  expectTypeOf<WoodSpecies>().toExtend<Wood>();
  expectTypeOf<WoodName>().toExtend<Wood>();
  expectTypeOf<Climate>().toExtend<Moisture>();
  expectTypeOf(equilibriumMoisture).returns.toEqualTypeOf<number>();
  expectTypeOf(miterMovement).returns.toHaveProperty("opens").toEqualTypeOf<"inside" | "outside" | "nowhere">();
});
