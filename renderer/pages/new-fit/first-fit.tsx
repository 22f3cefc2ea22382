import { useRef } from 'react';
import type { z } from 'zod';
import type { CallResult } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { say } from '../../language/messages.ts';
import { go, hrefOf } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { CautionList } from '../../ui/caution-list.tsx';
import { Field } from '../../ui/form/field.tsx';
import { Form } from '../../ui/form/form.tsx';
import { type FormState, useForm } from '../../ui/form/use-form.ts';
import { forgetChosen, newFitStore } from './chosen.ts';
import {
  athleteAndBoat,
  FIRST_FIT,
  FIRST_FIT_RULES,
  FIRST_FIT_START,
  type FirstFitValues,
  withClassNumbers,
} from './first-fit-rules.ts';
import { fitName } from './fit-name.ts';
import { makeFit } from './make-fit.ts';
import { usualOptions } from './usual-options.ts';

const sides = () => (['left', 'right'] as const).map((value) => ({ value, name: say(`side.${value}`) }));

type Entered = z.infer<(typeof FIRST_FIT_RULES)['schema']>;

/** What was saved before something was refused: the next try saves the same records again, not second ones. */
interface SavedBefore {
  athleteId?: string;
  boatId?: string;
}

/** Saves athlete and boat, and begins a fit of both; the first refusal stops it. */
async function begin(entered: Entered, before: SavedBefore): Promise<CallResult<{ id: string }>> {
  const made = athleteAndBoat(entered);
  const { athleteId, boatId } = before;
  const athlete = await call('athletes.save', {
    athlete: athleteId ? { ...made.athlete, id: athleteId } : made.athlete,
  });
  if (!athlete.ok) return athlete;
  before.athleteId = athlete.value.id;
  const boat = await call('boats.save', { boat: boatId ? { ...made.boat, id: boatId } : made.boat });
  if (!boat.ok) return boat;
  before.boatId = boat.value.id;
  const starters = [
    { athlete: { ...athlete.value.athlete, id: athlete.value.id }, side: made.athlete.side },
    ...boat.value.boat.seats.slice(1).map(() => ({ athlete: null, side: made.athlete.side })),
  ];
  const name = fitName(boat.value.boat.name, [made.athlete.name]);
  const fit = makeFit({ name, boat: { ...boat.value.boat, id: boat.value.id }, starters });
  return call('fits.create', { fit });
}

/** A first fit where there is neither athlete nor boat: who, in a boat of which class, and straight to the bench. */
export function FirstFit() {
  const before = useRef<SavedBefore>({});
  const form = useForm(FIRST_FIT_RULES, {
    start: FIRST_FIT_START,
    keepAs: FIRST_FIT,
    changing: withClassNumbers,
    save: (entered) => begin(entered, before.current),
    onSaved: ({ id }) => {
      forgetChosen();
      go({ page: 'fit', id });
    },
  });
  return (
    <Form
      form={form}
      className="entries first-fit"
      buttons={
        <Button look="chief" type="submit">
          {say('new-fit.begin')}
        </Button>
      }
    >
      <Who form={form} />
      <WhichBoat form={form} />
      <CautionList />
    </Form>
  );
}

interface SectionProps {
  readonly form: FormState<FirstFitValues>;
}

function Who({ form }: SectionProps) {
  return (
    <section>
      <h2>{say('conflicts.kind.athlete')}</h2>
      <div className="entry-grid">
        <Field as="text" {...form.at('name')} label={say('athlete.name')} autoFocus />
        <Field
          as="length"
          {...form.at('statureM')}
          label={say('athlete.stature')}
          hint={say('athlete.stature.hint')}
        />
        <Field as="mass" {...form.at('massKg')} label={say('athlete.mass')} hint={say('athlete.mass.hint')} />
        <Field as="choice" {...form.at('side')} label={say('athlete.side')} options={sides()} />
      </div>
      <p>
        <a
          href={hrefOf({ page: 'athlete', id: 'new' })}
          onClick={() => newFitStore.setState({ awaited: { what: 'athlete', seat: 0, begun: form.values } })}
        >
          {say('first-fit.more-athlete')}
        </a>
      </p>
    </section>
  );
}

function WhichBoat({ form }: SectionProps) {
  return (
    <section>
      <h2>{say('fitting.boat')}</h2>
      <Field as="choice" {...form.at('boatClass')} label={say('boat.class')} options={usualOptions()} />
      <div className="entry-grid">
        <Field as="length" {...form.at('lengthM')} label={say('boat.class-check.greatest-length')} />
        <Field as="length" {...form.at('beamM')} label={say('boat.beam')} />
        <Field as="mass" {...form.at('boatMassKg')} label={say('boat.mass')} />
      </div>
      <p className="row">
        <span className="soft">{say('first-fit.estimate')}</span>
        <a
          href={hrefOf({ page: 'boat', id: 'new' })}
          onClick={() => newFitStore.setState({ awaited: { what: 'boat', begun: form.values } })}
        >
          {say('first-fit.more-boat')}
        </a>
      </p>
    </section>
  );
}
