import type { Quantity, Unit } from './finding.ts';

/** Source of a value: set or given, practice, an estimate, or a part of the model. */
export type QuantitySource =
  | 'as-set'
  | 'as-set-usual'
  | 'as-given'
  | 'practice'
  | 'estimate'
  | 'stance'
  | 'statics'
  | 'hydrostatics'
  | 'masses'
  | 'small-heel';

/** What a quantity is: its unit, whether it belongs to a seat or the boat, and its source. */
export interface QuantityDefinition {
  /** SI; it decides how the value is written. */
  readonly unit: Unit;
  /** Whose value it is. */
  readonly scope: 'seat' | 'boat';
  /** Source of the value, in words by the message `source.…`. The message `quantity.….how` says how it is computed. */
  readonly source: QuantitySource;
  /** Smallest change worth showing, in the unit. */
  readonly step: number;
  /** Lengths are written in centimetres; those that are small and read finely, in millimetres. */
  readonly inMillimetres?: true;
}

/** One degree, radians. */
const degree = Math.PI / 180;

/** A value of each seat. */
const seat = (unit: Unit, step: number, source: QuantitySource): QuantityDefinition => ({
  unit,
  scope: 'seat',
  source,
  step,
});
/** A value of the whole boat. */
const boat = (unit: Unit, step: number, source: QuantitySource): QuantityDefinition => ({
  unit,
  scope: 'boat',
  source,
  step,
});
/** The same, written in millimetres. */
const fine = (definition: QuantityDefinition): QuantityDefinition => ({ ...definition, inMillimetres: true });

/** Every quantity of a report by its id. The drawing, the table, findings and `evaluate` all use these. */
export const QUANTITIES = {
  padAft: seat('m', 1e-3, 'as-set'),
  padFromMid: seat('m', 1e-3, 'as-set'),
  padOut: seat('m', 1e-3, 'as-set'),
  padHeight: seat('m', 1e-3, 'as-set'),
  recessTurn: seat('rad', degree, 'as-set'),
  recessDepth: seat('m', 1e-3, 'as-set'),
  restAft: seat('m', 1e-3, 'as-set'),
  restTurn: seat('rad', degree, 'as-set'),
  frontHeelForward: seat('m', 1e-3, 'as-set'),
  frontKnee: seat('rad', degree, 'stance'),
  kneelingKnee: seat('rad', degree, 'stance'),
  kneelingHip: seat('rad', degree, 'stance'),
  frontHip: seat('rad', degree, 'stance'),
  rearAnkle: seat('rad', degree, 'stance'),
  frontAnkle: seat('rad', degree, 'stance'),
  trunkPitch: seat('rad', degree, 'stance'),
  trunkRoll: seat('rad', degree, 'stance'),
  strokeLean: seat('rad', degree, 'as-set-usual'),
  pelvisYaw: seat('rad', degree, 'stance'),
  thighPitch: seat('rad', degree, 'stance'),
  hipFlexorStretch: seat('rad', degree, 'stance'),
  kneeShare: seat('1', 0.01, 'statics'),
  rearShare: seat('1', 0.01, 'statics'),
  frontShare: seat('1', 0.01, 'statics'),
  kneeLoad: seat('N', 1, 'statics'),
  rearLoad: seat('N', 1, 'statics'),
  frontLoad: seat('N', 1, 'statics'),
  supportMargin: fine(seat('m', 1e-3, 'statics')),
  driveKneeLoad: seat('N', 1, 'statics'),
  driveRearLoad: seat('N', 1, 'statics'),
  driveFrontLoad: seat('N', 1, 'statics'),
  padPressure: seat('Pa', 1000, 'estimate'),
  padFixing: seat('N', 5, 'statics'),
  padFixingSide: seat('N', 5, 'statics'),
  rearReach: fine(seat('m', 1e-3, 'stance')),
  frontReach: fine(seat('m', 1e-3, 'stance')),
  centreAft: seat('m', 1e-3, 'stance'),
  centreOut: fine(seat('m', 1e-3, 'stance')),
  centreHeight: seat('m', 1e-3, 'stance'),
  paddleUnderStature: seat('m', 1e-3, 'as-set'),
  bladeShare: seat('1', 1e-3, 'as-set'),
  paddleByStature: seat('m', 1e-3, 'practice'),
  paddleByStance: seat('m', 1e-3, 'stance'),
  paddleDifference: seat('m', 1e-3, 'stance'),
  handShare: seat('1', 1e-3, 'as-set'),
  handAboveNeck: seat('m', 1e-3, 'as-set-usual'),
  catchReach: seat('m', 1e-3, 'stance'),
  handOverGunwale: seat('m', 1e-3, 'stance'),
  handOverWater: seat('m', 1e-3, 'stance'),
  bladeAngle: seat('rad', degree / 2, 'as-set'),
  padInsideHull: fine(seat('m', 1e-3, 'hydrostatics')),
  padBevel: fine(seat('m', 1e-3, 'hydrostatics')),
  kneeInsideHull: seat('m', 1e-3, 'hydrostatics'),
  restInsideHull: fine(seat('m', 1e-3, 'hydrostatics')),
  restBevel: fine(seat('m', 1e-3, 'hydrostatics')),
  footInsideHull: fine(seat('m', 1e-3, 'hydrostatics')),
  padHolesToSkin: fine(seat('m', 1e-3, 'hydrostatics')),
  restHolesToSkin: fine(seat('m', 1e-3, 'hydrostatics')),
  padHolesOnBoard: fine(seat('m', 1e-3, 'as-set')),
  restHolesOnBoard: fine(seat('m', 1e-3, 'as-set')),
  padOverhang: fine(seat('m', 1e-3, 'as-set')),
  restOverhang: fine(seat('m', 1e-3, 'as-set')),
  footOverhang: fine(seat('m', 1e-3, 'as-set')),
  padToRest: seat('m', 1e-3, 'as-set'),
  padToFrontHeel: seat('m', 1e-3, 'as-set'),
  padTravel: seat('m', 1e-3, 'as-set'),
  restTravel: seat('m', 1e-3, 'as-set'),
  strapReleases: seat('1', 1, 'as-set'),
  floorNonSlip: seat('1', 1, 'as-set'),
  padBraced: seat('1', 1, 'as-set'),
  kneelsOnSide: seat('1', 1, 'as-set'),
  toNextSeat: seat('m', 1e-3, 'as-set'),
  bladeSpacing: seat('m', 0.01, 'stance'),
  trimRest: fine(boat('m', 1e-3, 'hydrostatics')),
  trimCatch: fine(boat('m', 1e-3, 'hydrostatics')),
  trimAngle: boat('rad', degree / 100, 'hydrostatics'),
  draft: boat('m', 1e-3, 'hydrostatics'),
  freeboardBow: boat('m', 1e-3, 'hydrostatics'),
  freeboardStern: boat('m', 1e-3, 'hydrostatics'),
  leastFreeboard: boat('m', 1e-3, 'hydrostatics'),
  offCentre: fine(boat('m', 1e-3, 'masses')),
  steadyMoment: boat('N·m', 0.1, 'statics'),
  transverseGm: boat('m', 1e-3, 'hydrostatics'),
  leanMoment: boat('N·m/°', 0.1, 'small-heel'),
  massPerCentimetre: boat('kg', 0.1, 'hydrostatics'),
  totalMass: boat('kg', 0.1, 'as-set'),
  boatLength: boat('m', 1e-3, 'as-given'),
  boatMass: boat('kg', 0.1, 'as-given'),
  boardInsideHull: fine(boat('m', 1e-3, 'hydrostatics')),
} as const satisfies Record<string, QuantityDefinition>;

/** The id of any value: the same on screen, on paper and in `evaluate`. */
export type QuantityId = keyof typeof QUANTITIES;

/** Whether an id is that of a quantity which this program knows. */
export function isQuantityId(id: string): id is QuantityId {
  return Object.hasOwn(QUANTITIES, id);
}

/** The ids of all quantities, in the order of their table. */
export const QUANTITY_IDS: readonly QuantityId[] = Object.keys(QUANTITIES).filter(isQuantityId);

/** The definition of a quantity by its id, or null for an id this program does not know. */
export function quantityDefinition(id: string): QuantityDefinition | null {
  return isQuantityId(id) ? QUANTITIES[id] : null;
}

/** The quantity `id` of a seat (or of the boat: null) in a list; null when it was not computed. */
export function findQuantity(
  quantities: readonly Quantity[],
  id: QuantityId,
  seatIndex: number | null,
): Quantity | null {
  return quantities.find((q) => q.id === id && q.seat === seatIndex) ?? null;
}
