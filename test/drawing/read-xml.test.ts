import { expect, test } from "vitest";
import { readXml, textOf } from "./read-xml.js";

test.each([
  "<a",
  "<a>",
  "<a></b>",
  "<a><b></a></b>",
  "<a b=c/>",
  '<a b="1" b="2"/>',
  '<a b="1"c="2"/>',
  "<a>&</a>",
  "<a>&copy;</a>",
  "<a/><b/>",
  "<a>\u0001</a>",
  "<a><!-- --></a>",
  "text",
  '<a b="<"/>',
])("the reader refuses %s", (text) => {
  expect(() => readXml(text)).toThrow("not well-formed");
});

test("the reader reads names, attributes and text", () => {
  const root = readXml('<a b="1 &lt; 2">x<c/>&amp;&#39;</a>');
  expect(root.attributes).toEqual({ b: "1 < 2" });
  expect(textOf(root)).toBe("x&'");
});
