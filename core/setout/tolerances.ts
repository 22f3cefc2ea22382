/**
 * How closely wood must follow the sheet, millimetres and degrees. Our estimate, after bench practice (*common
 * practice, no source*): a tape and a sharp pencil hold 1 mm, and a knee 2 mm off moves trim by about half a millimetre.
 */
export const PLACE_TOLERANCE_MM = 2;
/** Heights are worked on the bench with a straightedge. */
export const HEIGHT_TOLERANCE_MM = 1;
/** Angles are set with a bevel, degrees. */
export const ANGLE_TOLERANCE_DEG = 1;

/** A length between two marks that are each out by no more than `PLACE_TOLERANCE_MM`: √2 × 2 mm, rounded. */
export const CHECK_TOLERANCE_MM = 3;

/** A setting within this of a hole stands on it, millimetres. */
export const ON_HOLE_MM = 0.5;
