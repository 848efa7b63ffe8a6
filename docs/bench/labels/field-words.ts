import type {
  DryFitField,
  FieldName,
  ListName,
  MoldingField,
  RackField,
  SawField,
  SizeField,
  WoodField,
} from "../fields.js";

/** What a field says. */
export interface FieldWords {
  /** What the page calls it. */
  readonly label: string;
  /** What it means, in a sentence or two that stand under it. */
  readonly explain: string;
  /** What is taken where it is left empty, shown in the empty field. */
  readonly placeholder?: string;
  /** What its answers are called, by their names in links and files. */
  readonly choices?: Readonly<Record<string, string>>;
  /** What it says instead under some answers of the field that it depends on. */
  readonly otherwise?: Readonly<Record<string, Pick<FieldWords, "explain" | "placeholder">>>;
}

/** What the fields of a part of the form say. */
export type SizeWords = Readonly<Record<SizeField, FieldWords>>;
/** What the fields of the molding say. */
export type MoldingWords = Readonly<Record<MoldingField, FieldWords>>;
/** What the fields of the saw say. */
export type SawFieldWords = Readonly<Record<SawField, FieldWords>>;
/** What the fields of the wood say. */
export type WoodWords = Readonly<Record<WoodField, FieldWords>>;
/** What the fields of the rack and the sheet say. */
export type RackFieldWords = Readonly<Record<RackField, FieldWords>>;
/** What the fields of the dry fit say. */
export type DryFitFieldWords = Readonly<Record<DryFitField, FieldWords>>;
/** What all fields that stand alone say. */
export type AllFieldWords = Readonly<Record<FieldName, FieldWords>>;

/** What a list of the form says. */
export interface ListWords {
  /** Its heading. */
  readonly heading: string;
  /** The button that adds a row. */
  readonly add: string;
  /** What a row is called; rows are counted from 1. */
  readonly row: (values: { readonly number: number }) => string;
  /** The button that removes a row. */
  readonly remove: (values: { readonly number: number }) => string;
  /** A column of a row, by its label, for a button that leads there. */
  readonly cell: (values: { readonly label: string; readonly number: number }) => string;
  /** The name of an entry that was given none; `isOnly` where there is no other. */
  readonly unnamed: (values: { readonly number: number; readonly isOnly: boolean }) => string;
  /** What its columns say. */
  readonly columns: Readonly<Record<string, FieldWords>>;
}

/** What the lists of the form say. */
export type AllListWords = Readonly<Record<ListName, ListWords>>;
