import { expect, it } from 'vitest';
import { revisionMark } from '../../../../core/document/revision-mark.ts';
import { triedOptions } from '../../../../renderer/pages/trial/tried-options.ts';

const revision = (number: number) => ({
  id: `00000000-0000-4000-8000-${String(number).padStart(12, '0')}`,
  number,
  name: `Setting ${number}`,
  reason: '',
  savedAt: '2026-05-01T08:00:00.000Z',
  answers: [],
});
/** The newest 200 of 250 come with the fit. */
const revisions = Array.from({ length: 200 }, (_, i) => revision(250 - i));
const opened = { draftSavedAt: null, revisions };

it('calls a revision older than those that come with the fit by its own number and name', () => {
  const old = revision(7);
  const named = triedOptions(opened, old.id, old).find(({ value }) => value === old.id);
  expect(named?.name).toBe(`Rev. 7\u{a0}·\u{a0}${revisionMark(old.id)}, Setting 7`);
  const awaited = triedOptions(opened, old.id, null).find(({ value }) => value === old.id);
  expect(awaited?.name).toBe(revisionMark(old.id));
  expect(triedOptions(opened, revisions[0]!.id, revisions[0]!)).toHaveLength(200);
});
