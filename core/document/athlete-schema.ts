import { z } from 'zod';
import { bandOverride } from './band-override-schema.ts';
import { degrees, isoDate, label, metres } from './measure-schema.ts';
import { neutralSchema } from './neutral-schema.ts';

/**
 * Tape measures that a coach can take, by their ISO 7250-1 names where the standard has one. *Kneeling height*
 * (kneeling surface to the top of the head, thigh upright) and *knee-to-hip length* (front of the bent knee's joint
 * line to the bony point of the hip) are defined by this project.
 */
export const TAPE_MEASURES = [
  'kneeHeightSitting',
  'buttockKneeLength',
  'shoulderHeight',
  'armSpan',
  'footLength',
  'kneelingHeight',
  'crotchHeight',
  'tibialHeight',
  'poplitealHeight',
  'sittingHeight',
  'biacromialBreadth',
  'kneeToHipLength',
] as const;

/** One tape reading: metres, its standard deviation if it was repeated, and the day it was taken. */
export const tapeReadingSchema = z.strictObject({
  valueM: metres(0.02, 3),
  sdM: metres(0.0005, 0.1).optional(),
  takenOn: isoDate.optional(),
});

/** Joints for which an athlete may have a limit of their own. */
export const LIMITED_JOINTS = [
  'kneelingKneeFlexion',
  'frontKneeFlexion',
  'kneelingHipExtension',
  'frontHipFlexion',
  'rearAnklePlantarflexion',
  'frontAnkleDorsiflexion',
  'trunkForward',
  'trunkSideways',
] as const;

/** A personal limit: this joint must not go past this angle, and why. */
export const jointLimit = z.strictObject({
  joint: z.enum(LIMITED_JOINTS),
  maxDeg: degrees(-40, 170),
  reason: label,
});

/** What a minor's guardian may consent to. */
export const CONSENTS = ['bodyData', 'photographs'] as const;

/** Who gave a consent, and on which day. */
export const consentGiven = z.strictObject({ by: label, on: isoDate });

/** One athlete: who, body by stature and mass, tape measures and personal limits. */
export const athleteSchema = z.strictObject({
  id: z.uuid().optional(),
  name: label,
  /** Chooses a survey table, nothing else. Unspecified: the mean of both tables. */
  sex: z.enum(['female', 'male', 'unspecified']),
  bornOn: isoDate.optional(),
  side: z.enum(['left', 'right']),
  statureM: metres(0.8, 2.6),
  massKg: z.number().min(15).max(250).meta({ unit: 'kg' }),
  measuredOn: isoDate.optional(),
  /** Breadth of the bent knee across the bone, by callipers. The pad's recess is drawn for it. */
  kneeBreadthM: metres(0.05, 0.18).optional(),
  tape: z.partialRecord(z.enum(TAPE_MEASURES), tapeReadingSchema).default({}),
  limits: z.array(jointLimit).max(16).default([]),
  /** The athlete's own bands, copied into every new fit. Angles in degrees, all else in SI. */
  bands: z.array(bandOverride).max(64).optional(),
  /** The athlete's own way of kneeling, learnt from photographs. */
  neutral: neutralSchema.optional(),
  /** A guardian's consents. They stay with the athlete's record and never enter a fit. */
  consent: z.partialRecord(z.enum(CONSENTS), consentGiven).optional(),
});

/** An athlete as written in a fit: lengths in metres, mass in kilograms, limits in degrees. */
export type Athlete = z.infer<typeof athleteSchema>;
/** What somebody has agreed to. */
export type Consent = (typeof CONSENTS)[number];
/** A length that is taken with a tape. */
export type TapeMeasure = (typeof TAPE_MEASURES)[number];
/** A joint motion that may have a personal limit. */
export type LimitedJoint = (typeof LIMITED_JOINTS)[number];
