import type { UsualClass } from '../document/usual-classes.ts';
import type { FamilyLines } from './hull-family.ts';

/** What a usual hull is drawn from. Metres; the depth amidships is the class's unless given. */
export interface UsualNumbers {
  readonly boatClass: UsualClass;
  /** Over all. */
  readonly lengthM: number;
  /** Greatest beam, at the sheer. */
  readonly beamM: number;
  readonly depthM?: number | undefined;
}

/**
 * Defaults of each class. Length and mass are the class's greatest length and least mass (ICF canoe sprint rules: C1 5.20 m and
 * 14 kg, C2 6.50 m and 20 kg, C4 9.00 m and 30 kg), but a C4 is usually built 8.90 m long. That length, beams, depths and all
 * of the training single are common practice, no source.
 */
export const USUAL_NUMBERS: Readonly<
  Record<UsualClass, Required<UsualNumbers> & { readonly massKg: number }>
> = {
  C1: { boatClass: 'C1', lengthM: 5.2, beamM: 0.42, depthM: 0.27, massKg: 14 },
  C2: { boatClass: 'C2', lengthM: 6.5, beamM: 0.45, depthM: 0.3, massKg: 20 },
  C4: { boatClass: 'C4', lengthM: 8.9, beamM: 0.5, depthM: 0.35, massKg: 30 },
  training: { boatClass: 'training', lengthM: 4.9, beamM: 0.82, depthM: 0.29, massKg: 19 },
};

/** What a class fixes besides the four numbers. */
type Shape = Omit<FamilyLines, 'lengthM' | 'beamM' | 'depthM'>;

/**
 * Shapes of the classes. The forebody is a little fuller than the afterbody, so that a median paddler whose knee is 17.5 cm
 * behind the seat's mark floats the bow slightly up (common practice for the place of the knee, no source).
 */
const SHAPES: Readonly<Record<UsualClass, Shape>> = {
  C1: {
    bowRiseM: 0.035,
    sternRiseM: 0.02,
    rockerM: 0.03,
    planFore: 2.6,
    planAft: 2.2,
    flatness: 3.2,
    bilge: 2.3,
    flare: 0.1,
  },
  C2: {
    bowRiseM: 0.04,
    sternRiseM: 0.025,
    rockerM: 0.035,
    planFore: 3.08,
    planAft: 2.5,
    flatness: 3.4,
    bilge: 2.2,
    flare: 0.1,
  },
  C4: {
    bowRiseM: 0.045,
    sternRiseM: 0.03,
    rockerM: 0.045,
    planFore: 3.5,
    planAft: 2.9,
    flatness: 3.6,
    bilge: 2.2,
    flare: 0.1,
  },
  training: {
    bowRiseM: 0.06,
    sternRiseM: 0.05,
    rockerM: 0.035,
    planFore: 2.7,
    planAft: 2.3,
    flatness: 4,
    bilge: 2.4,
    flare: 0.08,
  },
};

/** The lines of a usual hull: the class's shape at the given length and beam. Metres. */
export function usualLines({ boatClass, lengthM, beamM, depthM }: UsualNumbers): FamilyLines {
  return { ...SHAPES[boatClass], lengthM, beamM, depthM: depthM ?? USUAL_NUMBERS[boatClass].depthM };
}
