import { BODY_LENGTHS, type BodyEstimate } from '../body/body.ts';
import type { Seat } from '../document/seat-schema.ts';
import { otherSide } from '../frame/mirror.ts';
import { add, norm, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import { toRadians } from '../units/angle.ts';
import { recordOf } from '../units/entries.ts';
import { twoLink } from './two-link.ts';

/**
 * Height of the ball's joint of the rear foot above the rest's bearing edge, over stature (2 cm at 1.80 m; estimate): the
 * joint is what the foot turns about, the edge is what the coach measures to.
 */
const BALL_ABOVE_REST = 0.011;

/** The lengths and fractions of a body as the solver reads them: plain numbers, metres and kilograms. */
export type BodyLengths = Readonly<Record<keyof BodyEstimate['lengths'], number>>;

/** Lengths already taken out of a body. */
const known = new WeakMap<BodyEstimate, BodyLengths>();

/**
 * The values of a body's lengths without their spreads, metres: what a solve needs of them. The solver reads them thousands of
 * times, so they are plain numbers.
 */
export function lengthsOf(body: BodyEstimate): BodyLengths {
  const before = known.get(body);
  if (before) return before;
  const lengths = recordOf(BODY_LENGTHS, (name) => body.lengths[name].value);
  known.set(body, lengths);
  return lengths;
}

/**
 * +1 when the paddler kneels on the paddling side, else −1: the sign of the paddling side's y in the paddler's frame, whose y
 * points to the kneeling side. It applies to what depends on the paddling side (lean, hands), not to the fittings.
 */
export function paddlingSign(seat: Pick<Seat, 'side' | 'kneels'>): 1 | -1 {
  return seat.kneels === otherSide(seat.side) ? -1 : 1;
}

/**
 * The joints that the fittings fix, in the paddler's frame, metres. They stay while the unknowns of the solve move all others.
 */
export interface Contacts {
  /** Where the kneeling knee bears on its pad. */
  readonly kneeContact: Vec3;
  /** Joint centre of the kneeling knee. */
  readonly knee: Vec3;
  /** Joint centre of the rear ankle. */
  readonly rearAnkle: Vec3;
  /** Heel of the rear foot. */
  readonly rearHeel: Vec3;
  /** Ball of that foot, on the rear rest. */
  readonly rearBall: Vec3;
  /** Tip of its toes. */
  readonly rearToe: Vec3;
  /** Heel of the front foot, on its place. */
  readonly frontHeel: Vec3;
  /** Ball of the front foot. */
  readonly frontBall: Vec3;
  /** Tip of its toes. */
  readonly frontToe: Vec3;
  /** Joint centre of the front ankle. */
  readonly frontAnkle: Vec3;
  /** Level direction in which the front knee bends: along the foot. */
  readonly frontDirection: Vec3;
  /** Missing length of shank and foot to the rear rest; 0 when it reaches. */
  readonly rearShortfall: number;
}

/**
 * Kneeling knee, rear foot and front foot as the fittings hold them, paddler's frame, metres; `stature` in metres scales what
 * no survey column gives. Always finite: a rest too far away leaves the leg straight, and `rearShortfall` is the missing
 * length. With the pad 11 cm high and foam giving 8 mm the knee bears 10.2 cm over the floor.
 */
export function contactsOf(seat: Seat, body: BodyLengths, stature: number): Contacts {
  const { aftM, outM, heightM, foamGiveM } = seat.kneePad;
  const kneeContact = { x: -aftM, y: outM, z: heightM - foamGiveM };
  const knee = { ...kneeContact, z: kneeContact.z + body.kneeRadius };
  return { kneeContact, knee, ...rearFoot(seat, body, { knee, stature }), ...frontFoot(seat, body) };
}

/**
 * Knee–ankle–ball: a two-link chain in the upright plane through knee and ball, the ankle above. The unknowns do not move it,
 * so the kneeling shank is known before the solve begins.
 */
function rearFoot({ rearRest }: Seat, body: BodyLengths, { knee, stature }: { knee: Vec3; stature: number }) {
  const rearBall = {
    x: -rearRest.aftM,
    y: rearRest.outM,
    z: rearRest.heightM + BALL_ABOVE_REST * stature,
  };
  const toBall = body.heelToBall - body.heelToAnkle;
  const { middle: rearAnkle, excess } = twoLink(knee, rearBall, {
    first: body.shank,
    second: Math.hypot(toBall, body.ankleHeight),
    bend: { x: 0, y: 0, z: 1 },
  });
  const { heel, toe } = tuckedFoot({ knee, ankle: rearAnkle, ball: rearBall }, body);
  return {
    rearBall,
    rearAnkle,
    rearHeel: heel,
    rearToe: toe,
    rearShortfall: Math.max(0, excess),
  };
}

/**
 * Heel and toe of a tucked foot in the upright plane of its leg: the heel behind and above, the toes bent under. For the
 * drawing and the foot's own mass (1.4 % of the body's); the shares are estimates by eye.
 */
function tuckedFoot(
  { knee, ankle, ball }: { knee: Vec3; ankle: Vec3; ball: Vec3 },
  body: BodyLengths,
): { heel: Vec3; toe: Vec3 } {
  const foot = subtract(ball, ankle);
  const unit = scale(foot, 1 / Math.max(norm(foot), 1e-9));
  const leg = subtract(ball, knee);
  const level = Math.max(Math.hypot(leg.x, leg.y), 1e-9);
  const aft = { x: leg.x / level, y: leg.y / level, z: 0 };
  const behind = 0.6 * body.heelToAnkle;
  const toes = 0.8 * (body.footLength - body.heelToBall);
  return {
    heel: add(add(ankle, scale(unit, -behind)), scale(aft, behind)),
    toe: add(ball, { x: -0.8 * toes * aft.x, y: -0.8 * toes * aft.y, z: -0.25 * toes }),
  };
}

/**
 * The front foot flat on the floor or its wedge, turned by the toe-out away from the kneeling side. Turned first, then
 * lifted about its own heel: a wedge stands square to the foot, as it is built.
 */
function frontFoot({ frontFoot: foot }: Seat, body: BodyLengths) {
  const turn = toRadians(foot.toeOutDeg);
  const lift = toRadians(foot.wedgeDeg);
  const flat = { x: Math.cos(turn), y: -Math.sin(turn), z: 0 };
  const forward = { x: flat.x * Math.cos(lift), y: flat.y * Math.cos(lift), z: Math.sin(lift) };
  const up = { x: -flat.x * Math.sin(lift), y: -flat.y * Math.sin(lift), z: Math.cos(lift) };
  const frontHeel = { x: foot.forwardM, y: foot.outM, z: foot.heightM };
  const onSole = (distance: number) => add(frontHeel, scale(forward, distance));
  return {
    frontHeel,
    frontBall: onSole(body.heelToBall),
    frontToe: onSole(body.footLength),
    frontAnkle: add(onSole(body.heelToAnkle), scale(up, body.ankleHeight)),
    frontDirection: flat,
  };
}
