import { expect, it } from 'vitest';
import { photoStudySchema } from '../../../../core/photograph/photo-study-schema.ts';
import { readPicture } from '../../../../core/photograph/read-picture.ts';
import { withMark } from '../../../../renderer/pages/photograph/marked-study.ts';
import { disagreeingMarks, isReadingOf } from '../../../../renderer/pages/photograph/use-reading.ts';
import { exampleFit } from '../../../core/example/example-fit.ts';
import { leaningMarks } from '../../../e2e/photographed.ts';

const fit = exampleFit();
const image = { width: 2000, height: 1500 };
const EMPTY = photoStudySchema.parse({ seat: 0, moment: 'ready', image });
const study = { ...EMPTY, ...leaningMarks(fit, image, 20) };
const readingOf = (marked: typeof study, others: readonly (typeof study)[] = []) =>
  ({ kind: 'read', answer: readPicture(fit, marked, others), of: { study: marked, others } }) as const;

it('a reading is not of marks that have moved since, and it is of the same marks shown to the athlete', () => {
  const reading = readingOf(EMPTY);
  expect(isReadingOf(reading, { ...EMPTY, shown: true }, [])).toBe(true);
  expect(isReadingOf(reading, withMark(EMPTY, 'joint.headTop', { u: 900, v: 300 }), [])).toBe(false);
  expect(isReadingOf(reading, { ...EMPTY, moment: 'catch' }, [])).toBe(false);
  expect(isReadingOf(reading, EMPTY, [EMPTY])).toBe(false);
  expect(isReadingOf({ kind: 'waiting' }, EMPTY, [])).toBe(false);
});

it('marks that disagree are told: of the boat, of joints, and of a picture that is joined', () => {
  expect(disagreeingMarks(readingOf(study, [study]))).toEqual([]);
  const { bow, ...boat } = study.boat;
  const { frontAnkle } = study.joints;
  const off = {
    ...study,
    boat: { ...boat, bow: { u: bow!.u, v: bow!.v + 90 } },
    joints: { ...study.joints, frontAnkle: { u: frontAnkle!.u + 60, v: frontAnkle!.v } },
  };
  const told = (reading: ReturnType<typeof readingOf>) =>
    disagreeingMarks(reading).map(({ name, isHere }) => ({ name, isHere }));
  expect(told(readingOf(off))).toEqual([
    { name: 'boat.bow', isHere: true },
    { name: 'joint.frontAnkle', isHere: true },
  ]);
  expect(told(readingOf(study, [off]))).toEqual([{ name: 'joint.frontAnkle', isHere: false }]);
});
