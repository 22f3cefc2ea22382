import { describe, expect, it } from 'vitest';
import type { OpenedFit } from '../../../app/contract/records.ts';
import { momentsOf, PRESENT, presentOf } from '../../../renderer/document/use-fit-states.ts';
import { exampleFit } from '../../core/example/example-fit.ts';

const revision = (number: number) =>
  ({
    id: `00000000-0000-4000-8000-00000000000${number}`,
    number,
    name: `Nr. ${number}`,
    reason: '',
    savedAt: '2026-05-04T16:20:00Z',
  }) as OpenedFit['revisions'][number];

const moments = (draftSavedAt: string | null, numbers: readonly number[]) =>
  momentsOf({
    id: '00000000-0000-4000-8000-000000000000',
    fit: exampleFit(),
    draftSavedAt,
    revisions: numbers.map(revision),
  } as OpenedFit).map(({ key, revision: of }) => [
    key === PRESENT ? 'present' : 'revision',
    of?.number ?? null,
  ]);

describe('states of a fit to choose from', () => {
  it('are the newest revision as the present, then the others', () => {
    expect(moments(null, [3, 2, 1])).toEqual([
      ['present', 3],
      ['revision', 2],
      ['revision', 1],
    ]);
  });

  it('are an unsaved state as the present, then every revision', () => {
    expect(moments('2026-05-05T08:00:00Z', [2, 1])).toEqual([
      ['present', null],
      ['revision', 2],
      ['revision', 1],
    ]);
  });

  it('are the present alone where nothing was saved as a revision', () => {
    expect(moments('2026-05-05T08:00:00Z', [])).toEqual([['present', null]]);
  });
});

describe('a state that was kept nowhere', () => {
  it('is of now, and never of the first day that a computer knows', () => {
    const opened = { fit: exampleFit(), draftSavedAt: null, revisions: [] } as unknown as OpenedFit;
    const { keptAt } = presentOf(opened).revision;
    expect(new Date(keptAt).getFullYear()).toBeGreaterThan(2000);
  });
});
