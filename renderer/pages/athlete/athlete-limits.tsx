import { jointLimit, LIMITED_JOINTS } from '../../../core/fit/athlete-schema.ts';
import { say } from '../../language/messages.ts';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import type { AthleteEntries } from './athlete-entries.ts';

type Limits = AthleteEntries['limits'];

/** Joints of this athlete that must not go past an angle. */
export function AthleteLimits(props: {
  limits: Limits;
  problems: Readonly<Record<string, string>>;
  onChange: (limits: Limits) => void;
}) {
  const { limits, problems, onChange } = props;
  const change = (at: number, part: Partial<Limits[number]>) =>
    onChange(limits.map((limit, i) => (i === at ? { ...limit, ...part } : limit)));
  return (
    <section>
      <h2>{say('athlete.limits')}</h2>
      <p className="soft">{say('athlete.limits.about')}</p>
      {limits.map((limit, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a limit is its place in the list
        <div className="entry-row" key={i}>
          <SelectField
            label={say('athlete.limits.joint')}
            value={limit.joint}
            onChange={(joint) => change(i, { joint })}
            options={LIMITED_JOINTS.map((joint) => ({ value: joint, name: say(`joint.${joint}`) }))}
          />
          <MeasureField
            label={say('athlete.limits.angle')}
            kind="angle"
            value={limit.maxDeg}
            {...limitsOf(jointLimit.shape.maxDeg)}
            onEnter={(maxDeg) => change(i, { maxDeg })}
            problem={problems[`limits.${i}.maxDeg`]}
          />
          <TextField
            label={say('athlete.limits.reason')}
            value={limit.reason}
            onChange={(reason) => change(i, { reason })}
            problem={problems[`limits.${i}.reason`]}
          />
          <button
            type="button"
            className="button words"
            onClick={() => onChange(limits.filter((_, other) => other !== i))}
          >
            {say('athlete.limits.remove')}
          </button>
        </div>
      ))}
      <p>
        <button
          type="button"
          className="button"
          onClick={() => onChange([...limits, { joint: 'kneelingKneeFlexion', maxDeg: null, reason: '' }])}
        >
          {say('athlete.limits.add')}
        </button>
      </p>
    </section>
  );
}
