/** Points this close to a surface, as a share of the section's size, touch it: it absorbs the rounding of a rotation. */
export const CONTACT_TOLERANCE: number = 1e-9;
