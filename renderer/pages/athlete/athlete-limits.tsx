import { LIMITED_JOINTS } from '../../../core/document/athlete-schema.ts';
import { say } from '../../language/messages.ts';
import { Field } from '../../ui/form/field.tsx';
import type { FormState } from '../../ui/form/use-form.ts';
import type { AthleteValues } from './athlete-values.ts';

const joints = () => LIMITED_JOINTS.map((joint) => ({ value: joint, name: say(`joint.${joint}`) }));

/** Joints of this athlete that must not go past an angle. */
export function AthleteLimits({ form }: { form: FormState<AthleteValues> }) {
  const { limits } = form.values;
  return (
    <section>
      <h2>{say('athlete.limits')}</h2>
      <p className="soft">{say('athlete.limits.about')}</p>
      {limits.map((_, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a limit is its place in the list
        <div className="entry-row" key={i}>
          <Field
            as="select"
            {...form.at('limits', i, 'joint')}
            label={say('athlete.limits.joint')}
            options={joints()}
          />
          <Field as="angle" {...form.at('limits', i, 'maxDeg')} label={say('athlete.limits.angle')} />
          <Field as="text" {...form.at('limits', i, 'reason')} label={say('athlete.limits.reason')} />
          <button
            type="button"
            className="button words"
            onClick={() => form.change({ limits: limits.filter((_, other) => other !== i) })}
          >
            {say('athlete.limits.remove')}
          </button>
        </div>
      ))}
      <p>
        <button
          type="button"
          className="button"
          onClick={() =>
            form.change({ limits: [...limits, { joint: 'kneelingKneeFlexion', maxDeg: null, reason: '' }] })
          }
        >
          {say('athlete.limits.add')}
        </button>
      </p>
    </section>
  );
}
