import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { PERSON_MEASURES, type PersonMeasure } from '../../core/body/person-measures.ts';
import type { Sex } from '../../core/body/sex.ts';

// 4,864 persons (3,261 men and 1,603 women) of the public release of ANSUR II, the US Army's survey of 2012 (report
// NATICK/TR-15/007, definitions NATICK/TR-11/017): millimetres, mass in hectograms, the columns that the project uses.

/** One person's body measures: metres, mass in kilograms. */
export interface SurveyedPerson {
  readonly sex: Sex;
  readonly stature: number;
  readonly mass: number;
  readonly measures: Readonly<Record<PersonMeasure, number>>;
}

/** The survey's name for each measure; the knee's depth is the difference of two of its columns. */
export const SURVEY_COLUMNS: Readonly<Record<Exclude<PersonMeasure, 'kneeDepth'>, string>> = {
  acromialHeight: 'acromialheight',
  epicondyleHeight: 'lateralfemoralepicondyleheight',
  malleolusHeight: 'lateralmalleolusheight',
  acromionRadialeLength: 'acromionradialelength',
  radialeStylionLength: 'radialestylionlength',
  forearmGripLength: 'forearmcenterofgriplength',
  footLength: 'footlength',
  ballOfFootLength: 'balloffootlength',
  biacromialBreadth: 'biacromialbreadth',
  buttockKneeLength: 'buttockkneelength',
  kneeHeightSitting: 'kneeheightsitting',
  tibialHeight: 'tibialheight',
  poplitealHeight: 'poplitealheight',
  crotchHeight: 'crotchheight',
  sittingHeight: 'sittingheight',
  span: 'span',
  trochanterionHeight: 'trochanterionheight',
};

/** Every person of the file, in its order. */
export function surveyedPersons(): SurveyedPerson[] {
  const file = readFileSync(new URL('body-survey-persons.csv.gz', import.meta.url));
  const [head = '', ...lines] = gunzipSync(file).toString('utf8').trim().split('\n');
  const places = new Map(head.split(',').map((name, i) => [name, i]));
  return lines.map((line) => {
    const cells = line.split(',');
    const millimetres = (name: string) => Number(cells[places.get(name)!]);
    const measures = PERSON_MEASURES.map((measure): [PersonMeasure, number] => [
      measure,
      (measure === 'kneeDepth'
        ? millimetres('buttockkneelength') - millimetres('buttockpopliteallength')
        : millimetres(SURVEY_COLUMNS[measure])) / 1000,
    ]);
    return {
      sex: cells[0] === 'm' ? 'male' : 'female',
      stature: millimetres('stature') / 1000,
      mass: millimetres('mass_hg') / 10,
      measures: Object.fromEntries(measures) as SurveyedPerson['measures'],
    };
  });
}
