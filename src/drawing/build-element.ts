/** An element in the making. */
interface MadeElement {
  readonly setAttribute: (name: string, value: string) => void;
  readonly appendChild: (child: never) => unknown;
  readonly style: { readonly setProperty: (name: string, value: string) => void };
}

/** The parts of a page's document that are used. */
export interface ElementMaker {
  /** Makes an element of a namespace. */
  readonly createElementNS: (namespace: string, name: string) => MadeElement;
  /** Makes a text. */
  readonly createTextNode: (text: string) => unknown;
}

const HTML: string = "http://www.w3.org/1999/xhtml";
const SVG: string = "http://www.w3.org/2000/svg";

/** A tag, with what stands in it, or a text. */
const TOKEN: RegExp = /<(\/?)([a-z][\w-]*)((?:\s+[\w:-]+(?:\s*=\s*"[^"]*")?)*)\s*(\/?)>|([^<]+)|(<)/gi;
const ATTRIBUTE: RegExp = /([\w:-]+)(?:\s*=\s*"([^"]*)")?/g;
const ENTITY: RegExp = /&(amp|lt|gt|quot|#39);/g;
const CHARACTERS: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', "#39": "'" };

function plain(text: string): string {
  return text.replace(ENTITY, (_, name: string) => CHARACTERS[name]!);
}

/** A style is set property by property: a policy that forbids style attributes forbids setting them too, but not this. */
function setAttribute(element: MadeElement, name: string, value: string): void {
  if (name === "xmlns") return;
  if (name !== "style") {
    element.setAttribute(name, value);
    return;
  }
  for (const declaration of value.split(";")) {
    const colon = declaration.indexOf(":");
    if (colon > 0) element.style.setProperty(declaration.slice(0, colon).trim(), declaration.slice(colon + 1).trim());
  }
}

/**
 * Builds what the library's own markup says, element by element.
 *
 * A page's Content-Security-Policy can forbid style attributes, and Trusted Types forbid `innerHTML` and every other way to hand a text to the parser of HTML.
 * The markup is our own: every element is closed, every attribute stands in double quotes, and texts are escaped by `escapeText`.
 * Nothing here is parsed by the browser, so no text can become an element that is not written in the markup.
 */
export function buildNodes(markup: string, document: ElementMaker): unknown[] {
  const roots: unknown[] = [];
  const open: { readonly name: string; readonly element: MadeElement; readonly namespace: string }[] = [];
  const add = (node: unknown): void => {
    const parent = open.at(-1);
    if (parent === undefined) roots.push(node);
    else parent.element.appendChild(node as never);
  };
  for (const [token, end, name, attributes = "", selfEnd, text] of markup.matchAll(TOKEN)) {
    if (text !== undefined) {
      add(document.createTextNode(plain(text)));
    } else if (name === undefined || (end === "/" && open.at(-1)?.name !== name)) {
      throw new Error(`bug: markup of our own is not well formed at ${token}`);
    } else if (end === "/") {
      open.pop();
    } else {
      const namespace = name === "svg" ? SVG : (open.at(-1)?.namespace ?? HTML);
      const element = document.createElementNS(namespace, name);
      for (const [, key, value = ""] of attributes.matchAll(ATTRIBUTE)) setAttribute(element, key!, plain(value));
      add(element);
      if (selfEnd !== "/") open.push({ name, element, namespace });
    }
  }
  if (open.length > 0) throw new Error(`bug: markup of our own does not close ${open.at(-1)!.name}`);
  return roots;
}
