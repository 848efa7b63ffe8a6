/** Names of numbers that paper has another word for. */
const LABELS: Readonly<Record<string, string>> = {
  // The lines of a saw's scale are marks on paper.
  miterGraduation: "miter mark",
  bevelGraduation: "bevel mark",
  miterMiss: "miter off by",
  bevelMiss: "bevel off by",
  slopeOff: "slope off by",
  slopeSearched: "slopes tried within",
  base: "base of the offcut",
  usual: "usual depth",
  line: "line of cut",
  crosscut: "longest cut of the saw",
  screw: "screws",
  deepest: "deepest screws",
  jointGap: "gap",
  leanAngle: "leaning by",
  above: "above the top",
  bearing: "edge at the gauge",
  retreat: "drawn back by",
  // "left 2 mm" reads as a direction.
  left: "room behind the contents",
  inside: "open inside",
  outside: "open outside",
  made: "moisture when fitted",
  pull: "pull of each half, of the weight",
};

/**
 * What to call a number of a hazard on paper.
 *
 * @param name - its name in the hazard
 * @returns words for people; of a name that is not ours its parts, in lower case
 */
export function numberLabel(name: string): string {
  if (Object.hasOwn(LABELS, name)) return LABELS[name]!;
  return name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
