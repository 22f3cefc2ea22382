import type { Format } from '../../../app/language/format.ts';
import { FIRST_TAPES } from '../../../core/body/measuring.ts';
import { type UnusualTape, unusualTapes } from '../../../core/body/unusual-tapes.ts';
import { TAPE_MEASURES, type TapeMeasure, tapeReadingSchema } from '../../../core/document/athlete-schema.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import type { FormState } from '../../ui/form/use-form.ts';
import { type AthleteValues, withTape } from './athlete-values.ts';

/** The six that say most about a kneeling figure come first; the others are a click away. */
const OTHERS: readonly TapeMeasure[] = TAPE_MEASURES.filter((measure) => !FIRST_TAPES.includes(measure));

/** Tape measures, each with how to take it. */
export function TapeMeasures({ form }: { form: FormState<AthleteValues> }) {
  const { values } = form;
  const format = useFormat();
  const unusual = unusualOf(values);
  const field = (measure: TapeMeasure) => (
    <div key={measure}>
      <MeasureField
        label={say(`tape.${measure}.name`)}
        hint={say('measure.from-to', { from: say(`tape.${measure}.from`), to: say(`tape.${measure}.to`) })}
        kind="length"
        value={values.tape[measure]?.valueM ?? null}
        {...limitsOf(tapeReadingSchema.shape.valueM)}
        onEnter={(valueM) => form.change({ tape: withTape(values, measure, valueM) })}
        onEmpty={() => form.change({ tape: withTape(values, measure, null) })}
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
      <details open={OTHERS.some((measure) => values.tape[measure])}>
        <summary>{say('athlete.tape.more')}</summary>
        <div className="entry-grid">{OTHERS.map(field)}</div>
      </details>
    </section>
  );
}

/** Tape measures of the values that few persons of that stature have; none while there is no stature. */
function unusualOf(values: AthleteValues): ReadonlyMap<TapeMeasure, UnusualTape> {
  const { statureM, massKg, bornOn, measuredOn } = values;
  if (statureM === null) return new Map();
  const days = { ...(bornOn ? { bornOn } : {}), ...(measuredOn ? { measuredOn } : {}) };
  const { sex, tape } = values;
  const mass = massKg === null ? {} : { massKg };
  return new Map(unusualTapes({ statureM, ...mass, sex, tape, ...days }).map((one) => [one.measure, one]));
}

/** Why a value is looked at again; it is kept as it stands. */
function unusualText({ place }: UnusualTape, format: Format): string {
  return say('athlete.unusual', { low: format.length(place.low), high: format.length(place.high) });
}
