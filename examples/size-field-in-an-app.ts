/**
 * For an app developer: a form's fields become a brief, every issue goes beside its field, and a sound brief becomes the numbers to show.
 */
import { formatLength, planFrame, tryParseBrief, tryParseLength } from "miterwright";

/** What the form holds, as typed. */
interface Fields {
  readonly sides: string;
  readonly slope: string;
  readonly levelWidth: string;
  readonly lap: string;
  readonly pictureWidth: string;
  readonly pictureHeight: string;
}

/** A length as typed, in inches; text that is none becomes NaN, which `tryParseBrief` then refuses in its own place. */
function inches(text: string): number {
  const parsed = tryParseLength(text, "in");
  return parsed.ok ? parsed.value : Number.NaN;
}

function briefFrom(fields: Fields): unknown {
  return {
    unit: "in",
    sides: Number(fields.sides),
    slope: Number(fields.slope),
    measured: { levelWidth: inches(fields.levelWidth), lap: inches(fields.lap) },
    opening: { contains: { width: inches(fields.pictureWidth), height: inches(fields.pictureHeight) } },
    clearance: 1 / 16,
  };
}

function answer(fields: Fields): string {
  const outcome = tryParseBrief(briefFrom(fields));
  if (!outcome.ok) return outcome.issues.map((issue) => `${issue.path}: ${issue.message}`).join("\n");
  const { geometry } = planFrame(outcome.value);
  const show = (value: number): string => formatLength(value, "in", { style: "fraction", denominator: 32 });
  const { longest } = geometry.pieces[0];
  return `${geometry.sides} pieces of ${show(longest.length)}, the frame ${show(geometry.overall.extent.width)} wide and ${show(geometry.overall.extent.height)} high`;
}

const fields: Fields = {
  sides: "5",
  slope: "20",
  levelWidth: "1 3/8",
  lap: '1/4"',
  pictureWidth: `9 1/2"`,
  pictureHeight: "7 in",
};
console.log(answer(fields));
console.log(answer({ ...fields, sides: "two", pictureHeight: "7 in in" }));
