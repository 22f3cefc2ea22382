import { afterAll, describe, expect, it } from 'vitest';
import { installDemo } from '../../../app/services/install-demo.ts';
import { openFit } from '../../../app/store/fits.ts';
import { timelineOf } from '../../../app/store/timeline.ts';
import { listTrials } from '../../../app/store/trials.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFolder } from '../temporary.ts';

const opened = openedProgram(temporaryFolder());
afterAll(() => opened.close());
const { program } = opened;
const installed = installDemo(program);
if (!installed.ok) throw new Error(installed.error.message);

describe('the demo club', () => {
  const { store } = program;
  const fit = openFit(store, installed.value.fitId);
  if (typeof fit === 'string') throw new Error(fit);

  it('tells of a trial on the first setting, and of what the second answers of it', () => {
    const [second, first] = fit.revisions;
    const [trial] = listTrials(store, fit.id);
    expect(trial).toMatchObject({ revisionId: first!.id, athleteId: fit.fit.seats[0]!.athlete!.id });
    expect(second!.answers).toEqual([{ trialId: trial!.id, observation: trial!.trial.observations[0] }]);
  });

  it('has it in the athlete’s timeline between the two', () => {
    const kinds = timelineOf(store, fit.fit.seats[0]!.athlete!.id!).map(({ kind }) => kind);
    expect(kinds).toEqual(['revision', 'trial', 'revision']);
  });

  it('is added once only', () => {
    expect(installDemo(program)).toMatchObject({ ok: false, error: { code: 'conflict' } });
  });
});
