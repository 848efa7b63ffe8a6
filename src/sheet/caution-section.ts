import type { FramePlan } from "../frame/index.js";
import { element, type Content, type Markup } from "./html.js";
import { quantityText } from "../frame/quantity-text.js";
import { finely, type Words } from "./sheet-options.js";

type Caution = FramePlan["cautions"][number];

const SEVERITIES: readonly (readonly [severity: Caution["severity"], word: string])[] = [
  ["danger", "Danger"],
  ["care", "Take care"],
  ["note", "Note"],
];

const FIXED: string =
  "Saws and glass hurt people. This sheet is arithmetic, not advice: it defers to the saw's manual, to local codes for glazing and hanging, and to qualified advice. Keep guards on and hands out of the blade's path, and prove every setting on scrap before you cut good wood.";

/** Lengths below so many accepted gaps are small. */
const SMALL: number = 10;

/** The numbers that raised a caution, in the reader's units: `length 210 mm, limit 300 mm`. */
function numbersText({ numbers, kinds }: Caution, gap: number, words: Words): string {
  // What is of the size of a gap would be lost between the marks of a rule.
  const isSmall = Object.entries(numbers).every(([name, value]) => kinds[name] !== "length" || value < SMALL * gap);
  const fit = isSmall ? finely(words) : words;
  const texts = Object.entries(numbers).map(
    ([name, value]) =>
      `${name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)} ${quantityText(value, kinds[name], fit)}`,
  );
  return texts.length === 0 ? "" : ` (${texts.join(", ")})`;
}

/**
 * What to beware of: the plan's own cautions, the gravest first, and what always holds.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns the section
 */
export function cautionSection(plan: FramePlan, words: Words): Markup {
  const items: Content[] = SEVERITIES.flatMap(([severity, word]) =>
    plan.cautions
      .filter((caution) => caution.severity === severity)
      .map((caution) =>
        element(
          "li",
          element("strong", `${word}, ${caution.code}.`),
          ` ${caution.sentence}${numbersText(caution, plan.brief.gap, words)}`,
        ),
      ),
  );
  return element("section", element("h2", "Cautions"), element("p", FIXED), element("ul", ...items));
}
