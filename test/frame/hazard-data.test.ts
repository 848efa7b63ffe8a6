import { expect, test } from "vitest";
import ts from "typescript";
import { planFrame, type ContentsLayer, type FrameBrief } from "miterwright/frame";
import { listFiles, readProjectFile } from "../house/project.js";
import { rabbeted } from "./briefs.js";
import { HAZARD_CASES } from "./hazard-cases.js";

/** The texts that a file holds, by the pieces of a template, but for the names of the files that it imports. */
function textsOf(source: string): string[] {
  const texts: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return;
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node))
      texts.push(node.text);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile("rule.ts", source, ts.ScriptTarget.ES2022, true));
  return texts;
}

/** The texts with more than one word that are no part of a hazard's source. */
function spoken(texts: readonly string[], sources: readonly string[]): string[] {
  return texts.filter((text) => /\S\s+\S/.test(text) && !sources.some((source) => source.includes(text)));
}

/** A layer of each material whose movement has a source of its own. */
const LAYERS: readonly ContentsLayer[] = [
  { name: "pane", thickness: 2, material: "glass" },
  { name: "sheet", thickness: 2, material: "acrylic" },
  { name: "panel", thickness: 6, material: { species: { radial: 4, tangential: 8 } } },
];
/** A frame that leaves a layer too little room. */
const SQUEEZED: readonly FrameBrief[] = LAYERS.map((layer) => ({
  sides: 4,
  profile: rabbeted,
  opening: { side: 4000 },
  clearance: 0,
  contents: [layer],
}));

const SOURCES = [...Object.values(HAZARD_CASES).flatMap(({ raises }) => raises), ...SQUEEZED].flatMap((brief) =>
  planFrame(brief).hazards.map(({ source }) => source),
);

test("the rules hold no text for people but the names of sources", () => {
  const texts = listFiles("src/frame/hazards", ".ts").flatMap((file) => textsOf(readProjectFile(file)));
  expect(texts.length).toBeGreaterThan(80);
  expect(spoken(texts, SOURCES)).toEqual([]);
});

test("a text for people among the rules is found, in part as well", () => {
  const rule =
    'raise("tip", "warning", [], { why: `The stick tips at ${where}, so clamp it.`, source: "common practice" })';
  expect(spoken(textsOf(rule), SOURCES)).toEqual(["The stick tips at ", ", so clamp it."]);
});
