import { expect, it } from 'vitest';
import { photoStudySchema } from '../../../../core/photograph/photo-study-schema.ts';
import { NO_STEPS, recorded, redone, undone } from '../../../../renderer/pages/photograph/mark-steps.ts';
import { withMark, withMoment } from '../../../../renderer/pages/photograph/marked-study.ts';

const EMPTY = photoStudySchema.parse({ seat: 0, moment: 'ready', image: { width: 800, height: 600 } });
const ONE = withMark(EMPTY, 'joint.headTop', { u: 300, v: 100 });
const TWO = withMark(ONE, 'boat.bow', { u: 700, v: 400 });

it('marks are undone and done again step by step, and what is shown to the athlete stays', () => {
  const steps = recorded(recorded(NO_STEPS, 'Top of head', EMPTY), 'Bow, deck', ONE);
  const once = undone(steps, { ...TWO, shown: true })!;
  expect(once.study).toEqual({ ...ONE, shown: true });
  const twice = undone(once.steps, once.study)!;
  expect(twice.study).toEqual({ ...EMPTY, shown: true });
  expect(undone(twice.steps, twice.study)).toBeNull();
  const again = redone(twice.steps, twice.study)!;
  expect(redone(again.steps, again.study)!.study).toEqual({ ...TWO, shown: true });
});

it('a step after undo drops what could be done again', () => {
  const { steps, study } = undone(recorded(NO_STEPS, 'Top of head', EMPTY), ONE)!;
  expect(redone(recorded(steps, 'Bow, deck', study), TWO)).toBeNull();
});

it('what was applied no longer counts once its marks or its moment change', () => {
  const result = { angles: {} };
  const applied = { ...TWO, confirmed: true, result };
  const back = undone(recorded(NO_STEPS, 'Bow, deck', ONE), applied)!.study;
  for (const study of [back, withMoment(applied, 'catch')]) {
    expect(study.confirmed).toBe(false);
    expect(study.result).toBeUndefined();
  }
});
