/*
 * Makes the figures of a page live: adds the controls, and redraws through the library as they change. Bundled with figures and the
 * library into classic scripts, of which TypeDoc puts one into every page.
 */
import { buildNodes, type ElementMaker } from "../../src/drawing/build-element.js";
import type { Catalog } from "./catalog.js";
import { isAllowed, type Amount, type Choice, type Control } from "./figure.js";
import { factsMarkup, figureFor, saysMarkup, type PlacedFigure } from "./place.js";
import { READERS, readerOf, type Reader, type ReaderName } from "./reader.js";

/** How long nothing must have changed before a screen reader is told the new numbers, in milliseconds. */
const PAUSE = 700;

/** The unit that the reader chose, for all figures of the page. It is forgotten when the page is left. */
let reader: Reader = readerOf("mm");
const onReader: (() => void)[] = [];
let lastId = 0;

function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  attributes: Readonly<Record<string, string>> = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  made.append(...children);
  return made;
}

/** Makes an element hold markup of ours, without the parser of HTML, which a page's policy may forbid. */
function fillWith(place: Element, markup: string): void {
  place.replaceChildren(...(buildNodes(markup, document as unknown as ElementMaker) as Node[]));
}

function newId(): string {
  lastId += 1;
  return `figure-control-${lastId}`;
}

/** The words for a value in the reader's unit. */
function write({ kind }: Amount, value: number): string {
  if (kind === "length") return reader.length(value);
  if (kind === "angle") return reader.angle(value);
  return String(Number(value.toPrecision(6)));
}

/** The value that was typed. */
function read({ kind }: Amount, text: string): number {
  if (kind === "length") return reader.readLength(text);
  if (kind === "angle") return reader.readAngle(text);
  const value = Number(text);
  if (text.trim() === "" || Number.isNaN(value)) throw new RangeError("Expected a number");
  return value;
}

/** A control in the page, and how its value is set from outside. */
interface Live {
  readonly row: HTMLElement;
  readonly show: (value: number | string) => void;
}

type Change = (value: number | string) => void;

function choiceRow(control: Choice, change: Change): Live {
  const id = newId();
  const select = element("select", { id });
  for (const [word, label] of Object.entries(control.words)) select.append(element("option", { value: word }, label));
  select.addEventListener("change", () => {
    change(select.value);
  });
  return {
    row: element("div", { class: "figure-row" }, element("label", { for: id }, control.label), select),
    show: (value) => {
      select.value = String(value);
    },
  };
}

function amountRow(control: Amount, change: Change): Live {
  const id = newId();
  const problem = element("span", { id: `${id}-problem`, class: "figure-problem", role: "alert" });
  const range = element("input", {
    id,
    type: "range",
    min: String(control.min),
    max: String(control.max),
    step: String(control.step),
  });
  const field = element("input", {
    type: "text",
    inputmode: control.kind === "count" ? "numeric" : "text",
    autocomplete: "off",
    spellcheck: "false",
    "aria-label": `${control.label}, typed`,
    "aria-describedby": problem.id,
  });
  let current = control.value;
  const show = (value: number | string): void => {
    current = Number(value);
    range.value = String(current);
    const words = write(control, current);
    range.setAttribute("aria-valuetext", words);
    field.value = words;
    field.removeAttribute("aria-invalid");
    problem.textContent = "";
  };
  range.addEventListener("input", () => {
    change(Number(range.value));
  });
  const typed = (): void => {
    // Only what was really changed: the words may be shorter than the value.
    if (field.value === write(control, current)) {
      show(current);
      return;
    }
    let value: number;
    try {
      value = read(control, field.value);
    } catch (error) {
      refuse(error instanceof Error ? error.message.replace(/^Expected `text` to be/, "Expected") : String(error));
      return;
    }
    if (isAllowed(control, value)) change(value);
    else {
      const whole = control.kind === "count" ? "a whole number " : "";
      refuse(`Expected ${whole}from ${write(control, control.min)} to ${write(control, control.max)}`);
    }
  };
  const refuse = (message: string): void => {
    field.setAttribute("aria-invalid", "true");
    problem.textContent = message;
  };
  field.addEventListener("change", typed);
  field.addEventListener("keydown", (event) => {
    if (event.key === "Enter") {
      event.preventDefault();
      typed();
    }
    if (event.key === "Escape") show(current);
  });
  const label = element("label", { for: id }, control.label);
  return { row: element("div", { class: "figure-row" }, label, range, field, problem), show };
}

function rowFor(control: Control, change: Change): Live {
  return control.kind === "choice" ? choiceRow(control, change) : amountRow(control, change);
}

/** The choice of units, which all figures of the page share. */
function readerRow(): Live {
  const control: Choice<ReaderName> = { kind: "choice", label: "Units", words: READERS, value: "mm" };
  return choiceRow(control, (name) => {
    reader = readerOf(name as ReaderName);
    for (const tell of onReader) tell();
  });
}

/** Makes one figure live. */
function enliven(holder: HTMLElement, { figure, values: start }: PlacedFigure): void {
  const picture = holder.querySelector(".figure-picture");
  const facts = holder.querySelector(".figure-facts");
  const says = holder.querySelector(".figure-says");
  if (picture === null || facts === null) return;
  let values = start;
  const spoken = element("p", { class: "figure-spoken", "aria-live": "polite", "aria-atomic": "true" });
  let waiting = 0;

  const rows = new Map<string, Live>();
  const units = readerRow();
  const redraw = (speak: boolean): void => {
    const drawn = figure.draw(values, reader);
    fillWith(picture, drawn.svg);
    fillWith(facts, factsMarkup(drawn.facts));
    if (says !== null) fillWith(says, saysMarkup(drawn.says ?? []));
    for (const [name, row] of rows) row.show(values[name]!);
    units.show(reader.name);
    window.clearTimeout(waiting);
    if (!speak) return;
    waiting = window.setTimeout(() => {
      const facts = drawn.facts.map(([name, text]) => `${name}: ${text}`).join("; ");
      spoken.textContent = [facts, ...(drawn.says ?? [])].join(". ");
    }, PAUSE);
  };
  for (const [name, control] of Object.entries(figure.controls)) {
    rows.set(
      name,
      rowFor(control, (value) => {
        values = { ...values, [name]: value };
        redraw(true);
      }),
    );
  }
  const again = element("button", { type: "button" }, "As it was");
  again.addEventListener("click", () => {
    values = start;
    redraw(true);
  });
  const fieldset = element(
    "fieldset",
    { class: "figure-controls" },
    element("legend", {}, figure.legend),
    ...[...rows.values()].map(({ row }) => row),
    ...(figure.hasLengths === false ? [] : [units.row]),
    element("div", { class: "figure-row" }, again),
  );
  (says ?? facts).after(fieldset, spoken);
  onReader.push(() => {
    redraw(false);
  });
  redraw(false);
}

/**
 * Makes figures of the page live as soon as the page is there.
 *
 * @param catalog - the figures that are meant; others are left to other scripts
 */
export function enlivenAll(catalog: Catalog): void {
  const start = (): void => {
    for (const holder of document.querySelectorAll<HTMLElement>("figure[data-figure]")) {
      if (!catalog.has(holder.dataset["figure"]!)) continue;
      enliven(holder, figureFor(Object.fromEntries(Object.entries(holder.dataset)), catalog));
    }
  };
  if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", start);
  else start();
}
