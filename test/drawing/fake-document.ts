/** A node that a {@link fakeDocument} made: a text, or an element. */
export type MadeNode = string | MadeElement;

/** An element that was made step by step. */
export interface MadeElement {
  readonly namespace: string;
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** The properties of its style that were set one by one. */
  readonly style: Readonly<Record<string, string>>;
  readonly children: readonly MadeNode[];
}

/** A document as a strict page has it: elements and texts can be made, but no text is ever parsed and no style attribute set. */
export function fakeDocument(): object {
  return {
    createTextNode: (text: string): string => text,
    createElementNS: (namespace: string, name: string): object => {
      const attributes: Record<string, string> = {};
      const style: Record<string, string> = {};
      const children: MadeNode[] = [];
      return {
        namespace,
        name,
        attributes,
        children,
        style: Object.defineProperty(style, "setProperty", {
          value: (key: string, value: string) => {
            style[key] = value;
          },
        }),
        setAttribute: (key: string, value: string) => {
          if (/^(?:style|on.*)$/i.test(key)) throw new Error(`the policy forbids to set ${key}`);
          attributes[key] = value;
        },
        appendChild: (child: MadeNode) => children.push(child),
      };
    },
  };
}

/** The text of a node and of all in it. */
export function madeText(node: MadeNode): string {
  return typeof node === "string" ? node : node.children.map(madeText).join("");
}

/** All elements of a name in a node, itself too, in the order of the document. */
export function madeElements(node: MadeNode, name: string): MadeElement[] {
  if (typeof node === "string") return [];
  return [...(node.name === name ? [node] : []), ...node.children.flatMap((child) => madeElements(child, name))];
}
