import { describe, expect, it } from 'vitest';
import { openFit } from '../../../app/store/fits.ts';
import { athleteInSeat } from '../../../app/store/migrations/0009-who-knelt-when.ts';
import { listRevisions, REVISIONS_AT_ONCE } from '../../../app/store/revisions.ts';
import { timelineOf } from '../../../app/store/timeline.ts';
import { fill } from '../../bench/filled-store.ts';
import { temporaryStore } from '../temporary.ts';

const MORE = 30;
const ALL = REVISIONS_AT_ONCE + MORE;

describe('a fit with more revisions than come at once', () => {
  it('opens with the newest; the earlier ones are asked for, and each comes once', () => {
    const store = temporaryStore();
    const { fitId } = fill(store, { from: 0, to: ALL, each: { fits: 1, revisions: ALL } });
    const opened = openFit(store, fitId);
    if (typeof opened === 'string') throw new Error(opened);
    expect(opened.revisions).toHaveLength(REVISIONS_AT_ONCE);
    const earlier = listRevisions(store, fitId, { before: opened.revisions.at(-1)!.number });
    const numbers = [...opened.revisions, ...earlier].map(({ number }) => number);
    expect(numbers).toEqual(Array.from({ length: ALL }, (_, i) => ALL - i));
    expect(listRevisions(store, fitId, { before: 1 })).toEqual([]);
  });

  it('stands in the timeline as far as it is asked for', () => {
    const store = temporaryStore();
    const { athleteId } = fill(store, { from: 0, to: ALL, each: { fits: 1, revisions: ALL } });
    expect(timelineOf(store, athleteId, 7)).toHaveLength(7);
    expect(timelineOf(store, athleteId, ALL + 1)).toHaveLength(ALL);
  });

  it('is found for one athlete without a look at the revisions of others', () => {
    const plan = temporaryStore()
      .db.prepare(
        `EXPLAIN QUERY PLAN SELECT revision_id FROM revision_words
         WHERE ${athleteInSeat(2)} = ? ORDER BY saved_at DESC LIMIT 9`,
      )
      .all('somebody') as { detail: string }[];
    expect(plan.map(({ detail }) => detail).join('\n')).toMatch(
      /^SEARCH revision_words USING INDEX revisions_by_athlete_2 \(<expr>=\?\)$/,
    );
  });
});
