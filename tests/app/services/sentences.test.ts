import { describe, expect, it } from 'vitest';
import { BUNDLE_PROBLEMS } from '../../../app/bundle/refusal.ts';
import { findingSentences, rebuildingSentence } from '../../../app/services/finding-sentences.ts';
import { refusalSentence, SENTENCES } from '../../../app/services/sentences.ts';
import { emptyCounts } from '../../../app/store/merge-counts.ts';
import type { StoreRefusal } from '../../../app/store/open-store.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';

/** One of each: the type makes a missing code an error here. */
const REFUSALS: { readonly [C in StoreRefusal['code']]: Extract<StoreRefusal, { code: C }> } = {
  'cannot-write': { code: 'cannot-write', folder: 'F' },
  'in-use': { code: 'in-use', file: 'F/k.db' },
  newer: { code: 'newer', file: 'F/k.db', found: 9, known: 1 },
  foreign: { code: 'foreign', file: 'F/k.db' },
  damaged: { code: 'damaged', file: 'F/k.db', detail: 'd' },
  'disk-full': { code: 'disk-full', folder: 'F' },
  'disk-error': { code: 'disk-error', file: 'F/k.db', detail: 'd' },
};

function spoken(entry: unknown): string {
  if (typeof entry === 'string') return entry;
  return (entry as (...given: unknown[]) => string)(['first thing', 'second thing']);
}

describe('what the program says', () => {
  it.each(Object.entries(SENTENCES))('of %s is whole sentences without jargon', (key, entry) => {
    const sentence = spoken(entry);
    if (key === 'choose-bundle') return expect(sentence).not.toMatch(/\.$/);
    expect(sentence).toMatch(/^\p{Lu}[^\n]*[.:]$/u);
    expect(sentence).not.toMatch(/SQLITE|errno|exception|null|undefined|\bWAL\b|zod/i);
  });

  it('of every failed call says what was kept or that nothing was changed', () => {
    const failures = [
      'bad-input',
      'no-such-row',
      'disk-full',
      'read-only',
      'disk-error',
      'internal',
      'too-large',
      'cancelled',
    ] as const;
    for (const key of notEmpty(failures)) {
      expect(spoken(SENTENCES[key]), key).toMatch(/Nothing was changed|What was saved before is still there/);
    }
  });

  it.each(Object.values(REFUSALS))(
    'of a store that is $code names it, says it was left, and what to do',
    (refusal) => {
      const sentence = refusalSentence(refusal);
      expect(sentence).toContain('F');
      expect(sentence).toMatch(/Nothing was changed|It was left unchanged/);
    },
  );

  const rebuilding = {
    cause: 'damaged' as const,
    quarantinedAt: 'F/set-aside/k.db',
    salvaged: emptyCounts(),
    unreadable: 2,
    brokenTables: ['fits'],
    pages: null,
    base: null,
    complete: false,
  };

  it('of a store put together again says what was found, what it was built from, and where to go on', () => {
    const base = { name: 'b', takenAt: '2026-03-01T08:00:00.000Z', cause: 'daily' as const, bytes: 1 };
    const whole = { ...rebuilding, cause: 'missing' as const, quarantinedAt: '', base, complete: true };
    expect(rebuildingSentence(whole, null)).toBe(
      'Data file missing. Restored from backup (2026-03-01) and journal; nothing is missing.',
    );
    const partly = rebuildingSentence(rebuilding, base.takenAt);
    expect(partly).toContain('Quarantined unchanged at F/set-aside/k.db');
    expect(partly).toMatch(/2 rows could not be read\..*Good backup: .*Restore it\.$/);
    const pages = { rows: 40, unreadableRows: 3, unreadablePages: 1 };
    expect(rebuildingSentence({ ...rebuilding, pages }, null)).toMatch(
      /40 rows found page by page\. 3 rows and 1 pages are lost/,
    );
    expect(rebuildingSentence(rebuilding, null)).toMatch(/Import a bundle\.$/);
  });

  it('of what was put right at the start is a sentence for each', () => {
    const lost = { table: 'fits', key: '["x"]', kind: 'changed' as const };
    const said = findingSentences({
      rebuilding: null,
      healing: { broughtBack: 3, restoredRows: 2, lostRows: [lost] },
      renewed: ['journal', 'manifest'],
      missing: 4,
      oddBackups: ['b'],
    });
    expect(said.map(([about]) => about)).toHaveLength(6);
    for (const [about, sentence] of said) expect(sentence, about).toMatch(/^[\p{Lu}\d].*\.$/u);
  });

  it('of a bundle is whole sentences', () => {
    for (const [code, key] of Object.entries(BUNDLE_PROBLEMS)) {
      expect(english.say(key, { file: 'fits/1.json', most: 2 }), code).toMatch(/^\S[^\n]*\.$/);
    }
  });
});
