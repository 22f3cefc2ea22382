import { LIMITED_JOINTS } from '../../../core/document/athlete-schema.ts';
import { say } from '../../language/messages.ts';
import { EntryRows } from '../../ui/form/entry-rows.tsx';
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
      <EntryRows
        rows={limits}
        blank={{ joint: 'kneelingKneeFlexion', maxDeg: null, reason: '' }}
        onChange={(rows) => form.change({ limits: rows })}
        add="athlete.limits.add"
        remove="athlete.limits.remove"
        fields={(i) => (
          <>
            <Field
              as="select"
              {...form.at('limits', i, 'joint')}
              label={say('athlete.limits.joint')}
              options={joints()}
            />
            <Field as="angle" {...form.at('limits', i, 'maxDeg')} label={say('athlete.limits.angle')} />
            <Field as="text" {...form.at('limits', i, 'reason')} label={say('athlete-page.why')} />
          </>
        )}
      />
    </section>
  );
}
