import { railsSchema } from '../../../core/document/boat-schema.ts';
import { say } from '../../language/messages.ts';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { SelectField } from '../../ui/fields/select-field.tsx';
import type { FittingsProps } from './fittings-props.ts';
import { BLANK_RAILS, type RailsEntry } from './kept-entries.ts';

/** Pairs of rails at most, as the boat's document allows. */
const MOST_RAILS = 4;

/** Pairs of rails that pad or rest are fixed to. */
export function BoatRails({ entries, problems, onChange }: FittingsProps) {
  const { rails } = entries;
  const set = (at: number, part: Partial<RailsEntry>) =>
    onChange({ rails: rails.map((pair, i) => (i === at ? { ...pair, ...part } : pair)) });
  return (
    <section>
      <h2>{say('boat.rails')}</h2>
      <p className="soft">{say('boat.rails.about')}</p>
      {rails.map((pair, i) => {
        const field = (key: 'apartM' | 'heightM' | 'holeM', label: string) => (
          <MeasureField
            label={label}
            kind="length"
            value={pair[key]}
            {...limitsOf(railsSchema.shape[key])}
            onEnter={(value) => set(i, { [key]: value })}
            problem={pair[key] === null ? problems[`hardware.rails.${i}.${key}`] : null}
          />
        );
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a pair is its place in the list
          <div className="entry-row kept-row" key={i}>
            <SelectField
              label={say('boat.rails.for')}
              value={pair.fitting}
              onChange={(fitting) => set(i, { fitting })}
              options={(['kneePad', 'rearRest'] as const).map((value) => ({
                value,
                name: say(`boat.rails.${value}`),
              }))}
            />
            {field('apartM', say('boat.rails.apart'))}
            {field('heightM', say('boat.rails.height'))}
            {field('holeM', say('boat.rails.hole'))}
            <button
              type="button"
              className="button words"
              onClick={() => onChange({ rails: rails.filter((_, other) => other !== i) })}
            >
              {say('boat.rails.remove')}
            </button>
          </div>
        );
      })}
      <p>
        <button
          type="button"
          className="button"
          disabled={rails.length >= MOST_RAILS}
          onClick={() => onChange({ rails: [...rails, BLANK_RAILS] })}
        >
          {say('boat.rails.add')}
        </button>
      </p>
    </section>
  );
}
