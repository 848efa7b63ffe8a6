import type { HazardSignal } from "../core/hazard.js";
import type { FigureBlock } from "../drawing/index.js";
import type { OperationKind } from "../frame/index.js";
import type { SectionName } from "../words/index.js";
import type { TableData } from "./tables/table-data.js";

/** A name and what it stands for. */
export interface Fact {
  /** The name. */
  readonly name: string;
  /** What it stands for. */
  readonly value: string;
}

/** Names and what they stand for. */
export interface FactsBlock {
  /** What kind of block it is. */
  readonly kind: "facts";
  /** Its name within its section. */
  readonly name: string;
  /** The facts in order. */
  readonly facts: readonly Fact[];
}

/** A table: caption, columns, and cells as they are written. */
export interface TableBlock extends TableData {
  /** What kind of block it is. */
  readonly kind: "table";
  /** Its name within its section. */
  readonly name: string;
}

/** Sentences. */
export interface ListBlock {
  /** What kind of block it is. */
  readonly kind: "list";
  /** Its name within its section. */
  readonly name: string;
  /** What stands before every item: nothing, so that each is a paragraph, a bullet, or its number from 1. */
  readonly marker: "none" | "bullet" | "number";
  /** Whether it must not be overlooked. */
  readonly isStrong: boolean;
  /** The items in order. */
  readonly items: readonly string[];
}

/** A step at the saw. */
export interface Step {
  /** Its number, from 1. */
  readonly step: number;
  /** What is cut. */
  readonly kind: OperationKind;
  /** What is done, and how many times. */
  readonly title: string;
  /** Numbers of the hazards that concern it. */
  readonly hazards: readonly number[];
  /** That in a sentence; `null` where none concerns it. */
  readonly heed: string | null;
  /** What is set: miter, bevel, and the length where one is cut. */
  readonly settings: readonly Fact[];
  /** Sentences in the order in which they are followed. */
  readonly lines: readonly string[];
  /** What it looks like. */
  readonly figures: readonly FigureBlock[];
}

/** The steps at the saw, in shop order. */
export interface StepsBlock {
  /** What kind of block it is. */
  readonly kind: "steps";
  /** Its name within its section. */
  readonly name: string;
  /** The steps. */
  readonly steps: readonly Step[];
}

/** A hazard, in words. */
export interface ToldHazard {
  /** Its number, from 1, by which steps name it. */
  readonly number: number;
  /** How grave it is. */
  readonly signal: HazardSignal;
  /** Its signal word. */
  readonly title: string;
  /** What to heed. */
  readonly sentence: string;
  /** The numbers that raised it, and where the rule is printed; empty where there is neither. */
  readonly behind: string;
}

/** What to heed, the gravest first. */
export interface HazardsBlock {
  /** What kind of block it is. */
  readonly kind: "hazards";
  /** Its name within its section. */
  readonly name: string;
  /** The hazards. */
  readonly hazards: readonly ToldHazard[];
}

/** A part of a section. */
export type Block = FactsBlock | TableBlock | ListBlock | StepsBlock | HazardsBlock | FigureBlock;

/** A part of a report that has a heading. */
export interface ReportSection {
  /** What it is about. */
  readonly name: SectionName;
  /** Its heading. */
  readonly title: string;
  /** Its blocks in order. */
  readonly blocks: readonly Block[];
}

/** Something told in order, as plain data: what writes it as a page, a sheet or a notebook only lays it out. */
export interface Report {
  /** What it tells of. */
  readonly title: string;
  /** Its sections in order; none of them is empty. */
  readonly sections: readonly ReportSection[];
}
