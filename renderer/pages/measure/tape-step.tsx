import { isJunior } from '../../../core/body/body-input.ts';
import { MOST_READINGS, type RepeatedReading } from '../../../core/body/repeated-reading.ts';
import type { TapePerson } from '../../../core/body/tape-percentile.ts';
import { type TapeMeasure, tapeReadingSchema } from '../../../core/document/athlete-schema.ts';
import { useFormat } from '../../display/use-display.ts';
import { say, words } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { beforeText } from './before-text.ts';
import { KeepAnyway } from './keep-anyway.tsx';
import { MeasurePicture } from './measure-picture.tsx';
import { isFarApart, oddName, type SessionTape, stepAfter, tapePerson, tapeTaken } from './session.ts';
import { type StepProps, stepName } from './step-props.ts';

const READING = ['measure.reading.1', 'measure.reading.2', 'measure.reading.3', 'measure.reading.4'] as const;

type TapeProps = StepProps & { measure: TapeMeasure };

/** One tape measure: where it is taken, twice or more, and what the readings come to. */
export function TapeStep(props: TapeProps) {
  const { record, session, change, onStep, measure } = props;
  const name = say(`tape.${measure}.name`);
  const person = tapePerson(session, record.athlete);
  const taken = tapeTaken(session, measure, person);
  const { read, odd, counted } = taken;
  return (
    <section className="stack">
      <h2>{name}</h2>
      <div className="measure-with-picture">
        <MeasurePicture
          measure={measure}
          spoken={say('measure.picture', {
            name,
            from: say(`tape.${measure}.from`),
            to: say(`tape.${measure}.to`),
          })}
        />
        <div className="stack">
          <HowToTake {...props} />
          <Readings {...props} another={isFarApart(taken)} />
          {odd.map((one) => (
            <OddReading
              key={one.value}
              {...one}
              person={person}
              onKeep={() => change({ keptAnyway: [...session.keptAnyway, oddName(measure, one.value)] })}
            />
          ))}
          <p role="status">{read && <ReadingText read={read} count={counted.length} />}</p>
          <p>
            <Button look="chief" onClick={() => onStep(stepAfter(measure))}>
              {say('measure.next', { step: stepName(stepAfter(measure)) })}
            </Button>
          </p>
        </div>
      </div>
    </section>
  );
}

function HowToTake({ record, measure }: TapeProps) {
  const format = useFormat();
  const [from, to] = [say(`tape.${measure}.from`), say(`tape.${measure}.to`)];
  const before = record.athlete.tape[measure];
  return (
    <div>
      <p>{words().sentences([say(`tape.${measure}.posture`), say('measure.from-to', { from, to })])}</p>
      <p className="soft">{say(`tape.${measure}.hint`)}</p>
      {before && <p className="soft">{beforeText(format.length(before.valueM), before.takenOn)}</p>}
    </div>
  );
}

/** Two readings, and one more as long as they are far apart. */
function Readings({ session, change, measure, another }: TapeProps & { another: boolean }) {
  const readings = session.readings[measure] ?? [];
  const wanted = another ? readings.length + 1 : 0;
  const fields = Math.min(MOST_READINGS, Math.max(2, readings.length, wanted));
  const set = (at: number, value: number | null) => {
    const next = Array.from({ length: Math.max(at + 1, readings.length) }, (_, i) =>
      i === at ? value : (readings[i] ?? null),
    );
    while (next.length > 0 && next.at(-1) === null) next.pop();
    change({ readings: { ...session.readings, [measure]: next } });
  };
  return (
    <div className="entry-row">
      {READING.slice(0, fields).map((key, i) => (
        <MeasureField
          key={key}
          label={say(key)}
          kind="length"
          value={readings[i] ?? null}
          {...limitsOf(tapeReadingSchema.shape.valueM)}
          onEnter={(value) => set(i, value)}
          onEmpty={() => set(i, null)}
        />
      ))}
    </div>
  );
}

function OddReading(props: SessionTape['odd'][number] & { person: TapePerson; onKeep: () => void }) {
  const { value, place, person } = props;
  const format = useFormat();
  return (
    <KeepAnyway
      why={say('measure.odd.tape', {
        value: format.length(value),
        stature: format.length(person.stature),
        low: format.length(place.low),
        high: format.length(place.high),
      })}
      more={isJunior(person) ? say('measure.odd.junior') : undefined}
      onKeep={props.onKeep}
    />
  );
}

function ReadingText({ read, count }: { read: RepeatedReading; count: number }) {
  const format = useFormat();
  const value = format.length(read.valueM, { exact: true });
  const doubt = format.length(read.sdM, { fine: true });
  if (count === 1) return say('measure.value.single', { value, doubt });
  const spread = format.length(read.spreadM, { fine: true });
  const taken = say('measure.value', { value, doubt, count, spread });
  const another = read.another ? say('measure.another', { limit: format.length(0.01) }) : '';
  return `${taken} ${another}`.trim();
}
