import { describe, expect, test } from "vitest";
import { drawStock } from "miterwright/drawing";
import { InputError } from "miterwright/errors";
import { planFrame } from "miterwright/frame";
import { tabulateLengths } from "miterwright/report";
import { shopSheet } from "miterwright/sheet";
import { fitStock } from "miterwright/stock";
import type { Formats } from "miterwright/units";
import { hangingLines, hazardText, layLabel, layLines, movementLines, operationText } from "miterwright/words";
import { formatsWith } from "../formats.js";
import { plain } from "../frame/briefs.js";

const plan = planFrame({
  sides: 6,
  opening: { side: 200 },
  profile: plain,
  species: "white oak",
  hanging: { by: "wire" },
  sticks: [{ id: "oak", length: 2400 }],
});
const fit = fitStock(plan.stockJobs[0]!);

/** What tells of a plan with numbers, each from another module or part of one. */
const TELLERS: Readonly<Record<string, (options: { formats: Formats }) => unknown>> = {
  hazardText: (options) => hazardText(plan.hazards[0]!, options),
  operationText: (options) => operationText(plan.sawing.operations[0]!, options),
  layLines: (options) => layLines(plan.sawing.lay!, options),
  layLabel: (options) => layLabel(12.5, options),
  movementLines: (options) => movementLines(plan, options),
  hangingLines: (options) => hangingLines(plan, options),
  tabulateLengths: (options) => tabulateLengths(plan, options),
  drawStock: (options) => drawStock(plan.stockJobs[0]!, fit, options),
  shopSheet: (options) => shopSheet(plan, options),
};

/** What each formatter writes, as errors say. */
const WRITTEN: Readonly<Record<keyof Formats, string>> = {
  length: "a length",
  small: "a small length",
  angle: "an angle",
  smallAngle: "a small angle",
  mass: "a mass",
  force: "a force",
  percent: "a share in percent",
  temperature: "a temperature",
  area: "an area",
  number: "a number",
  money: "an amount of money",
};

/** What is thrown, which must be the library's error. */
function refusal(run: () => unknown): Pick<InputError, "code" | "path" | "message"> {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return { code: error.code, path: error.path, message: error.message };
    throw error;
  }
  throw new Error("nothing was refused");
}

describe.each(Object.entries(TELLERS))("%s", (_, tell) => {
  test.each(Object.entries(WRITTEN))("refuses formats without a sound `%s`, which writes %s", (name, what) => {
    const path = `formats.${name}`;
    const expected = `Expected \`${path}\` to be a function that writes ${what} as text`;
    expect(refusal(() => tell({ formats: formatsWith({ [name]: undefined }) }))).toEqual({
      code: "missing",
      path,
      message: `${expected}, got undefined`,
    });
    expect(refusal(() => tell({ formats: formatsWith({ [name]: "0.0" as never }) }))).toEqual({
      code: "type",
      path,
      message: `${expected}, got "0.0" (string)`,
    });
  });

  test("refuses formats that are none", () => {
    expect(refusal(() => tell({ formats: 5 as never }))).toEqual({
      code: "type",
      path: "formats",
      message: "Expected `formats` to be an object, got 5 (number)",
    });
  });
});

test("a formatter that writes no text is refused when it is used", () => {
  const formats = formatsWith({ angle: (degrees) => degrees as never });
  expect(refusal(() => layLabel(12, { formats }))).toEqual({
    code: "type",
    path: "formats.angle",
    message:
      "Expected `formats.angle` to be a function that writes an angle as text, but its result was not one, got 12 (number)",
  });
  expect(layLabel("flat", { formats })).toBe("flat on its back");
});

test("what a formatter writes stays on one line", () => {
  const formats = formatsWith({ angle: (degrees) => `${degrees} deg 0 min` });
  expect(layLabel(12, { formats })).toBe("rolled by 12\u00a0deg\u00a00\u00a0min");
});

test("words that are no catalog are refused", () => {
  expect(refusal(() => layLabel("flat", { formats: formatsWith(), words: "en" as never }))).toEqual({
    code: "type",
    path: "words",
    message: 'Expected `words` to be an object, got "en" (string)',
  });
});
