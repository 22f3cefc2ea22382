import type { Quantity, Unit } from './finding.ts';

/** What a quantity is: its unit, whether it belongs to a seat or the boat, its formula in words, and its source. */
export interface QuantityDefinition {
  readonly unit: Unit;
  readonly scope: 'seat' | 'boat';
  /** How the value is found, for a reader with a pencil. */
  readonly formula: string;
  /** Publication, practice or model that the formula rests on. */
  readonly source: string;
  /** Smallest change worth showing, in the unit. */
  readonly step: number;
  /** Lengths are written in centimetres; those that are small and read finely, in millimetres. */
  readonly inMillimetres?: true;
}

const degree = Math.PI / 180;
const MODEL = 'this model (stance solve)';
const STATICS =
  'statics of three contacts, each a patch: knee on its pad, toes on the rest, front foot from heel to ball';
const DRIVE =
  'the same under the blade’s mean force, half a blade below the water: the weight seems to move aft by force × height of knee over blade ÷ weight, and from the blade by the sideways force × height of knee over front foot ÷ weight. Lift and push across of the blade are unknown: 0 ± 15 % and 0 ± 10 % of the force, one standard deviation, estimates';
const HYDRO = 'hydrostatics of the hull as given';

const seat = (unit: Unit, step: number, formula: string, source: string): QuantityDefinition => ({
  unit,
  scope: 'seat',
  formula,
  source,
  step,
});
const boat = (unit: Unit, step: number, formula: string, source: string): QuantityDefinition => ({
  unit,
  scope: 'boat',
  formula,
  source,
  step,
});
const fine = (definition: QuantityDefinition): QuantityDefinition => ({ ...definition, inMillimetres: true });
/** A distance to the hull's inner face or through it, read in millimetres. */
const clearance = (formula: string) => fine(seat('m', 1e-3, formula, HYDRO));
const angle = (formula: string) => seat('rad', degree, formula, MODEL);

/** Every quantity of a report by its id. The drawing, the table, findings and `evaluate` all use these. */
export const QUANTITIES = {
  padAft: seat('m', 1e-3, "knee's bearing point aft of the seat's datum", 'as set'),
  padFromMid: seat('m', 1e-3, "knee's bearing point aft of the middle of the boat", 'as set'),
  padOut: seat('m', 1e-3, "knee's bearing point from the centreline toward the kneeling side", 'as set'),
  padHeight: seat('m', 1e-3, "bottom of the recess above the floorboard's top", 'as set'),
  recessTurn: seat('rad', degree, "recess's axis against the boat's, aft end to the off side", 'as set'),
  recessDepth: seat('m', 1e-3, 'depth of the recess', 'as set'),
  restAft: seat('m', 1e-3, "bearing edge of the rear rest aft of the seat's datum", 'as set'),
  restTurn: seat('rad', degree, "rear rest's face turned to the off side", 'as set'),
  frontHeelForward: seat('m', 1e-3, "front heel forward of the seat's datum", 'as set'),
  frontKnee: angle('included angle hip–knee–ankle of the front leg'),
  kneelingKnee: angle('included angle hip–knee–ankle of the kneeling leg'),
  kneelingHip: angle('included angle trunk–hip–thigh on the kneeling side; over 180° the hip is extended'),
  frontHip: angle('included angle trunk–hip–thigh on the front side'),
  rearAnkle: angle('included angle shank–foot of the rear foot'),
  frontAnkle: angle('included angle shank–foot of the front foot'),
  trunkPitch: angle('mid-hip to mid-shoulder from the vertical, side view, forward positive'),
  trunkRoll: angle('the same seen from behind, toward the paddling side positive'),
  pelvisYaw: angle('line of the hip joints against square across the boat'),
  thighPitch: angle('kneeling thigh from the vertical, side view, hip forward positive'),
  hipFlexorStretch: angle('the smaller of hip extension and knee flexion past 90° of the kneeling leg'),
  kneeShare: seat(
    '1',
    0.01,
    "knee's share of the weight with every contact at its nominal point (barycentric); its range is that of every place in the patches",
    STATICS,
  ),
  rearShare: seat('1', 0.01, "rear foot's barycentric share", STATICS),
  frontShare: seat('1', 0.01, "front foot's barycentric share", STATICS),
  kneeLoad: seat('N', 1, 'share × weight of paddler and paddle', STATICS),
  rearLoad: seat('N', 1, 'share × weight of paddler and paddle', STATICS),
  frontLoad: seat('N', 1, 'share × weight of paddler and paddle', STATICS),
  supportMargin: fine(
    seat(
      'm',
      1e-3,
      "distance of the centre of mass's projection to the nearest edge of the hull of the patches",
      STATICS,
    ),
  ),
  driveKneeLoad: seat('N', 1, DRIVE, STATICS),
  driveRearLoad: seat('N', 1, DRIVE, STATICS),
  driveFrontLoad: seat('N', 1, DRIVE, STATICS),
  padPressure: seat(
    'Pa',
    1000,
    'knee load over the circle in which a round knee, sunk by recess, foam and flesh, is cut; compare set-ups only',
    'estimate',
  ),
  padFixing: seat(
    'N',
    5,
    'the whole forward part of the blade’s peak force, as if the knee alone passed it on',
    STATICS,
  ),
  padFixingSide: seat(
    'N',
    5,
    "peak force of the blade × its distance out from the knee ÷ the front foot's distance forward of the knee; a push across of 0 ± 10 % of the force, an estimate, adds to its doubt",
    STATICS,
  ),
  rearReach: fine(seat('m', 1e-3, 'missing length of shank and foot to the rear rest', MODEL)),
  frontReach: fine(seat('m', 1e-3, 'missing length of the front leg to its foot', MODEL)),
  centreAft: seat('m', 1e-3, "paddler's centre of mass aft of the seat's datum", MODEL),
  centreOut: fine(seat('m', 1e-3, "paddler's centre of mass toward the kneeling side", MODEL)),
  centreHeight: seat('m', 1e-3, "paddler's centre of mass above the floorboard", MODEL),
  paddleUnderStature: seat('m', 1e-3, 'stature less paddle length', 'as set'),
  bladeShare: seat('1', 0.001, 'blade length over paddle length', 'as set'),
  paddleByStature: seat('m', 1e-3, 'stature less 10 cm', 'common practice, no source'),
  paddleByStance: seat(
    'm',
    1e-3,
    'top hand above the water in the middle of the drive, trunk 35° forward, shaft upright, and the blade; calibrated to stature less 10 cm for the median adult',
    MODEL,
  ),
  paddleDifference: seat('m', 1e-3, 'length by the stance less length by stature', MODEL),
  handShare: seat('1', 0.001, "lower hand's distance from the grip over paddle length", 'as set'),
  handAboveNeck: seat(
    'm',
    1e-3,
    'lower hand above the neck of the blade along the shaft; usually about 15 to 25 cm',
    'as set; the usual: common practice, no source',
  ),
  catchReach: seat('m', 1e-3, 'lower hand ahead of the kneeling knee at the catch', MODEL),
  handOverGunwale: seat(
    'm',
    1e-3,
    'top hand less hand spacing in the middle of the drive, above the sheer beside it',
    MODEL,
  ),
  handOverWater: seat(
    'm',
    1e-3,
    'top hand less hand spacing in the middle of the drive, above the water',
    MODEL,
  ),
  bladeAngle: seat('rad', degree / 2, 'blade turned against the shaft', 'as set'),
  padInsideHull: clearance("least distance of the pad's edges, from base to top, to the hull's inner face"),
  padBevel: clearance('how far the hull’s inner face cuts into the pad, square to the skin'),
  kneeInsideHull: seat(
    'm',
    1e-3,
    "kneeling knee's side to the hull's inner face at its height and station",
    HYDRO,
  ),
  restInsideHull: clearance(
    "least distance of the rear rest's edges, from base to top, to the hull's inner face",
  ),
  restBevel: clearance('how far the hull’s inner face cuts into the rear rest, square to the skin'),
  footInsideHull: clearance("least distance of what the front foot stands on to the hull's inner face"),
  padHolesToSkin: clearance(
    "least distance of the pad's bolts or screws, over their whole length, to the hull's inner face",
  ),
  restHolesToSkin: clearance(
    "least distance of the rear rest's bolts or screws, over their whole length, to the hull's inner face",
  ),
  padHolesOnBoard: fine(
    seat('m', 1e-3, "least distance of the pad's holes to the floorboard's edges", 'as set'),
  ),
  restHolesOnBoard: fine(
    seat('m', 1e-3, "least distance of the rear rest's holes to the floorboard's edges", 'as set'),
  ),
  padOverhang: fine(seat('m', 1e-3, "how far the pad's base reaches over the floorboard's edge", 'as set')),
  restOverhang: fine(
    seat('m', 1e-3, "how far the rear rest's base reaches over the floorboard's edge", 'as set'),
  ),
  footOverhang: fine(
    seat('m', 1e-3, "how far what the front foot stands on reaches over the floorboard's edge", 'as set'),
  ),
  padToRest: seat('m', 1e-3, 'least distance in plan between the bases of pad and rear rest', 'as set'),
  padToFrontHeel: seat('m', 1e-3, 'least distance in plan between pad and front foot', 'as set'),
  padTravel: seat('m', 1e-3, "how far the knee's place is inside the hardware's travel", 'as set'),
  restTravel: seat('m', 1e-3, "how far the rest's place is inside the hardware's travel", 'as set'),
  strapReleases: seat('1', 1, '1: strap lets go by itself; 0: no strap; −1: fixed strap', 'as set'),
  floorNonSlip: seat('1', 1, '1: non-slip under the front foot', 'as set'),
  padBraced: seat('1', 1, '1: pad fixed by a brace', 'as set'),
  kneelsOnSide: seat('1', 1, '1: kneels on the knee of the paddling side', 'as set'),
  toNextSeat: seat(
    'm',
    1e-3,
    'least distance in plan from the rear rest’s base to the next paddler’s pad and front foot',
    'as set',
  ),
  bladeSpacing: seat(
    'm',
    1e-2,
    'fore-and-aft distance of the lower hands of two on the same side at the catch',
    MODEL,
  ),
  trimRest: fine(boat('m', 1e-3, 'length × tan(trim), bow over stern, paddlers ready', HYDRO)),
  trimCatch: fine(boat('m', 1e-3, 'the same with every paddler at the catch', HYDRO)),
  trimAngle: boat('rad', degree / 100, 'angle of the keel line to the water, bow up positive', HYDRO),
  draft: boat('m', 1e-3, 'water plane above the lowest point of the keel, amidships', HYDRO),
  freeboardBow: boat('m', 1e-3, 'sheer above water at the foremost station', HYDRO),
  freeboardStern: boat('m', 1e-3, 'sheer above water at the aftmost station', HYDRO),
  leastFreeboard: boat('m', 1e-3, 'least height of the sheer above the water', HYDRO),
  offCentre: fine(
    boat('m', 1e-3, 'combined centre of mass from the centreline, left positive', 'moments of masses'),
  ),
  steadyMoment: boat('N·m', 0.1, 'weight × distance of the combined centre from the centreline', 'statics'),
  transverseGm: boat('m', 1e-3, 'KB + transverse BM − KG', HYDRO),
  leanMoment: boat(
    'N·m/°',
    0.1,
    '−GM × weight of boat and crew × π ÷ 180; only where GM is negative',
    'statics of a small heel: moment = weight × GM × sin(heel), naval architecture',
  ),
  massPerCentimetre: boat('kg', 0.1, 'water density × waterplane area × 1 cm', HYDRO),
  totalMass: boat('kg', 0.1, 'boat, fittings, crew and paddles', 'as set'),
  boatLength: boat('m', 1e-3, 'between the hull’s ends', 'as given'),
  boatMass: boat('kg', 0.1, 'hull with fixed gear', 'as given'),
  boardInsideHull: fine(
    boat(
      'm',
      1e-3,
      'least distance of the floorboard, over its length and thickness, to the hull’s inner face',
      HYDRO,
    ),
  ),
} as const satisfies Record<string, QuantityDefinition>;

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
