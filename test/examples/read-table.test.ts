import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readTable, type Table } from "../../examples/sheets-from-csv/read-table.js";

const read = (text: string): Table => readTable(text, ["a", "b"]);

/** What was read, in short: `row: a|b`, and `row field: sentence` for what is wrong. */
function short({ rows, issues }: Table): string[] {
  return [
    ...rows.map(({ row, fields }) => `${row}: ${fields["a"]!}|${fields["b"]!}`),
    ...issues.map(({ row, field, sentence }) => `${row}${field === undefined ? "" : ` ${field}`}: ${sentence}`),
  ];
}

/** Examples 1 to 7 of RFC 4180, section 2, with its CRLF and column names of ours. */
describe("a table as RFC 4180 describes it", () => {
  test.each([
    ["lines that end in CRLF", "a,b\r\naaa,bbb\r\nzzz,yyy\r\n", ["2: aaa|bbb", "3: zzz|yyy"]],
    ["a last line without an end", "a,b\r\naaa,bbb\r\nzzz,yyy", ["2: aaa|bbb", "3: zzz|yyy"]],
    ["fields between quotes", 'a,b\r\n"aaa","bbb"\r\nzzz,yyy', ["2: aaa|bbb", "3: zzz|yyy"]],
    ["line ends and commas between quotes", 'a,b\r\n"a\r\nb","b,bb"\r\nzzz,yyy', ["2: a\r\nb|b,bb", "3: zzz|yyy"]],
    ["doubled quotes", 'a,b\r\n"aaa","b""bb"', ['2: aaa|b"bb']],
    ["nothing but doubled quotes", 'a,b\r\n"""",""""""', ['2: "|""']],
    ["empty fields", 'a,b\r\n,x\r\n"",y', ["2: |x", "3: |y"]],
  ])("may have %s", (_, text, rows) => {
    expect(short(read(text))).toEqual(rows);
  });

  test.each([
    ["lines that end in LF", "a,b\n1,2\n", ["2: 1|2"]],
    ["a byte order mark", "\ufeffa,b\r\n1,2\r\n", ["2: 1|2"]],
    ["a byte order mark before quotes", '\ufeff"a","b"\r\n1,2', ["2: 1|2"]],
    ["blank lines, which a spreadsheet counts", "a,b\n\n1,2\r\n\n,\n   \n3,4\n\n", ["3: 1|2", "7: 3|4"]],
    ["columns in another order", "b,a\n1,2", ["2: 2|1"]],
    ["blanks round fields", " a ,b\n 1 , 2\u00a0", ["2: 1|2"]],
    ["an inch mark that stands by itself", 'a,b\n5",12 1/2"\n2,3', ['2: 5"|12 1/2"', "3: 2|3"]],
    ["signs of any alphabet", "a,b\nå,日本 🪵", ["2: å|日本 🪵"]],
    ["no rows", "a,b\n", []],
  ])("may also have %s", (_, text, rows) => {
    expect(short(read(text))).toEqual(rows);
  });

  test("holds whatever was put into it", () => {
    const cell = fc.string({ unit: fc.constantFrom('"', ",", "\n", "\r\n", ";", "x", "é", " ", "'", "5") });
    const rows = fc.array(fc.tuple(fc.constantFrom("1", "x y"), cell));
    fc.assert(
      fc.property(rows, fc.constantFrom("\n", "\r\n"), fc.boolean(), (written, end, marked) => {
        const quoted = written.map((cells) => cells.map((text) => `"${text.replaceAll('"', '""')}"`).join(","));
        const { rows: found, issues } = read(`${marked ? "\ufeff" : ""}${["a,b", ...quoted].join(end)}${end}`);
        expect(issues).toEqual([]);
        expect(found.map(({ row, fields }) => [row, fields["a"], fields["b"]])).toEqual(
          written.map(([a, b], index) => [index + 2, a, b.trim()]),
        );
      }),
    );
  });
});

describe("what is no table", () => {
  test.each([
    ["a row of too few fields", "a,b\n1\n2,3", ["3: 2|3", "2: has 1 fields where the first row has 2"]],
    ["a row of too many", "a,b\n1,2,3\n2,3", ["3: 2|3", "2: has 3 fields where the first row has 2"]],
    [
      "a blank before a quote, after which the quote is a sign like others",
      'a,b\n1, "2,5"\n3,4',
      ["3: 3|4", "2: has 3 fields where the first row has 2"],
    ],
    ["text behind a quote, which is taken as it is", 'a,b\n"1"x,2\n3,4', ['2: "1"x|2', "3: 3|4"]],
    [
      "a quote that is never closed, and takes the rest with it",
      'a,b\n1,2\n"3,4\n5,6\n',
      ["2: 1|2", "3: cannot be read: Quote Not Closed: the parsing is finished with an opening quote at line 4"],
    ],
    ["a missing column", "a\n1", ["1 b: this column is missing"]],
    ["a strange column", "a,b,c\n1,2,3", ["1 c: this column is not known, or is there twice"]],
    ["a column that is there twice", "a,b,a\n1,2,3", ["1 a: this column is not known, or is there twice"]],
    ["nothing", "", ["1 a: this column is missing", "1 b: this column is missing"]],
  ])("is reported: %s", (_, text, found) => {
    expect(short(read(text))).toEqual(found);
  });
});
