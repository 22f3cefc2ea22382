import { afterEach, describe, expect, it, vi } from 'vitest';
import type { OpenedFit } from '../../../../app/contract/records.ts';
import { trialSchema } from '../../../../core/trial/observation.ts';
import { keepTrial, TRIED_NOW } from '../../../../renderer/pages/trial/keep-trial.ts';
import { exampleFit } from '../../../core/example/example-fit.ts';

const opened: OpenedFit = { id: 'f', fit: exampleFit(), draftSavedAt: '2026-05-01T10:00:00Z', revisions: [] };
const trial = trialSchema.parse({ seat: 0, heldOn: '2026-05-02', observations: [], notes: 'cold' });
const full = { ok: false, error: { code: 'disk-full', message: 'The disk is full.', problems: [] } };

/** Stands in for the program: what each call is answered, in turn; gives the calls it heard. */
function program(...answers: readonly object[]): string[] {
  const heard: string[] = [];
  const call = async (name: string, input: { revisionId?: string }) => {
    heard.push(input.revisionId ? `${name} ${input.revisionId}` : name);
    return answers[heard.length - 1];
  };
  vi.stubGlobal('window', { kneelwright: { call } });
  return heard;
}
afterEach(() => vi.unstubAllGlobals());

describe('keeping a trial', () => {
  it('of a revision that is there takes one call', async () => {
    const heard = program({ ok: true, value: { id: 't' } });
    const result = await keepTrial(opened, { tried: 'r1', trial, onRevision: () => {} });
    expect(result).toMatchObject({ ok: true, value: { id: 't' } });
    expect(heard).toEqual(['trials.save r1']);
  });

  it('of the setting as it stands keeps that as a revision first, and says which', async () => {
    const heard = program({ ok: true, value: { id: 'r9' } }, { ok: true, value: { id: 't' } });
    const kept: string[] = [];
    await keepTrial(opened, { tried: TRIED_NOW, trial, onRevision: (id) => kept.push(id) });
    expect(heard).toEqual(['revisions.save', 'trials.save r9']);
    expect(kept).toEqual(['r9']);
  });

  it('tried again after the disk was full makes no second revision', async () => {
    const heard = program({ ok: true, value: { id: 'r9' } }, full, { ok: true, value: { id: 't' } });
    let tried = TRIED_NOW;
    const onRevision = (id: string) => {
      tried = id;
    };
    expect(await keepTrial(opened, { tried, trial, onRevision })).toEqual(full);
    expect(await keepTrial(opened, { tried, trial, onRevision })).toMatchObject({ ok: true });
    expect(heard).toEqual(['revisions.save', 'trials.save r9', 'trials.save r9']);
  });

  it('of which the revision is refused keeps nothing', async () => {
    const heard = program(full);
    expect(await keepTrial(opened, { tried: TRIED_NOW, trial, onRevision: () => {} })).toEqual(full);
    expect(heard).toEqual(['revisions.save']);
  });
});
