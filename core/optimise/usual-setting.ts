import type { BodyEstimate } from '../body/body.ts';
import type { Seat } from '../document/seat-schema.ts';
import type { Side } from '../frame/mirror.ts';

/** Everything of a seat but the athlete. Metres and degrees, from the seat's datum. */
export type SeatSetting = Omit<Seat, 'athlete'>;

/** Where a knee, a rear foot and a front foot usually go, metres. */
interface UsualPlaces {
  /** Knee aft of the seat's mark. */
  readonly padAftM: number;
  /** Knee from the centreline, to its own side. */
  readonly padOutM: number;
  /** Bottom of the recess over the floorboard. */
  readonly padHeightM: number;
  /** Rear rest and front foot to the off side of the knee. */
  readonly restAcrossM: number;
  /** Front foot to the off side of the knee. */
  readonly footAcrossM: number;
  /** Longer or shorter than the body's own proportions give: knee to rear rest, knee to front heel. */
  readonly restAddM: number;
  /** Knee to front heel. */
  readonly footAddM: number;
}

/**
 * A single: the middles of the bands for the knee (common practice, no source), but the pad 1 cm higher: at the middle of its
 * band every second body of unknown thigh and shank has a front knee that may be below 110°.
 */
const SINGLE: UsualPlaces = {
  padAftM: 0.175,
  padOutM: 0.03,
  padHeightM: 0.125,
  restAcrossM: 0.11,
  footAcrossM: 0.06,
  restAddM: 0.05,
  footAddM: 0.07,
};

/** Pairs: the knee nearer the boat's side, the recess higher (our estimate, after common practice). */
const PAIR: UsualPlaces = {
  padAftM: 0.155,
  padOutM: 0.075,
  padHeightM: 0.14,
  restAcrossM: 0.155,
  footAcrossM: 0.13,
  restAddM: 0.02,
  footAddM: 0.08,
};

/** Threes and fours: the recess higher still. */
const FOUR: UsualPlaces = { ...PAIR, padHeightM: 0.145 };

const PLACES = [SINGLE, PAIR, FOUR, FOUR] as const;

/** Thigh and shank of the mean adult (1.72 m by this project's body estimate), metres: the usual places are given for such legs. */
const MEAN_LEG = 0.84;

/** Share of thigh and shank by which the front ankle stands ahead of the knee when the front knee is near 120°. */
const LEGS_AHEAD = 0.62;

/** How high the knee stands over the rear ball, about: what the shank loses of its length in plan, metres. */
const SHANK_DROP = 0.1;

/** Paddle (common practice, no source): stature less 10 cm, a blade of slightly over a third, and how far apart the hands are. */
const PADDLE_UNDER_STATURE = 0.1;
/** Blade's share of the paddle's length. */
const BLADE_SHARE = 0.35;

/**
 * Between the hands, share of an arm: top hand 0.235 over the shoulders, the lower arm nearly straight, and what the lower
 * shoulder drops and reaches with trunk and shoulder blade. The median woman's and man's lower hand then lies 21 to 23 cm over the
 * blade's neck; practice says 15 to 25 cm (common practice, no source). Never nearer to the neck than practice.
 */
const HANDS_APART = 1.38;
/** The lower hand stays at least so far above the neck of the blade, metres. */
const LEAST_ABOVE_NECK = 0.15;

/**
 * Fittings where coaches usually begin in a boat of `crew` seats (1 to 4), from the body's proportions: the boat is not
 * considered yet. Metres and degrees from the seat's datum, the same on either side. Distances that depend on the legs (knee to
 * rest, knee to front heel) scale with them; places that coaches state in centimetres do not. A man of 1.80 m in a single
 * begins with his knee 17.5 cm aft, the rest 64 cm aft and the front heel 37 cm forward of the mark.
 */
export function usualSetting(body: BodyEstimate, crew: number, side: Side): SeatSetting {
  const places = PLACES[crew - 1] ?? FOUR;
  const size = (body.lengths.thigh.value + body.lengths.shank.value) / MEAN_LEG;
  const padAftM = size * places.padAftM;
  const padOutM = places.padOutM;
  const padHeightM = size * places.padHeightM;
  const length = (name: keyof BodyEstimate['lengths']) => body.lengths[name].value;
  const toRest = Math.sqrt(Math.max(SHANK_DROP ** 2, length('shank') ** 2 - SHANK_DROP ** 2));
  const toHeel = LEGS_AHEAD * (length('thigh') + length('shank')) - length('heelToAnkle');
  const arm = length('upperArm') + length('forearm') + length('hand');
  const paddleM = body.stature - PADDLE_UNDER_STATURE;
  return {
    side,
    kneePad: {
      aftM: padAftM,
      outM: padOutM,
      heightM: padHeightM,
      recessTurnDeg: 12,
      recessDepthM: 0.02,
      lengthM: 0.26,
      widthM: 0.16,
      foamGiveM: 0.008,
      braced: true,
    },
    rearRest: {
      aftM: padAftM + toRest + places.restAddM,
      outM: padOutM - places.restAcrossM,
      heightM: 0.05,
      turnDeg: 20,
      tiltDeg: 60,
      widthM: 0.12,
      strap: 'releases',
    },
    frontFoot: {
      forwardM: toHeel + places.footAddM - padAftM,
      outM: padOutM - places.footAcrossM,
      heightM: 0,
      toeOutDeg: 0,
      wedgeDeg: 0,
      nonSlip: true,
    },
    paddle: {
      lengthM: paddleM,
      bladeLengthM: BLADE_SHARE * paddleM,
      lowerHandM: Math.min(HANDS_APART * arm, (1 - BLADE_SHARE) * paddleM - LEAST_ABOVE_NECK),
      bladeAngleDeg: 0,
      massKg: 0.75,
    },
    pins: {},
    locks: [],
    bands: [],
    stroke: {},
  };
}

/**
 * A paddler's setting in a single brought to a seat of a crew: knee, rear foot and front foot stand to each other as they do there,
 * and the pad goes where a crew's usually does, as much higher as crews' pads are.
 */
export function fromSingle(
  single: SeatSetting,
  body: BodyEstimate,
  { crew, side }: { crew: number; side: Side },
): SeatSetting {
  const there = usualSetting(body, crew, side).kneePad;
  const usual = usualSetting(body, 1, side).kneePad;
  const { kneePad, rearRest, frontFoot } = single;
  const aft = there.aftM - kneePad.aftM;
  const out = there.outM - kneePad.outM;
  return {
    ...movedAft(single, aft),
    side,
    locks: [],
    kneePad: {
      ...kneePad,
      aftM: there.aftM,
      outM: there.outM,
      heightM: kneePad.heightM + there.heightM - usual.heightM,
    },
    rearRest: { ...rearRest, aftM: rearRest.aftM + aft, outM: rearRest.outM + out },
    frontFoot: { ...frontFoot, forwardM: frontFoot.forwardM - aft, outM: frontFoot.outM + out },
  };
}

/**
 * The same setting with pad, rest and front foot all moved aft by `by`, metres (negative is forward): the paddler kneels as before,
 * farther aft, and only trim and clearances change.
 */
export function movedAft(setting: SeatSetting, by: number): SeatSetting {
  const { kneePad, rearRest, frontFoot } = setting;
  return {
    ...setting,
    kneePad: { ...kneePad, aftM: kneePad.aftM + by },
    rearRest: { ...rearRest, aftM: rearRest.aftM + by },
    frontFoot: { ...frontFoot, forwardM: frontFoot.forwardM - by },
  };
}
