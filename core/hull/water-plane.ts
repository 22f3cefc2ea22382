/** The water plane z = draft − alongSlope·x − acrossSlope·y: metres and tangents. */
export interface WaterPlane {
  readonly draft: number;
  readonly alongSlope: number;
  readonly acrossSlope: number;
}
