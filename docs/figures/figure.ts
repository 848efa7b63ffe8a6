import type { Reader } from "./reader.js";

/** A value that is changed by a slider and a field: a whole number, a length in millimeters, degrees, or a plain factor. */
export interface Amount {
  readonly kind: "count" | "length" | "angle" | "factor";
  readonly label: string;
  readonly min: number;
  readonly max: number;
  /** The step of the slider; the field takes anything between the bounds, a count only whole numbers. */
  readonly step: number;
  readonly value: number;
}

/** A value that is chosen by name. */
export interface Choice<W extends string = string> {
  readonly kind: "choice";
  readonly label: string;
  /** The names, and how a menu shows them. */
  readonly words: { readonly [K in W]: string };
  readonly value: NoInfer<W>;
}

export type Control = Amount | Choice;
export type Controls = Readonly<Record<string, Control>>;

/** What the controls of a figure stand at. */
export type ValuesOf<C extends Controls> = {
  readonly [K in keyof C]: C[K] extends Choice<infer W> ? W : number;
};
export type Values = Readonly<Record<string, number | string>>;

/** What a figure shows for some values. */
export interface Picture {
  /** An SVG document of the figure's size, with title and description. */
  readonly svg: string;
  /** The numbers that go with it, each with its name: the same names for all values, so that the page keeps its shape. */
  readonly facts: readonly (readonly [name: string, text: string])[];
  /** What the library says about it in sentences, if anything; as many for all values. */
  readonly says?: readonly string[];
}

/** A figure of the guides. */
export interface Figure {
  /** Its name in `data-figure`. */
  readonly name: string;
  /** What its controls are for, e.g. "Change the polygon". */
  readonly legend: string;
  /** Size of its pictures, in their own units, of which letters are 12.5 high. */
  readonly size: { readonly width: number; readonly height: number };
  readonly controls: Controls;
  /** Whether it writes or asks for any length, so that the reader's unit matters; default true. */
  readonly hasLengths?: boolean;
  readonly draw: (values: Values, reader: Reader) => Picture;
}

/** A figure whose values have the types of its controls. */
export interface FigureOf<C extends Controls> extends Omit<Figure, "controls" | "draw"> {
  readonly controls: C;
  readonly draw: (values: ValuesOf<C>, reader: Reader) => Picture;
}

/**
 * Forgets which controls a figure has, so that figures can stand in one list.
 *
 * Values only come from {@link valuesFrom} and the figure's own controls, which see to their types.
 */
export function defineFigure<const C extends Controls>(figure: FigureOf<C>): Figure {
  return { ...figure, draw: (values, reader) => figure.draw(values as ValuesOf<C>, reader) };
}

export function count(label: string, value: number, min: number, max: number): Amount {
  return { kind: "count", label, value, min, max, step: 1 };
}

export function length(label: string, value: number, min: number, max: number, step: number = 1): Amount {
  return { kind: "length", label, value, min, max, step };
}

export function angle(label: string, value: number, min: number, max: number, step: number = 1): Amount {
  return { kind: "angle", label, value, min, max, step };
}

export function factor(label: string, value: number, min: number, max: number, step: number = 1): Amount {
  return { kind: "factor", label, value, min, max, step };
}

export function choice<const W extends string>(
  label: string,
  value: NoInfer<W>,
  words: { readonly [K in W]: string },
): Choice<W> {
  return { kind: "choice", label, value, words };
}

/** The sides of a frame, as every figure asks for them. */
export function sides(value: number, max: number = 16): Amount {
  return count("Sides", value, 3, max);
}

/**
 * The values that a figure starts with: those of its controls, unless the page gives others as `data-sides="9"`.
 *
 * @param figure - the figure
 * @param given - the page's texts, by name
 * @returns the values
 * @throws {RangeError} when a name is not one of the figure's controls, or a value not one that it can have
 */
export function valuesFrom(figure: Figure, given: Readonly<Record<string, string | undefined>> = {}): Values {
  for (const name of Object.keys(given)) {
    if (!Object.hasOwn(figure.controls, name)) throw new RangeError(`figure ${figure.name} has no control "${name}"`);
  }
  return Object.fromEntries(
    Object.entries(figure.controls).map(([name, control]) => {
      const text = given[name];
      if (text === undefined) return [name, control.value];
      const value = control.kind === "choice" ? text : Number(text);
      if (!isAllowed(control, value)) throw new RangeError(`figure ${figure.name} takes no ${name} of "${text}"`);
      return [name, value];
    }),
  );
}

/** Whether a control can stand at a value. */
export function isAllowed(control: Control, value: number | string): boolean {
  if (control.kind === "choice") return Object.hasOwn(control.words, value);
  if (typeof value !== "number" || !(value >= control.min && value <= control.max)) return false;
  return control.kind !== "count" || Number.isInteger(value);
}
