import { useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import { ageOn } from '../../../core/body/age.ts';
import { type Athlete, athleteSchema } from '../../../core/fit/athlete-schema.ts';
import { isMinor } from '../../../core/fit/consent.ts';
import { call } from '../../client/client.ts';
import { today } from '../../language/dates.ts';
import { say, sayCount } from '../../language/messages.ts';
import { go } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { useKeptEntries } from '../../ui/fields/use-kept-entries.ts';
import { returnAfterMaking } from '../new-fit/chosen.ts';
import { AthleteBands } from './athlete-bands.tsx';
import { AthleteConsents } from './athlete-consents.tsx';
import { type AthleteEntries, athleteOf, entriesOf, withChange } from './athlete-entries.ts';
import { AthleteLimits } from './athlete-limits.tsx';
import { BodyNotes } from './body-notes.tsx';
import { TapeMeasures } from './tape-measures.tsx';

const { statureM, massKg } = athleteSchema.shape;

/** The athlete's entries. Nothing is lost by leaving: unfinished entries are there again next time. */
export function AthleteForm({ athlete, id }: { athlete: Athlete | null; id?: string }) {
  const { entries, change: enter, discard } = useKeptEntries(`athlete.${id ?? 'new'}`, entriesOf(athlete));
  const change = (part: Partial<AthleteEntries>) => enter(withChange(entries, part, athlete));
  const dayMoved = athlete?.measuredOn !== undefined && entries.measuredOn !== athlete.measuredOn;
  const [problems, setProblems] = useState<Readonly<Record<string, string>>>({});
  const [refusal, setRefusal] = useState<CallError | null>(null);

  async function save(event: React.FormEvent): Promise<void> {
    event.preventDefault();
    const made = athleteOf(entries, id);
    if ('problems' in made) {
      setProblems(made.problems);
      return;
    }
    setProblems({});
    const result = await call('athletes.save', { athlete: made.athlete });
    if (!result.ok) return setRefusal(result.error);
    discard();
    const next = returnAfterMaking('athlete', result.value.id) ?? ({ page: 'athletes' } as const);
    go(asksToMeasure(event) ? { page: 'measure', id: result.value.id } : next);
  }

  return (
    <form className="entries" onSubmit={save} noValidate>
      <section>
        <h2>{say('athlete.who')}</h2>
        <div className="entry-grid">
          <TextField
            label={say('athlete.name')}
            value={entries.name}
            onChange={(name) => change({ name })}
            problem={problems.name}
            required
          />
          <ChoiceField
            label={say('athlete.side')}
            value={entries.side}
            onChange={(side) => change({ side })}
            problem={problems.side}
            options={[
              { value: 'left', name: say('side.left') },
              { value: 'right', name: say('side.right') },
            ]}
          />
          <TextField
            label={say('athlete.born')}
            type="date"
            value={entries.bornOn}
            onChange={(bornOn) => change({ bornOn })}
            problem={problems.bornOn}
            hint={bornHint(entries.bornOn)}
          />
          <ChoiceField
            label={say('athlete.sex')}
            value={entries.sex}
            onChange={(sex) => change({ sex })}
            hint={say('athlete.sex.hint')}
            options={[
              { value: 'female', name: say('athlete.sex.female') },
              { value: 'male', name: say('athlete.sex.male') },
              { value: 'unspecified', name: say('athlete.sex.unspecified') },
            ]}
          />
        </div>
      </section>
      <section>
        <h2>{say('athlete.body')}</h2>
        <div className="entry-grid">
          <MeasureField
            label={say('athlete.stature')}
            kind="length"
            value={entries.statureM}
            {...limitsOf(statureM)}
            onEnter={(entered) => change({ statureM: entered })}
            hint={say('athlete.stature.hint')}
            problem={entries.statureM === null ? problems.statureM : null}
            required
          />
          <MeasureField
            label={say('athlete.mass')}
            kind="mass"
            value={entries.massKg}
            {...limitsOf(massKg)}
            onEnter={(entered) => change({ massKg: entered })}
            hint={say('athlete.mass.hint')}
            problem={entries.massKg === null ? problems.massKg : null}
            required
          />
          <TextField
            label={say('athlete.measured')}
            type="date"
            value={entries.measuredOn}
            onChange={(measuredOn) => change({ measuredOn })}
            problem={problems.measuredOn}
            hint={dayMoved && entries.measuredOn === today() ? say('athlete.measured.moved') : undefined}
          />
        </div>
        <BodyNotes entries={entries} />
      </section>
      <TapeMeasures entries={entries} onChange={(tape) => change({ tape })} />
      <AthleteLimits limits={entries.limits} problems={problems} onChange={(limits) => change({ limits })} />
      <AthleteBands bands={entries.bands} problems={problems} onChange={(bands) => change({ bands })} />
      <AthleteConsents entries={entries} problems={problems} onChange={(consent) => change({ consent })} />
      {refusal && <ErrorMessage error={refusal} />}
      <p className="row">
        <button className="button chief" type="submit">
          {say('athlete.save')}
        </button>
        {!id && (
          <button className="button" type="submit" value={MEASURE}>
            {say('athlete.save-and-measure')}
          </button>
        )}
      </p>
    </form>
  );
}

/** What a birth date comes to today; why to give one while there is none. */
function bornHint(bornOn: string): string {
  if (bornOn === '' || bornOn > today()) return say('athlete.born.hint');
  const age = sayCount('athlete.age', ageOn(bornOn, today()));
  return isMinor({ bornOn }, today()) ? say('athlete.age.minor', { age }) : age;
}

/** Value of the button that keeps an athlete and goes on to the tape measures. */
const MEASURE = 'measure';

function asksToMeasure({ nativeEvent }: React.FormEvent): boolean {
  const { submitter } = nativeEvent as SubmitEvent;
  return submitter instanceof HTMLButtonElement && submitter.value === MEASURE;
}
