import { useState } from 'react';
import type { Athlete } from '../../../core/document/athlete-schema.ts';
import { isMinor } from '../../../core/document/consent.ts';
import { ageOn } from '../../../core/units/age.ts';
import { call } from '../../client/client.ts';
import { today } from '../../language/dates.ts';
import { say, sayCount } from '../../language/messages.ts';
import { go } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/form/field.tsx';
import { Form } from '../../ui/form/form.tsx';
import { type FormState, useForm } from '../../ui/form/use-form.ts';
import { begunFor, returnAfterMaking } from '../new-fit/chosen.ts';
import { AthleteBands } from './athlete-bands.tsx';
import { AthleteConsents } from './athlete-consents.tsx';
import { AthleteLimits } from './athlete-limits.tsx';
import {
  ATHLETE_RULES,
  type AthleteValues,
  athleteValues,
  unasked,
  valuesWithChange,
} from './athlete-values.ts';
import { BodyNotes } from './body-notes.tsx';
import { TapeMeasures } from './tape-measures.tsx';

type AthleteFormState = FormState<AthleteValues>;

/** The athlete's form. Nothing is lost by leaving: unfinished values are there again next time. */
export function AthleteForm({ athlete, id }: { athlete: Athlete | null; id?: string }) {
  // What the form began with: the record may come anew while it is filled in.
  const [opened] = useState(athlete ?? undefined);
  const form: AthleteFormState = useForm(ATHLETE_RULES, {
    start: { ...athleteValues(athlete), ...(id ? {} : begunAthlete()) },
    keepAs: `athlete.${id ?? 'new'}`,
    shared: id !== undefined,
    changing: (values, part) => valuesWithChange(values, part, athlete),
    save: (made, _, before) =>
      call('athletes.save', {
        athlete: id ? { ...made, ...unasked(opened), id } : made,
        opened: opened && { ...opened, ...before },
      }),
    onSaved: ({ id: saved }, event) => {
      const next = returnAfterMaking('athlete', saved) ?? ({ page: 'athletes' } as const);
      go(asksToMeasure(event) ? { page: 'measure', id: saved } : next);
    },
  });
  return (
    <Form form={form} buttons={<Buttons isNew={!id} />}>
      <WhoFields form={form} />
      <BodyFields form={form} measuredBefore={athlete?.measuredOn} />
      <TapeMeasures form={form} />
      <AthleteLimits form={form} />
      <AthleteBands form={form} />
      <AthleteConsents form={form} />
    </Form>
  );
}

/** What was entered on the page of a first fit before its link led here. */
function begunAthlete(): Partial<AthleteValues> {
  const { name, side, statureM, massKg } = begunFor('athlete') ?? {};
  return name === undefined ? {} : { name, side, statureM, massKg };
}

function Buttons({ isNew }: { isNew: boolean }) {
  return (
    <>
      <Button look="chief" type="submit">
        {say('trial.keep')}
      </Button>
      {isNew && (
        <Button type="submit" value={MEASURE}>
          {say('athlete.save-and-measure')}
        </Button>
      )}
    </>
  );
}

const sides = () => (['left', 'right'] as const).map((value) => ({ value, name: say(`side.${value}`) }));
const sexes = () =>
  (['female', 'male', 'unspecified'] as const).map((value) => ({
    value,
    name: say(`athlete.sex.${value}`),
  }));

function WhoFields({ form }: { form: AthleteFormState }) {
  return (
    <section>
      <h2>{say('athlete.who')}</h2>
      <div className="entry-grid">
        <Field as="text" {...form.at('name')} label={say('athlete.name')} />
        <Field as="choice" {...form.at('side')} label={say('athlete.side')} options={sides()} />
        <Field
          as="date"
          {...form.at('bornOn')}
          label={say('athlete.born')}
          hint={bornHint(form.values.bornOn)}
        />
        <Field
          as="choice"
          {...form.at('sex')}
          label={say('athlete.sex')}
          hint={say('athlete.sex.hint')}
          options={sexes()}
        />
      </div>
    </section>
  );
}

function BodyFields({ form, measuredBefore }: { form: AthleteFormState; measuredBefore?: string }) {
  const { measuredOn } = form.values;
  const moved = measuredBefore !== undefined && measuredOn !== measuredBefore && measuredOn === today();
  return (
    <section>
      <h2>{say('athlete.body')}</h2>
      <div className="entry-grid">
        <Field
          as="length"
          {...form.at('statureM')}
          label={say('athlete.stature')}
          hint={say('athlete.stature.hint')}
        />
        <Field as="mass" {...form.at('massKg')} label={say('athlete.mass')} hint={say('athlete.mass.hint')} />
        <Field
          as="length"
          {...form.at('kneeBreadthM')}
          label={say('athlete.knee-breadth')}
          hint={say('athlete.knee-breadth.hint')}
        />
        <Field
          as="date"
          {...form.at('measuredOn')}
          label={say('athlete.measured')}
          hint={moved ? say('athlete.measured.moved') : undefined}
        />
      </div>
      <BodyNotes values={form.values} />
    </section>
  );
}

/** What a birth date comes to today; why to give one while there is none. */
function bornHint(bornOn: string): string {
  if (bornOn === '' || bornOn > today()) return say('athlete.born.hint');
  const age = sayCount('athlete.age', ageOn(bornOn, today()));
  return isMinor({ bornOn }, today()) ? say('athlete.age.minor', { age }) : age;
}

/** Value of the button that saves an athlete and goes on to the tape measures. */
const MEASURE = 'measure';

function asksToMeasure({ nativeEvent }: React.FormEvent): boolean {
  const { submitter } = nativeEvent as SubmitEvent;
  return submitter instanceof HTMLButtonElement && submitter.value === MEASURE;
}
