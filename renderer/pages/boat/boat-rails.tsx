import { say } from '../../language/messages.ts';
import { EntryRows } from '../../ui/form/entry-rows.tsx';
import { Field } from '../../ui/form/field.tsx';
import { BLANK_RAILS } from './blank-pieces.ts';
import type { BoatSectionProps } from './boat-values.ts';

/** Pairs of rails at most, as the boat's document allows. */
const MOST_RAILS = 4;

const fittings = () =>
  (['kneePad', 'rearRest'] as const).map((value) => ({
    value,
    name: say(`boat.rails.${value}`),
  }));

/** Pairs of rails that pad or rest are fixed to. */
export function BoatRails({ form }: BoatSectionProps) {
  const { rails } = form.values;
  return (
    <section>
      <h2>{say('boat.rails')}</h2>
      <EntryRows
        rows={rails}
        blank={BLANK_RAILS}
        most={MOST_RAILS}
        className="kept-row"
        onChange={(rows) => form.change({ rails: rows })}
        add="boat.rails.add"
        remove="boat.rails.remove"
        fields={(i) => (
          <>
            <Field
              as="select"
              {...form.at('rails', i, 'fitting')}
              label={say('boat.rails.for')}
              options={fittings()}
            />
            <Field as="length" {...form.at('rails', i, 'apartM')} label={say('boat.rails.apart')} />
            <Field as="length" {...form.at('rails', i, 'heightM')} label={say('boat.rails.height')} />
            <Field as="length" {...form.at('rails', i, 'holeM')} label={say('boat.rails.hole')} />
            <Field as="length" {...form.at('rails', i, 'aftFromSternM')} label={say('boat.floorboard.aft')} />
            <Field
              as="length"
              {...form.at('rails', i, 'foreFromSternM')}
              label={say('boat.floorboard.fore')}
            />
          </>
        )}
      />
    </section>
  );
}
