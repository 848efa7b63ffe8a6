/** Points this close to a surface, as a share of the section's size, touch it: it absorbs the rounding of a rotation. */
export const CONTACT_TOLERANCE: number = 1e-9;

/**
 * What carries a stick is at least this share of its width: on less it rocks, and what looks flat there may be one facet of a curve. Common practice, no printed
 * source.
 */
export const NARROWEST_SUPPORT: number = 0.1;
