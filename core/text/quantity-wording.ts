import type { QuantityId } from '../evaluation/quantities.ts';
import { BOAT_WORDING } from './boat-wording.ts';
import { FITTING_WORDING } from './fitting-wording.ts';
import { POSTURE_WORDING } from './posture-wording.ts';
import { ROOM_WORDING } from './room-wording.ts';
import type { Wording } from './wording.ts';

/** Wording of every quantity that a band judges. */
export const WORDING: Partial<Record<QuantityId, Wording>> = {
  ...FITTING_WORDING,
  ...ROOM_WORDING,
  ...POSTURE_WORDING,
  ...BOAT_WORDING,
};

/** Names of quantities that no band judges, for the table of values. */
export const NAMES: Partial<Record<QuantityId, string>> = {
  padFromMid: 'Knee aft of the middle of the boat',
  restAft: 'Rear rest aft of the datum',
  frontHeelForward: 'Front heel forward of the datum',
  pelvisYaw: 'Pelvis turned, off-side hip forward',
  thighPitch: 'Kneeling thigh forward of upright',
  kneeLoad: 'Load on the knee',
  rearLoad: 'Load on the rear foot',
  frontLoad: 'Load on the front foot',
  padPressure: 'Mean pressure on the pad (to compare set-ups)',
  driveKneeLoad: 'Load on the knee in the drive',
  driveRearLoad: 'Load on the rear foot in the drive',
  driveFrontLoad: 'Load on the front foot in the drive',
  padFixing: 'Pad pushed forward at the stroke’s peak, at most',
  padFixingSide: 'Pad pushed toward the blade at the stroke’s peak, about',
  centreAft: 'Paddler’s centre of mass aft of the datum',
  centreOut: 'Paddler’s centre of mass to the kneeling side',
  centreHeight: 'Paddler’s centre of mass above the floorboard',
  paddleByStature: 'Paddle length by stature',
  paddleByStance: 'Paddle length by the stance, blade just covered',
  paddleDifference: 'Length by the stance more than by stature',
  handShare: 'Lower hand’s place, share of the paddle',
  handAboveNeck: 'Lower hand above the blade’s neck',
  restInsideHull: 'Rear rest to the hull’s side',
  catchReach: 'Lower hand ahead of the knee at the catch',
  handOverGunwale: 'Lower hand over the gunwale at mid-drive',
  handOverWater: 'Lower hand over the water at mid-drive',
  bladeAngle: 'Blade angled on the shaft',
  trimAngle: 'Trim angle',
  draft: 'Draft amidships',
  freeboardBow: 'Freeboard at the bow',
  freeboardStern: 'Freeboard at the stern',
  steadyMoment: 'Moment that the crew holds',
  transverseGm: 'Metacentric height (GM)',
  leanMoment: 'To hold for each degree of lean',
  massPerCentimetre: 'Kilograms per centimetre deeper',
  totalMass: 'Mass afloat',
};
