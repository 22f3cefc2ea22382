import { describe, expect, it } from 'vitest';
import { firstShowChoices } from '../../../../renderer/pages/show/show-choices.ts';

const revision = (number: number) => ({
  id: `id-${number}`,
  number,
  name: `Nr. ${number}`,
  reason: '',
  savedAt: '2026-05-04T16:20:00Z',
  answers: [],
});
const seat = { seat: 0, paper: 'A4', language: 'zh' } as const;
const first = (draftSavedAt: string | null, numbers: readonly number[]) =>
  firstShowChoices({ draftSavedAt, revisions: numbers.map(revision) }, seat);

describe('what is shown first', () => {
  it('is the present against the newest revision before it', () => {
    expect(first(null, [3, 2, 1])).toMatchObject({ now: 'present', before: 'id-2' });
  });

  it('is an unsaved state against the newest revision', () => {
    expect(first('2026-05-05T08:00:00Z', [3, 2, 1])).toMatchObject({ now: 'present', before: 'id-3' });
  });

  it('is the present alone where nothing is before it', () => {
    expect(first(null, [1]).before).toBeNull();
    expect(first('2026-05-05T08:00:00Z', []).before).toBeNull();
  });

  it('is from the side, without body mass', () => {
    expect(first(null, [1])).toMatchObject({
      view: 'side',
      showsMass: false,
      seat: 0,
      paper: 'A4',
      language: 'zh',
    });
  });
});
