import { BANDS } from '../../../core/findings/bands.ts';
import { QUANTITIES, type QuantityId, quantityDefinition } from '../../../core/findings/quantities.ts';
import { bandText, isYesOrNo, quantityName } from '../../../core/findings/sentences.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import type { MeasureKind } from '../../ui/fields/measure-kinds.ts';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import type { AthleteEntries } from './athlete-entries.ts';

type Bands = AthleteEntries['bands'];

const KIND: Readonly<Record<string, MeasureKind>> = { m: 'length', rad: 'angle', kg: 'mass' };

/** Everything of a seat that has a usual band, by name. */
const BANDED = (Object.keys(QUANTITIES) as QuantityId[]).filter(
  (id) => QUANTITIES[id].scope === 'seat' && !isYesOrNo(id) && BANDS.some(({ quantity }) => quantity === id),
);

/** Bands of an athlete's own in place of the usual ones, each with its reason. */
export function AthleteBands(props: {
  bands: Bands;
  problems: Readonly<Record<string, string>>;
  onChange: (bands: Bands) => void;
}) {
  const { bands, problems, onChange } = props;
  const change = (at: number, part: Partial<Bands[number]>) =>
    onChange(bands.map((band, i) => (i === at ? { ...band, ...part } : band)));
  const free = BANDED.filter((id) => !bands.some(({ quantity }) => quantity === id));
  return (
    <section>
      <h2>{say('athlete-bands.title')}</h2>
      <p className="soft">{say('athlete-bands.about')}</p>
      {bands.map((band, i) => (
        <BandEntry
          key={band.quantity}
          band={band}
          choices={[band.quantity as QuantityId, ...free]}
          problems={problems}
          at={i}
          onChange={(part) => change(i, part)}
          onRemove={() => onChange(bands.filter((_, other) => other !== i))}
        />
      ))}
      <p>
        <button
          type="button"
          className="button"
          disabled={free.length === 0}
          onClick={() => onChange([...bands, { quantity: free[0]!, min: null, max: null, reason: '' }])}
        >
          {say('athlete-bands.add')}
        </button>
      </p>
    </section>
  );
}

function BandEntry(props: {
  band: Bands[number];
  at: number;
  choices: readonly QuantityId[];
  problems: Readonly<Record<string, string>>;
  onChange: (part: Partial<Bands[number]>) => void;
  onRemove: () => void;
}) {
  const { band, at, choices, problems, onChange } = props;
  const format = useFormat();
  const id = band.quantity as QuantityId;
  const unit = quantityDefinition(id)?.unit ?? '1';
  const usual = BANDS.find(({ quantity }) => quantity === id);
  const edge = (key: 'min' | 'max', label: string) => (
    <MeasureField
      label={label}
      kind={KIND[unit] ?? 'number'}
      value={band[key]}
      min={-1000}
      max={1000}
      onEnter={(value) => onChange({ [key]: value })}
      onEmpty={() => onChange({ [key]: null })}
      problem={key === 'min' ? problems[`bands.${at}`] : null}
    />
  );
  return (
    <div>
      <div className="entry-row">
        <SelectField
          label={say('athlete-bands.what')}
          value={id}
          onChange={(quantity) => onChange({ quantity, min: null, max: null })}
          options={choices.map((value) => ({ value, name: quantityName(value) }))}
        />
        {edge('min', say('athlete-bands.from'))}
        {edge('max', say('athlete-bands.to'))}
        <TextField
          label={say('athlete-bands.reason')}
          value={band.reason}
          onChange={(reason) => onChange({ reason })}
          problem={problems[`bands.${at}.reason`]}
        />
        <button type="button" className="button words" onClick={props.onRemove}>
          {say('athlete-bands.remove')}
        </button>
      </div>
      <p className="soft">
        {usual && say('athlete-bands.usual', { band: bandText(usual, unit, format.quantity(id)) })}{' '}
        {unit === '1' && say('athlete-bands.share')}
      </p>
    </div>
  );
}
