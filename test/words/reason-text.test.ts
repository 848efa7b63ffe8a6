import { describe, expect, test } from "vitest";
import { closingPiece, type ClosingReason, type MeasuredPiece } from "miterwright/closure";
import { planFrame, type ContentsReason } from "miterwright/frame";
import { reasonText, english, type Reason, type Words } from "miterwright/words";
import { plain, rabbeted } from "../frame/briefs.js";

const cut = (miter: number): MeasuredPiece["start"] => ({ miter, bevel: 0 });

describe("the reason of", () => {
  const contentsOf = (slope: number): ContentsReason | null =>
    planFrame({ sides: 6, slope, profile: rabbeted, opening: { side: 300 } }).contents.reason;

  test.each<[number, string]>([
    [70, "The rabbet is too shallow: at this slope its wall ends before it reaches the front of level contents."],
    [-70, "The rabbet is too narrow: contents small enough to go in would fall through the sight opening."],
    [90, "The frame is too steep: at this slope the rabbet's ledge and wall no longer face level contents."],
  ])("contents that a rabbet at %d degrees cannot hold", (slope, sentence) => {
    expect(reasonText(contentsOf(slope)!)).toBe(sentence);
  });

  test("contents of which the clearance leaves nothing", () => {
    const { contents } = planFrame({ sides: 4, profile: plain, opening: { side: 40 }, clearance: 40 });
    expect(reasonText(contents.reason!)).toBe("The clearance leaves nothing of the opening.");
  });

  test("a ring that no piece closes", () => {
    const piece = (start: number, end: number): MeasuredPiece => ({ length: 100, start: cut(start), end: cut(end) });
    const none = closingPiece({ pieces: [piece(-80, 0), piece(0, -80)], at: 0, width: 20 });
    expect(none.possible ? "" : reasonText(none.reason)).toBe(
      "The two open ends do not look toward each other: no piece can lie between them.",
    );
    const noRoom: ClosingReason = "no-room";
    expect(reasonText(noRoom)).toBe("The two open ends lie on each other and leave no room for a piece.");
  });
});

test("other words are taken for every reason", () => {
  const codes = Object.keys(english.reasons) as Reason[];
  const reasons = Object.fromEntries(codes.map((code) => [code, () => `<${code}>`])) as unknown as Words["reasons"];
  const words: Words = { ...english, reasons };
  for (const code of codes) expect(reasonText(code, { words })).toBe(`<${code}>`);
});

test("malformed input is refused", () => {
  expect(() => reasonText("toString" as never)).toThrow("Expected `reason` to be one of");
  expect(() => reasonText(7 as never)).toThrow("Expected `reason` to be one of");
  expect(() => reasonText("no-room", 7 as never)).toThrow("Expected `options` to be an object, got 7 (number)");
});
