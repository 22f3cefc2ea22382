import { readFileSync } from 'node:fs';
import { PERSON_MEASURES, type PersonMeasure } from '../../core/body/survey-correlations.ts';
import type { SurveyMeasure } from '../../core/body/survey-table.ts';

// 93 men of the public release of ANSUR II (US Army 2012; NATICK/TR-15/007), as released, millimetres; nothing that says
// who they are is kept. Rows are the first of the file and a run from its middle: 29 men of one measuring post
// ('post-1') and 32 of another ('post-2'), from whom the sampled correlations are derived, and 32 more of the first post who
// are held out of everything ('held-out').

/** One man's body measures, metres. */
export interface SampleMan {
  readonly group: string;
  readonly stature: number;
  readonly measures: Readonly<Record<PersonMeasure, number>>;
}

const COLUMNS: Readonly<Record<Exclude<PersonMeasure, 'kneeDepth'>, string>> = {
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

/** All 93 men. */
export function sampleMen(): SampleMan[] {
  const text = readFileSync(new URL('body-men-sample.csv', import.meta.url), 'utf8');
  const [head = '', ...lines] = text.trim().split('\n');
  const names = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',');
    const metresOf = (name: string) => Number(cells[names.indexOf(name)]) / 1000;
    const entries = PERSON_MEASURES.map((measure): [SurveyMeasure, number] => [
      measure,
      measure === 'kneeDepth'
        ? metresOf('buttockkneelength') - metresOf('buttockpopliteallength')
        : metresOf(COLUMNS[measure]),
    ]);
    return {
      group: cells[0] ?? '',
      stature: metresOf('stature'),
      measures: Object.fromEntries(entries) as SampleMan['measures'],
    };
  });
}
