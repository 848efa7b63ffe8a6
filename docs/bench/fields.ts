/** The steps of the form, in the order in which a maker thinks. */
export type Step = "units" | "inside" | "shape" | "molding" | "slope" | "saw" | "wood" | "rack" | "paper" | "dry-fit";

/** What goes in, the shape, and the units. */
export type SizeField =
  | "unit"
  | "fineness"
  | "holds"
  | "width"
  | "height"
  | "measure"
  | "size"
  | "at"
  | "allowance"
  | "clearance"
  | "fastenerRoom"
  | "sides"
  | "pose";

/** The molding and its slope. */
export type MoldingField =
  | "known"
  | "moldingWidth"
  | "thickness"
  | "rabbetWidth"
  | "rabbetDepth"
  | "milled"
  | "levelWidth"
  | "lap"
  | "depth"
  | "slope"
  | "slopeAs";

/** The saw and how it is used. */
export type SawField =
  | "saw"
  | "kerf"
  | "shows"
  | "lay"
  | "rough"
  | "roughAllowance"
  | "miterReach"
  | "bevelLeft"
  | "bevelRight"
  | "miterReads"
  | "bevelReads"
  | "scaleStep"
  | "sawDepth"
  | "crosscut"
  | "gaugeReach"
  | "acceptedGap";

/** The wood and its year, what it costs, and how the frame hangs. */
export type WoodField =
  | "species"
  | "grain"
  | "made"
  | "driest"
  | "dampest"
  | "cost"
  | "costPer"
  | "hangs"
  | "wireAngle"
  | "screwDepth"
  | "extraMass";

/** The rack, and what stands on the sheet. */
export type RackField = "frames" | "keep" | "title" | "note";

/** What is seen when the pieces are put together without glue. */
export type DryFitField = "seenGap" | "open" | "shownMiter" | "shownBevel" | "seenSlope" | "hold";

/** The fields that stand alone, by the names that links and files use. */
export type FieldName = SizeField | MoldingField | SawField | WoodField | RackField | DryFitField;

/** The lists of the form, whose rows are added and removed. */
export type ListName = "layers" | "sticks";

/** What a field takes. */
export type FieldKind =
  /** A length above zero. */
  | "length"
  /** A length that may be zero. */
  | "room"
  /** An angle in degrees. */
  | "angle"
  /** A whole number. */
  | "count"
  /** A number of any kind, such as a cost. */
  | "number"
  /** Words. */
  | "text"
  /** Words over several lines. */
  | "lines"
  /** One of some choices. */
  | "choice";

/** What a number counts. */
export type Quantity = "percent" | "kilograms" | "density" | "amount";

/** A field of the form, or a column of a list. What it says is told by the page's labels. */
export interface Field {
  /** What it takes. */
  readonly kind: FieldKind;
  /** The answers to choose from, by their names in links and files; the first one is taken where nothing is said. */
  readonly choices?: readonly string[];
  /** What its number counts, where it takes one of any kind. */
  readonly quantity?: Quantity;
  /** Whether a frame can be planned without it. */
  readonly optional?: boolean;
}

/** Where a field stands, and when it is asked. */
export interface PlacedField extends Field {
  /** The step it belongs to. */
  readonly step: Step;
  /** Whether it is one of the finer points, which are folded away. */
  readonly finer?: boolean;
  /** The answers that other fields must have for it to be asked. */
  readonly when?: Readonly<Partial<Record<FieldName, readonly string[]>>>;
  /** The field under whose answers it may say something else. */
  readonly otherwiseBy?: FieldName;
}

/** The state of a field that stands alone: as typed, or a choice's value. */
export type Values = Readonly<Record<FieldName, string>>;

/**
 * Whether a field is asked.
 *
 * @param field - the field
 * @param values - the answers so far
 * @returns true when all it depends on is so
 */
export function isAsked(field: PlacedField, values: Values): boolean {
  return Object.entries(field.when ?? {}).every(([name, answers]) => answers.includes(values[name as FieldName]));
}
