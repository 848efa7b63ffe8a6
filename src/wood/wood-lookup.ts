import { refuse } from "../core/check.js";
import type { WoodName } from "./wood-name.js";
import { tableWood } from "./read-wood.js";
import type { WoodSpecies } from "./wood-species.js";
import { WOOD_TABLE } from "./wood-table.js";

/**
 * The names of the woods in the table, by kind: all oaks together, in the order of a menu.
 *
 * @returns the names, a new array
 * @example
 * ```ts
 * import { woodNames } from "miterwright/wood";
 *
 * woodNames().filter((name) => name.endsWith("walnut")); //=> ["black walnut"]
 * ```
 */
export function woodNames(): WoodName[] {
  return Object.keys(WOOD_TABLE) as WoodName[];
}

/**
 * Looks a wood up in the table.
 *
 * Its words may come in any order and case, so a name that was typed will do. The figures are averages of a species: single boards differ.
 *
 * @param name - the wood's name, as `woodNames()` lists it or with its words in another order
 * @returns its shrinkage, coefficients, fiber saturation and specific gravity, and how each was had
 * @throws {InputError} when the table has no such wood; the text offers the names most like it, and says which of them have no specific gravity
 * @example
 * ```ts
 * import { woodSpecies } from "miterwright/wood";
 *
 * const oak = woodSpecies("Oak, White");
 * oak.name; //=> "white oak"
 * oak.tangential; //=> 10.5
 * oak.seen.shrinkage; //=> "print"
 * ```
 * @see Forest Products Laboratory, Wood Handbook, FPL-GTR-190, 2010, tables 4-3 (p. 4-6), 5-3a and 13-5 (p. 13-16)
 */
export function woodSpecies(name: string): WoodSpecies {
  if (typeof name !== "string") return refuse("type", "name", name, "the name of a wood");
  return tableWood(name, "name");
}
