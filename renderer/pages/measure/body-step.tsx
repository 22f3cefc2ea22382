import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import type { BodySlip } from '../../../core/growth/body-change.ts';
import { useFormat } from '../../display/use-display.ts';
import { dateText, today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { KeepAnyway } from './keep-anyway.tsx';
import { MeasurePicture } from './measure-picture.tsx';
import { isEarlier, oddName, slipsOf, stepAfter } from './session.ts';
import { type StepProps, stepName } from './step-props.ts';

const { statureM, massKg } = athleteSchema.shape;

/** Stature and mass, held against the last ones. */
export function BodyStep({ record: { athlete }, session, change, onStep }: StepProps) {
  const format = useFormat();
  const odd = slipsOf(session, athlete).filter((slip) => !isKept(slip));
  const day = dateText(athlete.measuredOn);

  function isKept(slip: BodySlip): boolean {
    return session.keptAnyway.includes(nameOf(slip));
  }
  function nameOf(slip: BodySlip): string {
    const of = slip === 'mass-jumped' ? 'massKg' : 'statureM';
    return oddName(of, session[of] ?? 0);
  }
  function why(slip: BodySlip): string {
    const stature = session.statureM ?? 0;
    if (slip === 'shot-up') {
      const more = format.length(stature - athlete.statureM);
      return say('measure.odd.shot-up', { value: format.length(stature), more, day });
    }
    return slip === 'shrunk'
      ? say('measure.odd.shrunk', {
          value: format.length(stature),
          before: format.length(athlete.statureM),
          day,
        })
      : say('measure.odd.mass-jumped', {
          value: format.mass(session.massKg ?? 0),
          before: format.mass(athlete.massKg),
          day,
        });
  }

  return (
    <section className="stack">
      <h2>{stepName('body')}</h2>
      <div className="measure-with-picture">
        <MeasurePicture measure="stature" spoken={say('measure.picture.body')} />
        <div className="stack">
          <TextField
            label={say('measure.on')}
            type="date"
            value={session.takenOn}
            onChange={(takenOn) => takenOn && change({ takenOn })}
            problem={session.takenOn > today() ? say('field.date-ahead') : null}
          />
          {isEarlier(session, athlete) && <p className="soft">{say('measure.older', { day })}</p>}
          <MeasureField
            label={say('athlete.stature')}
            kind="length"
            value={session.statureM}
            {...limitsOf(statureM)}
            hint={`${say('athlete.stature.hint')} ${say('measure.before', { value: format.length(athlete.statureM), day })}`}
            onEnter={(value) => change({ statureM: value })}
            onEmpty={() => change({ statureM: null })}
          />
          <MeasureField
            label={say('athlete.mass')}
            kind="mass"
            value={session.massKg}
            {...limitsOf(massKg)}
            hint={`${say('athlete.mass.hint')} ${say('measure.before', { value: format.mass(athlete.massKg), day })}`}
            onEnter={(value) => change({ massKg: value })}
            onEmpty={() => change({ massKg: null })}
          />
          {odd.map((slip) => (
            <KeepAnyway
              key={slip}
              why={why(slip)}
              onKeep={() => change({ keptAnyway: [...session.keptAnyway, nameOf(slip)] })}
            />
          ))}
          <p>
            <button type="button" className="button chief" onClick={() => onStep(stepAfter('body'))}>
              {say('measure.next', { step: stepName(stepAfter('body')) })}
            </button>
          </p>
        </div>
      </div>
    </section>
  );
}
