import fc from "fast-check";
import { describe, expect, expectTypeOf, test } from "vitest";
import { tabulate, type Table, type TableToWrite } from "miterwright/report";
import { fakeDocument, madeElements, madeText, type MadeElement } from "../drawing/fake-document.js";
import { loose } from "../formats.js";
import { readHtml, readMarkdown, readPlainText } from "./read-table.js";

const SHELVES: TableToWrite = {
  caption: "Shelves of the tide hut",
  columns: [
    { label: "shelf" },
    { label: "jars", kind: "number" },
    { label: "width", kind: "length" },
    { label: "tilt", kind: "angle" },
  ],
  rows: [
    ["upper", 12, 640, 2.5],
    ["lower, behind the door", 7, 1280.25, 0],
  ],
};
const TELL = {
  formats: {
    length: (value: number): string => `${value.toFixed(1)} mm`,
    angle: (degrees: number): string => `${degrees}°`,
  },
};
const table = tabulate(SHELVES, TELL);
const show = Symbol.for("Jupyter.display");
const bundleOf = (shown: Table): unknown => (shown as unknown as Record<symbol, () => unknown>)[show]!();

describe("a table", () => {
  test("is frozen data: caption, columns, rows, and cells as they are written", () => {
    expect({ ...table }).toEqual({
      caption: "Shelves of the tide hut",
      columns: [
        { label: "shelf", kind: "text" },
        { label: "jars", kind: "number" },
        { label: "width", kind: "length" },
        { label: "tilt", kind: "angle" },
      ],
      rows: SHELVES.rows,
      cells: [
        ["upper", "12", "640.0\u00a0mm", "2.5°"],
        ["lower, behind the door", "7", "1280.3\u00a0mm", "0°"],
      ],
    });
    for (const part of [table, table.columns, table.columns[0], table.rows, table.rows[0], table.cells, table.cells[1]])
      expect(Object.isFrozen(part)).toBe(true);
  });

  test("survives JSON, and can be written from it again", () => {
    const copy = JSON.parse(JSON.stringify(table)) as TableToWrite;
    expect(copy).toEqual({ ...table });
    expect(structuredClone(table)).toEqual({ ...table });
    expect(tabulate(copy, TELL).toHtml()).toBe(table.toHtml());
  });

  test("does not change with what it was made from", () => {
    const rows = [["a"], ["b"]];
    const made = tabulate({ caption: "x", columns: [{ label: "y" }], rows });
    rows[0]![0] = "c";
    rows.pop();
    expect(made.rows).toEqual([["a"], ["b"]]);
  });

  test("is plain text as a string", () => {
    expect(`${loose(String(table))}\n`).toBe(`Shelves of the tide hut

shelf                   jars      width  tilt
----------------------  ----  ---------  ----
upper                     12   640.0 mm  2.5°
lower, behind the door     7  1280.3 mm    0°
`);
  });

  test("is Markdown with pipes", () => {
    expect(`${loose(table.toMarkdown())}\n`).toBe(`**Shelves of the tide hut**

| shelf | jars | width | tilt |
| :--- | ---: | ---: | ---: |
| upper | 12 | 640.0 mm | 2.5° |
| lower, behind the door | 7 | 1280.3 mm | 0° |
`);
  });

  test("is a table element of HTML", () => {
    const small = tabulate({
      caption: "x",
      columns: [{ label: "y" }, { label: "z", kind: "number" }],
      rows: [["a", 1]],
    });
    expect(small.toHtml()).toBe(
      "<table><caption>x</caption>" +
        '<thead><tr><th scope="col" align="left">y</th><th scope="col" align="right">z</th></tr></thead>' +
        '<tbody><tr><th scope="row" align="left">a</th><td align="right">1</td></tr></tbody></table>',
    );
  });

  test("keeps a number, its fraction and its unit on one line", () => {
    const made = tabulate({
      caption: "x",
      columns: [{ label: "y" }, { label: "z", kind: "length", format: () => "92 23/32 in" }],
      rows: [
        ["two words", 92.71875],
        ["a b", "not known"],
      ],
    });
    expect(readHtml(made.toHtml()).rows).toEqual([
      ["two words", "92\u00a023/32\u00a0in"],
      ["a b", "not known"],
    ]);
    expect(made.cells[0]).toEqual(["two words", "92\u00a023/32\u00a0in"]);
  });

  test("has its styles in it for notebooks, whose own would put words to the right", () => {
    const small = tabulate({
      caption: "x",
      columns: [{ label: "y" }, { label: "z", kind: "number" }],
      rows: [["a", 1]],
    });
    const left = 'style="text-align:left;padding:0.2em 0.7em"';
    const right = 'style="text-align:right;padding:0.2em 0.7em"';
    expect(bundleOf(small)).toMatchObject({
      "text/html":
        '<table style="border-collapse:collapse;font-variant-numeric:tabular-nums">' +
        '<caption style="text-align:left;caption-side:top">x</caption>' +
        `<thead style="border-bottom:1px solid"><tr><th scope="col" ${left}>y</th><th scope="col" ${right}>z</th></tr></thead>` +
        `<tbody><tr><th scope="row" ${left}>a</th><td ${right}>1</td></tr></tbody></table>`,
    });
  });

  test("shows itself in notebooks in all three forms", () => {
    expect(bundleOf(table)).toEqual({
      "text/html": expect.stringMatching(/^<table style=.*<\/table>$/) as unknown,
      "text/markdown": table.toMarkdown(),
      "text/plain": String(table),
    });
    for (const key of [show, "toString", "toHtml", "toMarkdown", "toElement"])
      expect(Object.getOwnPropertyDescriptor(table, key)?.enumerable).toBe(false);
  });

  test("becomes an element of the document that is given", () => {
    const made = table.toElement(fakeDocument()) as MadeElement;
    expect([made.name, made.namespace]).toEqual(["table", "http://www.w3.org/1999/xhtml"]);
    expect(made.style["border-collapse"]).toBe("collapse");
    expect(madeElements(made, "th").map(madeText)).toEqual(expect.arrayContaining(["shelf", "lower, behind the door"]));
    expect(madeElements(made, "td")[0]!.style).toEqual({ "text-align": "right", padding: "0.2em 0.7em" });
    expect(() => table.toElement()).toThrow(
      "Expected `document` to be given where there is no global one, got undefined",
    );
  });

  test("may have no rows", () => {
    const empty = tabulate({ ...SHELVES, rows: [] }, TELL);
    for (const read of [readHtml(empty.toHtml()), readMarkdown(empty.toMarkdown()), readPlainText(String(empty))])
      expect(read).toMatchObject({ heads: ["shelf", "jars", "width", "tilt"], rows: [] });
  });
});

describe("numbers", () => {
  const columns = [
    { label: "n", kind: "number" },
    { label: "a", kind: "area" },
    { label: "own", kind: "number", format: (value: number): string => `<${value}>` },
    { label: "text" },
  ] as const;

  test("are written by the formatter of their kind or column", () => {
    const made = tabulate(
      { caption: "x", columns, rows: [[5, 6, 7, 8.25]] },
      { formats: { number: (value) => `#${value}`, area: (value) => `${value}²` } },
    );
    expect(made.cells).toEqual([["#5", "6²", "<7>", "8.25"]]);
  });

  test("never are -0", () => {
    const made = tabulate({ caption: "x", columns: [{ label: "n", kind: "number" }], rows: [[-0]] });
    expect(made.rows).toEqual([[0]]);
    expect(made.cells).toEqual([["0"]]);
  });
});

const HOSTILE: readonly string[] = [
  "a | b \\| c \\",
  "<script>alert(1)</script> & &amp; &#60;",
  "line one\nline two\r\n\tthree\u2028four",
  "*bold* _it_ **b** __i__ `code` ~~gone~~ ``",
  "[link](http://reef.example) ![x](y) <http://reef.example> http://reef.example a@example.com",
  "$x^2$ $$y$$ \\(z\\) # no head - no list 1. no item > no quote",
  "---",
  ":--- | ---:",
  "'single' \"double\" ]]> --> {{x}} ${y}",
  "  spaces   at  both ends ",
  "\0\u0007\ufffe\ud800",
];

/** A text as every form must show it. */
function shown(text: string): string {
  return text
    .replace(/[\t-\r \u0085\u2028\u2029]+/g, " ")
    .replace(/[\u0000-\u001f\u007f\ufffe\uffff]|\p{Cs}/gu, "\ufffd")
    .trim();
}

/** The three forms of a table, read back. */
function formsOf(made: Table): readonly unknown[] {
  return [readHtml(made.toHtml()), readMarkdown(made.toMarkdown()), readPlainText(String(made))];
}

describe("text of the caller", () => {
  test.each(HOSTILE)("is text in every form: %j", (text) => {
    const made = tabulate({
      caption: text,
      columns: [{ label: text }, { label: `${text}n`, kind: "number" }],
      rows: [
        [text, text],
        ["", 5],
      ],
    });
    const plain = shown(text);
    const rows = [
      [plain, plain],
      ["", "5"],
    ];
    for (const read of formsOf(made))
      expect(read).toMatchObject({ caption: plain, heads: [plain, shown(`${text}n`)], rows });
    const element = made.toElement(fakeDocument()) as MadeElement;
    expect(madeText(madeElements(element, "caption")[0]!)).toBe(plain);
    expect(madeElements(element, "tr")[1]!.children.map(madeText)).toEqual([plain, plain]);
    for (const { sides } of [readHtml(made.toHtml()), readMarkdown(made.toMarkdown())])
      expect(sides).toEqual(["left", "right"]);
  });

  test("is text in every form, whatever its characters", () => {
    // Letters of one column each, so that plain text can be cut by its rule.
    const sign = fc.constantFrom(...Array.from("|\\`*_{}[]()<>#+-.!~&$:/@\"'=^wW. \n\t0aé5°"));
    const text = fc.string({ unit: sign, maxLength: 12 });
    const full = text.filter((value) => value.trim() !== "");
    fc.assert(
      fc.property(full, full, fc.array(fc.tuple(text, text), { maxLength: 4 }), (caption, label, rows) => {
        const made = tabulate({ caption, columns: [{ label }, { label: "n", kind: "number" }], rows });
        const expected = {
          caption: shown(caption),
          heads: [shown(label), "n"],
          rows: rows.map((row) => row.map(shown)),
        };
        for (const read of formsOf(made)) expect(read).toMatchObject(expected);
      }),
    );
  });

  test("of any script stays well-formed HTML", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: "binary", maxLength: 20 }), { minLength: 1 }), (texts) => {
        const rows = texts.map((text) => [text]);
        const made = tabulate({ caption: "x", columns: [{ label: "y" }], rows });
        expect(readHtml(made.toHtml()).rows).toEqual(rows.map((row) => row.map(shown)));
      }),
    );
  });

  test("is no link in Markdown, as GitHub would make of what begins like a host's name", () => {
    const made = tabulate({ caption: "x", columns: [{ label: "WWW.example.com" }], rows: [["see www.example.com"]] });
    expect(made.toMarkdown().split("\n").slice(2)).toEqual([
      "| WWW\\.example.com |",
      "| :--- |",
      "| see www\\.example.com |",
    ]);
  });

  test("takes two columns where its signs are wide, and none for accents of their own", () => {
    const made = tabulate({
      caption: "潮だまりの盆",
      columns: [{ label: "name" }, { label: "n", kind: "number" }],
      rows: [
        ["潮だまり", 1],
        ["cafe\u0301", 2],
      ],
    });
    expect(String(made).split("\n").slice(3)).toEqual(["--------  -", "潮だまり  1", "cafe\u0301      2"]);
  });

  test("that a formatter writes is treated alike", () => {
    const made = tabulate(
      { caption: "x", columns: [{ label: "n", kind: "length" }], rows: [[1]] },
      { formats: { length: () => " <b>|\n " } },
    );
    expect(made.cells).toEqual([["<b>|"]]);
    for (const read of formsOf(made)) expect(read).toMatchObject({ rows: [["<b>|"]] });
  });
});

test("types: kinds are words, cells numbers or texts", () => {
  expectTypeOf(table).toEqualTypeOf<Table>();
  const { caption, rows } = SHELVES;
  // @ts-expect-error a kind that is none
  expect(() => tabulate({ caption, columns: [{ label: "x", kind: "date" }], rows })).toThrow("columns[0].kind");
  // @ts-expect-error cells that are neither numbers nor texts
  expect(() => tabulate({ caption, columns: [{ label: "x" }], rows: [[null]] })).toThrow("rows[0][0]");
});
