import { useState } from 'react';
import type { PhotoRecord } from '../../../app/contract/photos.ts';
import type { CallError } from '../../../app/contract/result.ts';
import type { OwnNeutral } from '../../../core/document/neutral-schema.ts';
import { type ConfirmedLook, learnNeutral } from '../../../core/photograph/learn-neutral.ts';
import { call } from '../../client/client.ts';
import { useAthlete } from '../../client/use-record.ts';
import { dateText, today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { Tick } from '../../ui/fields/tick.tsx';

/** An athlete's own neutral posture: learnt from the applied pictures, dated, used in later fits or not. */
export function Remembered({ athleteId, pictures }: { athleteId: string; pictures: readonly PhotoRecord[] }) {
  const { record, reload } = useAthlete(athleteId);
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const applied = pictures.filter(
    ({ study }) => study?.confirmed && study.moment === 'ready' && study.result?.readings,
  );
  if (!record) return null;
  const { neutral } = record.athlete;
  if (applied.length === 0 && !neutral) return null;

  async function keep(next: OwnNeutral): Promise<void> {
    const saved = await call('athletes.save', {
      athlete: { ...record!.athlete, id: athleteId, neutral: next },
      opened: record!.athlete,
    });
    setRefusal(saved.ok ? null : saved.error);
    reload();
  }

  async function learn(): Promise<void> {
    const looks = await Promise.all(applied.map(lookOf));
    const learnt = learnNeutral(
      looks.flatMap((look) => look ?? []),
      today(),
    );
    if (learnt) await keep(learnt);
  }

  return (
    <section className="stack">
      <h3>{say('photograph.remembered')}</h3>
      <p className="soft">
        {neutral
          ? say('photograph.remembered.is', { day: dateText(neutral.learntOn), count: neutral.pictures })
          : say('photograph.remembered.about')}
      </p>
      {neutral && (
        <Tick
          name={say('photograph.remembered.use')}
          isOn={!neutral.setAside}
          onChange={(used) => void keep({ ...neutral, setAside: !used })}
        />
      )}
      {applied.length > 0 && (
        <p>
          <Button onClick={() => void learn()}>
            {say('photograph.remembered.learn', { count: applied.length })}
          </Button>
        </p>
      )}
      {refusal && <ErrorMessage error={refusal} />}
    </section>
  );
}

/** A picture with the fit that it was applied to, as that stands now; null where the fit is gone. */
async function lookOf({ fitId, study }: PhotoRecord): Promise<ConfirmedLook | null> {
  const opened = fitId ? await call('fits.open', { id: fitId }) : null;
  if (!opened?.ok || !study?.result?.readings) return null;
  return { fit: opened.value.fit, seat: study.seat, readings: study.result.readings };
}
