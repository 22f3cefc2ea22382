import { isJunior } from './body-input.ts';
import type { PersonMeasure } from './person-measures.ts';
import type { Sex } from './sex.ts';
import type { SurveyModel } from './survey-model.ts';

/**
 * Median sitting height as a share of stature in the middle of each year of age, from the seventh birthday on. Source: Fredriks,
 * van Buuren, van Heel, Dijkman-Neerincx, Verloove-Vanhorick, Wit 2005, Nationwide age references for sitting height, leg
 * length, and sitting height/height ratio, Arch Dis Child 90:807–812 (14,500 Dutch children; read from the authors' published
 * reference tables). Its spread among children of one age, 2.5–2.7 % of the share, is that of adults of one stature.
 */
const SITTING_SHARE: Readonly<Record<Sex, readonly number[]>> = {
  female: [0.5331, 0.5284, 0.5244, 0.5206, 0.5172, 0.5157, 0.5169, 0.5201, 0.5232, 0.5242, 0.5244],
  male: [0.5334, 0.5282, 0.5229, 0.5181, 0.5143, 0.5107, 0.5079, 0.5085, 0.5109, 0.5125, 0.5141],
};
/** Age of the first entry of each list, years. */
const FIRST_AGE = 7;

/**
 * From this age to the eighteenth birthday the reference gives way to the survey of adults year by year (estimate: Dutch men
 * sit 0.8 % of stature lower than the survey's, American boys of 16 and 17 lie between the two).
 */
const FADES_FROM = 14;
const ADULT = 18;

/**
 * Measures of the legs; sitting height is the rest of the stature. Moved by their correlation with sitting height among adults
 * of one stature, they come nearer to those of 116 American juniors (Snyder et al. 1977): knee height is 1 and 3 mm off instead
 * of 9 and 8. Buttock to knee is left out: moved, it would be 28 and 20 mm off, unmoved it is 12 and 9. Arms and shoulders are
 * left out because these references do not have them.
 */
const MOVES_WITH_LEGS: readonly PersonMeasure[] = [
  'epicondyleHeight',
  'footLength',
  'ballOfFootLength',
  'kneeHeightSitting',
  'tibialHeight',
  'poplitealHeight',
  'crotchHeight',
  'trochanterionHeight',
];

/**
 * Median sitting height as a share of stature at an age in whole years, by the children's reference. Below its first year the
 * first value holds.
 */
export function sittingShare(ageYears: number, sex: Sex): number {
  const last = SITTING_SHARE[sex].length - 1;
  return SITTING_SHARE[sex][Math.min(last, Math.max(0, ageYears - FIRST_AGE))]!;
}

/**
 * How far a junior's measures are expected to lie from the adults' lines at that stature and mass, metres. Children's legs grow before
 * their trunk: a boy of 13 and 1.57 m sits 5 cm lower than a man of that stature. Empty for an adult or an unknown age.
 */
export function juniorShift(
  person: { readonly stature: number; readonly ageYears: number | null },
  sex: Sex,
  model: SurveyModel,
  mass: number,
): Partial<Record<PersonMeasure, number>> {
  const { stature, ageYears } = person;
  if (ageYears === null || !isJunior({ ageYears })) return {};
  const adult = model.line('sittingHeight', stature, mass);
  const weight = Math.min(1, (ADULT - ageYears) / (ADULT - FADES_FROM));
  const sitting = weight * (sittingShare(ageYears, sex) * stature - adult.value);
  const legs = MOVES_WITH_LEGS.map((measure) => {
    const { sd } = model.line(measure, stature, mass);
    return [measure, (sitting * model.correlation(measure, 'sittingHeight') * sd) / adult.sd] as const;
  });
  return { ...Object.fromEntries(legs), sittingHeight: sitting };
}
