/**
 * For an app developer: a form that plans a frame. What is typed becomes a brief; every issue goes beside the field that it is about, and a sound brief becomes a
 * drawing, lengths and the steps at the saw.
 */
import { drawPlanView } from "miterwright/drawing";
import { tryParseBrief, numberHazards, planFrame, type FramePlan } from "miterwright/frame";
import { hazardText, obstacleText, operationText } from "miterwright/words";
import { miterSaw, tableSaw } from "miterwright/saw";
import { formatters, tryParseAngle, tryParseLength, type Formats, type LengthUnit } from "miterwright/units";

/** What is wrong, and where in the brief. */
interface Issue {
  readonly path: string;
  readonly message: string;
  /** What is wrong, in one word; missing for what is no number. */
  readonly code?: string;
}

/** What the form says. */
interface Answers {
  readonly unit: LengthUnit;
  /** The brief, so far as the fields can be read. */
  readonly brief: Record<string, unknown>;
  /** What cannot be read. */
  readonly issues: readonly Issue[];
}

const form = document.querySelector("form")!;
const [unitField, sawField] = [...form.querySelectorAll("select")] as [HTMLSelectElement, HTMLSelectElement];
const inputs = [...form.querySelectorAll("input")];
const issueLines = inputs.map(({ id }) => element("p", { id: `${id}-issue`, className: "issue" }));
const status = document.getElementById("status")!;
const planPlace = document.getElementById("plan")!;

/** Makes an element with what stands in it. */
function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  properties: Partial<HTMLElementTagNameMap[K]>,
  ...content: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = Object.assign(document.createElement(name), properties);
  made.append(...content);
  return made;
}

const list = (name: "ul" | "ol", items: readonly (Node | string)[]): HTMLElement =>
  element(name, {}, ...items.map((item) => element("li", {}, item)));

/** Puts a value at its place in the brief, e.g. at `opening.contains.width`. */
function put(brief: Record<string, unknown>, path: string, value: unknown): void {
  const keys = path.split(".");
  const last = keys.pop()!;
  const holder = keys.reduce((object, key) => (object[key] ??= {}) as Record<string, unknown>, brief);
  holder[last] = value;
}

function readForm(): Answers {
  const unit = unitField.value as LengthUnit;
  const brief: Record<string, unknown> = { unit, saw: sawField.value === "table" ? tableSaw() : miterSaw() };
  const issues: Issue[] = [];
  for (const { name, dataset, value } of inputs) {
    const text = value.trim();
    const kind = text === "" ? "nothing" : dataset["kind"];
    // What is left empty stays open: `tryParseBrief` knows which fields a brief can do without.
    if (kind === "nothing") put(brief, name, undefined);
    else if (kind === "count") put(brief, name, Number(text));
    else {
      const parsed = kind === "angle" ? tryParseAngle(text) : tryParseLength(text, unit);
      put(brief, name, parsed.ok ? parsed.value : Number.NaN);
      if (!parsed.ok) issues.push({ path: name, message: parsed.error.message });
    }
  }
  return { unit, brief, issues };
}

/** An error's sentence without its field's name, what was typed and at which character, and the bounds of arithmetic: beside the field it needs none of them. */
function shorten(message: string): string {
  return message
    .replace(
      /^Expected `[^`]+` to be (.*?), got .*?(?:: at character \d+, (.*))?$/s,
      (_, wanted: string, why?: string) => (why === undefined ? `Expected ${wanted}` : `Expected ${wanted}: ${why}`),
    )
    .replace(/ \([^)]*1e100\)/, "")
    .replaceAll("`", "");
}

/** What to say of an issue beside its field. */
function wordsFor({ path, code, message }: Issue): string {
  return path === "opening" && code === "impossible"
    ? "The picture is too small for this molding: the sides would have no length at their inside."
    : `${shorten(message)}.`;
}

/** Puts every issue beside the field that it is about, or beside the first field of the group that it is about. */
function showIssues(issues: readonly Issue[]): void {
  const fieldOf = ({ path }: Issue): HTMLInputElement | undefined =>
    inputs.find(({ name }) => name === path) ?? inputs.find(({ name }) => name.startsWith(`${path}.`));
  inputs.forEach((input, index) => {
    const line = issueLines[index]!;
    const issue = issues.find((candidate) => fieldOf(candidate) === input);
    line.textContent = issue === undefined ? "" : wordsFor(issue);
    input.setAttribute("aria-invalid", String(issue !== undefined));
    if (issue === undefined) input.removeAttribute("aria-describedby");
    else input.setAttribute("aria-describedby", line.id);
  });
  const elsewhere = issues.filter((issue) => fieldOf(issue) === undefined).map(({ message }) => message);
  const names = inputs.flatMap((input) => (input.ariaInvalid === "true" ? [input.labels![0]!.textContent] : []));
  status.textContent = [`There is no plan yet. To be looked at: ${names.join("; ")}.`, ...elsewhere].join(" ");
}

/** The steps at the saw, or why there are none. */
function stepsOf({ sawing }: FramePlan, formats: Formats): HTMLElement {
  if (sawing.lay === null) {
    const reasons = sawing.lays.flatMap(({ obstacles }) =>
      obstacles.map((obstacle) => obstacleText(obstacle, { formats })),
    );
    return element("div", {}, "This saw cannot make the cut:", list("ul", [...new Set(reasons)]));
  }
  return list(
    "ol",
    sawing.operations.map((operation) => {
      const { title, lines } = operationText(operation, { formats });
      return element("div", {}, element("strong", {}, title), list("ul", lines));
    }),
  );
}

function showPlan(plan: FramePlan, unit: LengthUnit): void {
  const formats = formatters({ unit });
  const { length, angle } = formats;
  const { geometry, sawing } = plan;
  const { count, longest, shortest } = geometry.pieces[0];
  const { width, height } = geometry.overall.extent;
  const angleOf = (name: "miter" | "bevel"): string =>
    sawing.lay === null ? "none" : angle(Math.abs(sawing.lay[name]));
  const facts = [
    ["Pieces", String(count)],
    ["Longest edge of each", length(longest.length)],
    ["Shortest edge of each", length(shortest.length)],
    ["Whole frame", `${length(width)} wide, ${length(height)} high`],
    ["Miter", angleOf("miter")],
    ["Bevel", angleOf("bevel")],
  ] as const;
  status.replaceChildren(
    element(
      "dl",
      {},
      ...facts.map(([name, text]) => element("div", {}, element("dt", {}, name), element("dd", {}, text))),
    ),
  );
  planPlace.replaceChildren(
    drawPlanView(plan, { formats, width: Math.max(200, planPlace.clientWidth) }).toElement(),
    element("h3", {}, "At the saw"),
    stepsOf(plan, formats),
    element("h3", {}, "Beware"),
    list(
      "ul",
      numberHazards(plan).map(({ hazard }) => {
        const { title, sentence } = hazardText(hazard, { formats });
        return `${title}: ${sentence}`;
      }),
    ),
    element("p", {}, "The saw's manual, local codes and qualified advice come first."),
  );
}

function update(): void {
  const { unit, brief, issues } = readForm();
  const outcome = tryParseBrief(brief);
  const others = outcome.ok ? [] : outcome.issues.filter(({ path }) => !issues.some((issue) => issue.path === path));
  showIssues([...issues, ...others]);
  if (outcome.ok && issues.length === 0) showPlan(planFrame(outcome.value), unit);
  // A plan of what no longer stands in the form would be worse than none.
  else planPlace.replaceChildren();
}

let rest = 0;
inputs.forEach((input, index) => {
  input.after(issueLines[index]!);
});
form.addEventListener("submit", (event) => {
  event.preventDefault();
});
form.addEventListener("input", () => {
  // Readers of the screen hear the answer once, when typing rests.
  window.clearTimeout(rest);
  rest = window.setTimeout(update, 200);
});
update();
