/** The water plane z = draft − alongSlope·x − acrossSlope·y: metres and tangents. */
export interface WaterPlane {
  /** Height of the water amidships on the centreline. */
  readonly draft: number;
  /** Tangent of the trim: bow up makes the water lower forward. */
  readonly alongSlope: number;
  /** Tangent of the heel: starboard down makes the water lower to port. */
  readonly acrossSlope: number;
}
