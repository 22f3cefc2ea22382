import type { Format } from '../../../app/language/format.ts';
import { type Athlete, athleteSchema } from '../../../core/document/athlete-schema.ts';
import type { BodySlip } from '../../../core/growth/body-change.ts';
import { useFormat } from '../../display/use-display.ts';
import { dateText, today } from '../../language/dates.ts';
import { say, words } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { beforeText } from './before-text.ts';
import { KeepAnyway } from './keep-anyway.tsx';
import { MeasurePicture } from './measure-picture.tsx';
import { isEarlier, type MeasuringSession, oddName, slipsOf, stepAfter } from './session.ts';
import { type StepProps, stepName } from './step-props.ts';

const { statureM, massKg } = athleteSchema.shape;

/** How a slip is remembered once it is kept anyway. */
function slipName(slip: BodySlip, session: MeasuringSession): string {
  const of = slip === 'mass-jumped' ? 'massKg' : 'statureM';
  return oddName(of, session[of] ?? 0);
}

/** Why a stature or mass is more likely a slip than a body. */
function slipText(
  slip: BodySlip,
  { athlete, session }: { athlete: Athlete; session: MeasuringSession },
  format: Format,
) {
  const day = dateText(athlete.measuredOn);
  const stature = session.statureM ?? 0;
  const value = format.length(stature);
  switch (slip) {
    case 'shot-up':
      return say('measure.odd.shot-up', { value, more: format.length(stature - athlete.statureM), day });
    case 'shrunk':
      return say('measure.odd.shrunk', { value, before: format.length(athlete.statureM), day });
    case 'mass-jumped':
      return say('measure.odd.mass-jumped', {
        value: format.mass(session.massKg ?? 0),
        before: format.mass(athlete.massKg),
        day,
      });
  }
}

/** Stature and mass, held against the last ones. */
export function BodyStep({ record: { athlete }, session, change, onStep }: StepProps) {
  const format = useFormat();
  const odd = slipsOf(session, athlete).filter(
    (slip) => !session.keptAnyway.includes(slipName(slip, session)),
  );
  const day = dateText(athlete.measuredOn);
  return (
    <section className="stack">
      <h2>{stepName('body')}</h2>
      <div className="measure-with-picture">
        <MeasurePicture measure="stature" spoken={say('measure.picture.body')} />
        <div className="stack">
          <TextField
            label={say('athlete.measured')}
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
            hint={words().sentences([
              say('athlete.stature.hint'),
              beforeText(format.length(athlete.statureM), athlete.measuredOn),
            ])}
            onEnter={(value) => change({ statureM: value })}
            onEmpty={() => change({ statureM: null })}
          />
          <MeasureField
            label={say('athlete.mass')}
            kind="mass"
            value={session.massKg}
            {...limitsOf(massKg)}
            hint={words().sentences([
              say('athlete.mass.hint'),
              beforeText(format.mass(athlete.massKg), athlete.measuredOn),
            ])}
            onEnter={(value) => change({ massKg: value })}
            onEmpty={() => change({ massKg: null })}
          />
          {odd.map((slip) => (
            <KeepAnyway
              key={slip}
              why={slipText(slip, { athlete, session }, format)}
              onKeep={() => change({ keptAnyway: [...session.keptAnyway, slipName(slip, session)] })}
            />
          ))}
          <Onward onStep={onStep} />
        </div>
      </div>
    </section>
  );
}

/** The button to the next step. */
function Onward({ onStep }: Pick<StepProps, 'onStep'>) {
  const next = stepAfter('body');
  return (
    <p>
      <Button look="chief" onClick={() => onStep(next)}>
        {say('measure.next', { step: stepName(next) })}
      </Button>
    </p>
  );
}
