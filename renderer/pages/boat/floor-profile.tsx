import { floorboardSchema } from '../../../core/document/boat-schema.ts';
import { say } from '../../language/messages.ts';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import type { FittingsProps } from './fittings-props.ts';
import { BLANK_POINT, type ProfilePoint } from './kept-entries.ts';
import { ProfileSketch } from './profile-sketch.tsx';

/** Heights of the floorboard along the boat, where it is not level. */
export function FloorProfile({ entries, problems, onChange }: FittingsProps) {
  const { profile } = entries;
  const set = (at: number, part: Partial<ProfilePoint>) =>
    onChange({ profile: profile.map((point, i) => (i === at ? { ...point, ...part } : point)) });
  const wrong = (value: number | null, field: string) => (value === null ? problems[field] : null);
  return (
    <section>
      <h2>{say('boat.profile')}</h2>
      <p className="soft">{say('boat.profile.about')}</p>
      {profile.map((point, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a point is its place in the list
        <fieldset className="entry-row kept-row" key={i}>
          <legend>{say('boat.profile.point', { number: i + 1 })}</legend>
          <MeasureField
            label={say('boat.profile.from-stern')}
            kind="length"
            value={point.fromSternM}
            min={0}
            max={entries.lengthM ?? 15}
            onEnter={(fromSternM) => set(i, { fromSternM })}
            problem={wrong(point.fromSternM, `floorboard.profile.${i}.xM`)}
          />
          <MeasureField
            label={say('boat.profile.height')}
            kind="length"
            value={point.heightM}
            {...limitsOf(floorboardSchema.shape.heightM)}
            onEnter={(heightM) => set(i, { heightM })}
            problem={wrong(point.heightM, `floorboard.profile.${i}.heightM`)}
          />
          <button
            type="button"
            className="button words"
            onClick={() => onChange({ profile: profile.filter((_, other) => other !== i) })}
          >
            {say('boat.profile.remove', { number: i + 1 })}
          </button>
        </fieldset>
      ))}
      {problems['floorboard.profile'] && profile.length === 1 && (
        <p className="field-problem" role="alert">
          {problems['floorboard.profile']}
        </p>
      )}
      <ProfileSketch points={profile} />
      <p>
        <button
          type="button"
          className="button"
          onClick={() => onChange({ profile: [...profile, BLANK_POINT] })}
        >
          {say('boat.profile.add')}
        </button>
      </p>
    </section>
  );
}
