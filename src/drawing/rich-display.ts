import { checkObject, reject } from "../core/check.js";
import { buildNodes, type ElementMaker } from "./build-element.js";

/** The page's `Document` where the compiler knows of one. */
export type PageDocument = typeof globalThis extends { Document: { prototype: infer D } } ? D : object;

/** How a thing of plain data shows itself. */
export interface Shows {
  /** Its markup, which is one element, for `toElement`; with the styles that go with it. */
  readonly markup: () => string;
  /** Its forms for a notebook, by media type. */
  readonly bundle: () => Readonly<Record<string, string>>;
  /** Functions by name that it has besides `toElement`. */
  readonly functions: Readonly<Record<string, () => string>>;
}

function makeElement(markup: string, document: unknown): unknown {
  const given = document ?? (globalThis as { document?: unknown }).document;
  if (given === undefined) {
    return reject(
      "missing",
      "document",
      given,
      "Expected `document` to be given where there is no global one, got undefined",
    );
  }
  return buildNodes(markup, checkObject(given, "document") as unknown as ElementMaker)[0];
}

/** Freezes plain data that shows itself in notebooks and pages. */
export function freezeShowing(data: object, shows: Shows): unknown {
  const hide = (key: string | symbol, value: unknown): void => {
    Object.defineProperty(data, key, { value });
  };
  for (const [name, value] of Object.entries(shows.functions)) hide(name, value);
  hide("toElement", (document?: unknown) => makeElement(shows.markup(), document));
  hide(Symbol.for("Jupyter.display"), shows.bundle);
  return Object.freeze(data);
}
