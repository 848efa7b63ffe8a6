/** A label with a measure, a length or an angle, as a text. */
export type MeasuredLabel = (values: { readonly value: string }) => string;
