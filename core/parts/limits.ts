/**
 * How far blocks may be cut to the hull and reach over the board, metres. All are estimates; each says why. Findings judge by
 * them and proposals keep them.
 */
export const PART_LIMITS = {
  /** A deeper bevel would take the wood from under the recess's side (block 16 cm wide, recess 12 cm). */
  padBevel: 0.03,
  /** A deeper bevel would take the wood from under the ball of the foot, which bears on the middle half of the rest. */
  restBevel: 0.015,
  /** Holes keep this distance from the skin: the error of a drill with a depth stop. */
  holeToSkin: 0.003,
  /** Holes keep this distance from the board's edge: a bolt's own width of board beside it. */
  holeOnBoard: 0.006,
  /** A turned pad's corners, which carry no knee, may overhang by so much: its recess stays over the board at the knee. */
  padOverhang: 0.03,
  /** A crew's, which rests partly on the hull (common practice, no source). */
  crewPadOverhang: 0.06,
  /** A quarter of a rest 12 cm wide: the foot bears on its middle half. */
  restOverhang: 0.03,
  /** A foot is rounder than the rectangle of its length and breadth. */
  footOverhang: 0.01,
  /** What planing its lower edge takes off a floorboard. */
  boardBevel: 0.003,
} as const;
