import { FIRST_TAPES } from '../../../core/body/measuring.ts';
import {
  type Athlete,
  TAPE_MEASURES,
  type TapeMeasure,
  tapeReading,
} from '../../../core/fit/athlete-schema.ts';
import { limitsOf } from '../../fields/limits-of.ts';
import { MeasureField } from '../../fields/measure-field.tsx';
import { say } from '../../language/messages.ts';
import { type AthleteEntries, withTape } from './athlete-entries.ts';

/** The six that say most about a kneeling figure come first; the others are a click away. */
const OTHERS: readonly TapeMeasure[] = TAPE_MEASURES.filter((measure) => !FIRST_TAPES.includes(measure));

/** Tape measures, each with how to take it. */
export function TapeMeasures(props: { entries: AthleteEntries; onChange: (tape: Athlete['tape']) => void }) {
  const { entries, onChange } = props;
  const field = (measure: TapeMeasure) => (
    <MeasureField
      key={measure}
      label={say(`tape.${measure}`)}
      hint={say(`tape.${measure}.how`)}
      kind="length"
      value={entries.tape[measure]?.valueM ?? null}
      {...limitsOf(tapeReading.shape.valueM)}
      onEnter={(valueM) => onChange(withTape(entries, measure, valueM))}
      onEmpty={() => onChange(withTape(entries, measure, null))}
    />
  );
  return (
    <section>
      <h2>{say('athlete.tape')}</h2>
      <p className="soft">{say('athlete.tape.about')}</p>
      <div className="entry-grid">{FIRST_TAPES.map(field)}</div>
      <details open={OTHERS.some((measure) => entries.tape[measure])}>
        <summary>{say('athlete.tape.more')}</summary>
        <div className="entry-grid">{OTHERS.map(field)}</div>
      </details>
    </section>
  );
}
