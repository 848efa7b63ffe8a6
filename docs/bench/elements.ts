import { buildNodes, type ElementMaker } from "../../src/drawing/build-element.js";
import type { Markup } from "./html.js";

/**
 * An element of the page that must be there.
 *
 * @param id - its id
 * @param kind - its class, so that its fields have types
 * @returns the element
 */
export function find<E extends HTMLElement>(id: string, kind: new () => E): E {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`bug: the page has no ${kind.name} with the id ${id}`);
  return found;
}

/**
 * What is told once a pause has come: work that need not follow every key.
 *
 * @param work - what is done
 * @param milliseconds - the pause
 * @returns a function to call as often as wanted
 */
export function afterPause(work: () => void, milliseconds: number): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return () => {
    clearTimeout(timer);
    timer = setTimeout(work, milliseconds);
  };
}

/**
 * Makes an element of the page hold markup. The browser's own parser is not asked: the page's policy forbids it.
 *
 * @param place - the element
 * @param markup - what it holds from now on
 */
export function showMarkup(place: Element, markup: Markup | null): void {
  const nodes = markup === null ? [] : buildNodes(markup.html, document as unknown as ElementMaker);
  place.replaceChildren(...(nodes as Node[]));
}
