declare const unit: unique symbol;

/** A plane angle in radians. A bare number is accepted; `Degrees` is refused by the compiler. */
export type Radians = number & { readonly [unit]?: 'rad' };

/** A plane angle in degrees. Only documents and people use it; the core computes in `Radians`. */
export type Degrees = number & { readonly [unit]?: 'deg' };

const RADIANS_PER_DEGREE = Math.PI / 180;

/** Converts degrees to radians: `toRadians(180)` is π. */
export function toRadians(angle: Degrees): Radians {
  return (angle as number) * RADIANS_PER_DEGREE;
}

/** Converts radians to degrees: `toDegrees(Math.PI)` is 180. */
export function toDegrees(angle: Radians): Degrees {
  return (angle as number) / RADIANS_PER_DEGREE;
}
