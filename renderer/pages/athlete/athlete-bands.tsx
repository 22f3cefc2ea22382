import { BANDS } from '../../../core/evaluation/bands.ts';
import { QUANTITIES, QUANTITY_IDS, quantityDefinition } from '../../../core/evaluation/quantities.ts';
import { isYesOrNo } from '../../../core/text/sentences.ts';
import { useFormat } from '../../display/use-display.ts';
import { Explained } from '../../language/explained.tsx';
import { say } from '../../language/messages.ts';
import { bandText, quantityName } from '../../language/sentences.ts';
import { Button } from '../../ui/button.tsx';
import { EDGE_BOUNDS, edgeHint, edgeKind } from '../../ui/fields/band-edges.ts';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { Field } from '../../ui/form/field.tsx';
import type { FormState } from '../../ui/form/use-form.ts';
import type { AthleteValues } from './athlete-values.ts';

/** Everything of a seat that has a usual band, by name. */
const BANDED: readonly string[] = QUANTITY_IDS.filter(
  (id) => QUANTITIES[id].scope === 'seat' && !isYesOrNo(id) && BANDS.some(({ quantity }) => quantity === id),
);

/** Bands of an athlete's own in place of the usual ones, each with its reason. */
export function AthleteBands({ form }: { form: FormState<AthleteValues> }) {
  const { bands } = form.values;
  const free = BANDED.filter((id) => !bands.some(({ quantity }) => quantity === id));
  return (
    <section>
      <h2>
        <Explained text={say('athlete-bands.title')} />
      </h2>
      <p className="soft">{say('athlete-bands.about')}</p>
      {bands.map(({ quantity }, i) => (
        <BandFields key={quantity} form={form} at={i} choices={[quantity, ...free]} />
      ))}
      <p>
        <Button
          disabled={free.length === 0}
          onClick={() =>
            form.change({ bands: [...bands, { quantity: free[0]!, min: null, max: null, reason: '' }] })
          }
        >
          {say('athlete-bands.add')}
        </Button>
      </p>
    </section>
  );
}

function BandFields(props: { form: FormState<AthleteValues>; at: number; choices: readonly string[] }) {
  const { form, at, choices } = props;
  const format = useFormat();
  const { bands } = form.values;
  const id = bands[at]!.quantity;
  const unit = quantityDefinition(id)?.unit ?? '1';
  const kind = edgeKind(unit);
  const usual = BANDS.find(({ quantity }) => quantity === id);
  const measured = (quantity: string) =>
    bands.map((band, i) => (i === at ? { ...band, quantity, min: null, max: null } : band));
  return (
    <div>
      <div className="entry-row">
        <SelectField
          label={say('centimetre.value')}
          value={id}
          onChange={(quantity) => form.change({ bands: measured(quantity) })}
          options={choices.map((value) => ({ value, name: quantityName(value) }))}
        />
        <Field
          as={kind}
          {...form.at('bands', at, 'min')}
          {...EDGE_BOUNDS}
          label={say('athlete-bands.from')}
          problem={form.problems[`bands.${at}`] ?? null}
        />
        <Field as={kind} {...form.at('bands', at, 'max')} {...EDGE_BOUNDS} label={say('athlete-bands.to')} />
        <Field as="text" {...form.at('bands', at, 'reason')} label={say('athlete-page.why')} />
        <Button look="words" onClick={() => form.change({ bands: bands.filter((_, other) => other !== at) })}>
          {say('athlete-bands.remove')}
        </Button>
      </div>
      <p className="soft">
        {usual && say('athlete-bands.usual', { band: bandText(usual, unit, format.quantity(id)) })}{' '}
        {edgeHint(unit)}
      </p>
    </div>
  );
}
