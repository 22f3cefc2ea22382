import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/form/field.tsx';
import { BLANK_POINT } from './blank-pieces.ts';
import type { BoatSectionProps } from './boat-values.ts';
import { ProfileSketch } from './profile-sketch.tsx';

/** Heights of the floorboard along the boat, where it is not level. */
export function FloorProfile({ form }: BoatSectionProps) {
  const { profile, lengthM } = form.values;
  const few = form.problems.profile;
  return (
    <section>
      <h2>{say('boat.profile')}</h2>
      <p className="soft">{say('boat.profile.about')}</p>
      {profile.map((_, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a point is its place in the list
        <fieldset className="entry-row kept-row" key={i}>
          <legend>{say('boat.profile.point', { number: i + 1 })}</legend>
          <Field
            as="length"
            {...form.at('profile', i, 'fromSternM')}
            max={lengthM ?? 15}
            label={say('boat.holes.from-stern')}
          />
          <Field as="length" {...form.at('profile', i, 'heightM')} label={say('measure.rearRest.heightM')} />
          <Button
            look="words"
            onClick={() => form.change({ profile: profile.filter((_, other) => other !== i) })}
          >
            {say('boat.profile.remove', { number: i + 1 })}
          </Button>
        </fieldset>
      ))}
      {few && <p className="field-problem">{few}</p>}
      <ProfileSketch points={profile} />
      <p>
        <Button onClick={() => form.change({ profile: [...profile, BLANK_POINT] })}>
          {say('boat.profile.add')}
        </Button>
      </p>
    </section>
  );
}
