import { describe, expect, test } from "vitest";
import { listFiles, readProjectFile } from "./project.js";
import { findTexts } from "./texts-below-words.js";

/** Modules below `words` that compute what people read about. */
const BELOW = ["polygon", "miter", "profile", "wood", "panel", "closure", "saw", "frame"];

/** Author, title and page of a printed rule, in the words of the print. */
const PRINTED = "where a rule is printed, which a hazard carries as its source";
/** Texts that stay where they are, and why. */
const STAYING: Readonly<Record<string, string>> = {
  "src/profile/about.ts": "a length within the error texts of other files",
  "src/frame/hazards/hazard-rule.ts": "the code of common practice",
  "src/frame/hazards/movement-hazards.ts": PRINTED,
  "src/frame/hazards/panel-hazards.ts": PRINTED,
  "src/frame/hazards/seating-hazards.ts": PRINTED,
};

const found = BELOW.flatMap((module) => listFiles(`src/${module}`, ".ts")).map((file) => ({
  file,
  texts: findTexts(file, readProjectFile(file)),
}));
const withTexts = found.filter(({ texts }) => texts.length > 0).map(({ file }) => file);

describe("below words", () => {
  test("stands no text for people but errors and what is listed", () => {
    const unlisted = found.filter(({ file }) => !Object.hasOwn(STAYING, file));
    expect(unlisted.flatMap(({ file, texts }) => texts.map(({ line, text }) => `${file}:${line}: ${text}`))).toEqual(
      [],
    );
  });

  test("every file that is listed has such a text", () => {
    const listed = Object.keys(STAYING);
    expect(listed.filter((file) => !withTexts.includes(file))).toEqual([]);
    expect(new Set(listed).size).toBe(listed.length);
  });
});

describe("the finder", () => {
  const textsOf = (code: string): string[] => findTexts("some.ts", code).map(({ text }) => text);

  test.each<[string, string[]]>([
    ['export const a = "Cut both ends.";', ["Cut both ends."]],
    ["export const a = `Cut both ends.`;", ["Cut both ends."]],
    ["export const a = (n: number) => `Cut ${n} pieces.`;", ["Cut … pieces."]],
    ["export const a = (n: number) => ({ sentence: `${n} ends`, code: 'two-ends' });", ["… ends"]],
    ['export const a = ok ? "Leave it." : "Trim: twice.";', ["Leave it.", "Trim: twice."]],
    ['checks.push({ words: "gap of the joint" });', ["gap of the joint"]],
    ['const say = () => "It is flat."; export const a = say();', ["It is flat."]],
    // What is refused is no part of the error's text.
    [
      'const plan = { words: "Trim both halves." }; refuse("range", "plan", plan, "a plan of today");',
      ["Trim both halves."],
    ],
  ])("finds the texts of %s", (code, texts) => {
    expect(textsOf(code)).toEqual(texts);
  });

  test.each([
    'import { a } from "./a b.js";',
    'export * from "./two words.js";',
    'export type A = "two words" | "three short words";',
    'export const a = { "black cherry": 1 };',
    'export const a = "sight-edge";',
    "export const a = (x: number) => `pieces[${x}].start`;",
    "export const a = (x: number, y: number) => `${x} ${y}`;",
    'refuse("range", "sides", 2, "an integer of 3 or more");',
    'checkNumber(x, "turn", 0, 1, wide ? "a wide turn" : "a small turn");',
    'throw new InputError({ message: "Expected two sides" });',
    'issues.push({ message: "Expected two sides", expected: { clause: "two sides" } });',
    'const message = "Expected two sides"; reject("range", "sides", 2, message);',
    'function f() { const what = ok ? "two sides" : "one side"; const message = `Expected ${what}`; return { message }; }',
    'const BOUNDS = { sides: [3, "an integer of 3 or more"] }; const f = () => { const [least, what] = BOUNDS.sides; checkNumber(2, "sides", least, 9, what); };',
    'function hint() { return "see the guide"; } reject("range", "sides", 2, `Expected sides; ${hint()}`);',
    'assertSound(false, "step 1 reaches every side");',
  ])("passes %s", (code) => {
    expect(textsOf(code)).toEqual([]);
  });

  test("gives the line of a text", () => {
    expect(findTexts("some.ts", '\n\nexport const a = "Cut both ends.";')).toEqual([
      { line: 3, text: "Cut both ends." },
    ]);
  });
});
