/** An element of an XML document. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (XmlElement | string)[];
}

const NAME = /[A-Za-z_][\w.:-]*/y;
const ENTITIES: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };
/** XML 1.0, section 2.2, production 2. */
const CHARACTERS = /^[\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]*$/u;

/**
 * Reads an XML document and refuses everything that is not well-formed: unclosed or crossing elements, bare ampersands, attributes without quotes or given
 * twice, unknown entities, characters that XML does not allow, and anything beside the one root. Comments, processing instructions and CDATA are not
 * expected in ours, so they are refused too.
 */
export function readXml(text: string): XmlElement {
  let at = 0;
  const fail = (what: string): never => {
    throw new Error(`not well-formed at ${at}: ${what}: ${JSON.stringify(text.slice(at, at + 60))}`);
  };
  const expectSign = (sign: string): void => {
    if (!text.startsWith(sign, at)) fail(`expected ${sign}`);
    at += sign.length;
  };
  const readName = (): string => {
    NAME.lastIndex = at;
    const name = NAME.exec(text)?.[0] ?? fail("expected a name");
    at += name.length;
    return name;
  };
  const skipSpace = (): boolean => {
    const start = at;
    while (/\s/.test(text[at] ?? "")) at++;
    return at > start;
  };
  const decode = (raw: string): string => {
    if (raw.includes("<")) fail("a bare < in text");
    return raw.replace(/&([^;&]*);?/g, (whole, name: string) => {
      if (!whole.endsWith(";")) fail("a bare ampersand");
      const code = /^#(\d+)$/.exec(name)?.[1];
      return code === undefined
        ? (ENTITIES[name] ?? fail(`unknown entity ${name}`))
        : String.fromCodePoint(Number(code));
    });
  };
  const readElement = (): XmlElement => {
    expectSign("<");
    const name = readName();
    const attributes: Record<string, string> = {};
    for (let spaced = skipSpace(); !/[/>]/.test(text[at] ?? fail("unclosed tag")); spaced = skipSpace()) {
      if (!spaced) fail("expected a space before an attribute");
      const key = readName();
      if (Object.hasOwn(attributes, key)) fail(`attribute ${key} twice`);
      expectSign('="');
      const end = text.indexOf('"', at);
      if (end < 0) fail("unclosed attribute");
      attributes[key] = decode(text.slice(at, end));
      at = end + 1;
    }
    if (text[at] === "/") {
      expectSign("/>");
      return { name, attributes, children: [] };
    }
    expectSign(">");
    const children: (XmlElement | string)[] = [];
    while (!text.startsWith("</", at)) {
      if (text[at] === "<") {
        children.push(readElement());
        continue;
      }
      const end = text.indexOf("<", at);
      if (end < 0) fail(`unclosed ${name}`);
      children.push(decode(text.slice(at, end)));
      at = end;
    }
    expectSign("</");
    if (readName() !== name) fail(`${name} is closed by another`);
    expectSign(">");
    return { name, attributes, children };
  };
  if (!CHARACTERS.test(text)) fail("a character that XML does not allow");
  const root = readElement();
  if (at < text.length) fail("something after the root");
  return root;
}

/** Every element below another one, itself included, in document order. */
export function elementsOf(element: XmlElement): XmlElement[] {
  return [element, ...element.children.flatMap((child) => (typeof child === "string" ? [] : elementsOf(child)))];
}

/** All text below an element. */
export function textOf(element: XmlElement): string {
  return element.children.map((child) => (typeof child === "string" ? child : textOf(child))).join("");
}
