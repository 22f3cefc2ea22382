import { FIRST_TAPES } from '../../../core/body/measuring.ts';
import { type UnusualTape, unusualTapes } from '../../../core/body/unusual-tapes.ts';
import {
  type Athlete,
  TAPE_MEASURES,
  type TapeMeasure,
  tapeReading,
} from '../../../core/fit/athlete-schema.ts';
import { useFormat } from '../../display/use-display.ts';
import type { Format } from '../../language/format.ts';
import { say } from '../../language/messages.ts';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { type AthleteEntries, withTape } from './athlete-entries.ts';

/** The six that say most about a kneeling figure come first; the others are a click away. */
const OTHERS: readonly TapeMeasure[] = TAPE_MEASURES.filter((measure) => !FIRST_TAPES.includes(measure));

/** Tape measures, each with how to take it. */
export function TapeMeasures(props: { entries: AthleteEntries; onChange: (tape: Athlete['tape']) => void }) {
  const { entries, onChange } = props;
  const format = useFormat();
  const unusual = unusualOf(entries);
  const field = (measure: TapeMeasure) => (
    <div key={measure}>
      <MeasureField
        label={say(`tape.${measure}`)}
        hint={say(`tape.${measure}.how`)}
        kind="length"
        value={entries.tape[measure]?.valueM ?? null}
        {...limitsOf(tapeReading.shape.valueM)}
        onEnter={(valueM) => onChange(withTape(entries, measure, valueM))}
        onEmpty={() => onChange(withTape(entries, measure, null))}
      />
      {unusual.has(measure) && (
        <p className="odd-mark field-hint">{unusualText(unusual.get(measure)!, format)}</p>
      )}
    </div>
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

/** Tape measures of the entries that few persons of that stature have; none while there is no stature. */
function unusualOf(entries: AthleteEntries): ReadonlyMap<TapeMeasure, UnusualTape> {
  const { statureM, massKg, bornOn, measuredOn } = entries;
  if (statureM === null) return new Map();
  const days = { ...(bornOn ? { bornOn } : {}), ...(measuredOn ? { measuredOn } : {}) };
  const { sex, tape } = entries;
  const mass = massKg === null ? {} : { massKg };
  return new Map(unusualTapes({ statureM, ...mass, sex, tape, ...days }).map((one) => [one.measure, one]));
}

/** Why a value is looked at again; it is kept as it stands. */
function unusualText({ place }: UnusualTape, format: Format): string {
  return say('athlete.unusual', { low: format.length(place.low), high: format.length(place.high) });
}
