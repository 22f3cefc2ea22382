import { useState } from 'react';
import { useStore } from 'zustand';
import type { BoatRecord } from '../../../app/contract/records.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { FirstSetting, type ProposedStart } from '../../bench/proposal/first-setting.tsx';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { go, hrefOf } from '../../route/route.ts';
import { CautionList } from '../../ui/caution-list.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { Form } from '../../ui/form/form.tsx';
import { readForm } from '../../ui/form/form-rules.ts';
import { type FormState, useForm } from '../../ui/form/use-form.ts';
import type { FormValues } from '../../ui/form/use-form-values.ts';
import { Page } from '../../ui/page.tsx';
import { boatChoices } from '../../ui/told-apart.ts';
import { forgetChosen, type NewFitValues, newFitStore } from './chosen.ts';
import { FirstFit } from './first-fit.tsx';
import { makeFit } from './make-fit.ts';
import { type ChosenFit, chosenFit, type FitChoices, newFitRules, UNCHOSEN } from './new-fit-rules.ts';
import { withSingles } from './own-singles.ts';
import { SeatChoice } from './seat-choice.tsx';
import './new-fit.css';
import { Explained } from '../../language/explained.tsx';
import { Button } from '../../ui/button.tsx';

/** A new fit: which boat, who in which seat; the bench then starts from a first setting. */
export function NewFitPage() {
  const boats = useCall('boats.list', {});
  const athletes = useCall('athletes.list', {});
  const error = boats.error ?? athletes.error;
  return (
    <Page title={say('fits.new')}>
      {error && <ErrorMessage error={error} />}
      {boats.value &&
        athletes.value &&
        (boats.value.length + athletes.value.length === 0 ? (
          <FirstFit />
        ) : (
          <NewFitForm boats={boats.value} athletes={athletes.value} />
        ))}
    </Page>
  );
}

/** The choices live beside the page: the forms of athlete and boat bring back what was made there. */
function useChosenValues(): FormValues<NewFitValues> {
  return {
    formValues: useStore(newFitStore),
    change: (part) => newFitStore.setState(typeof part === 'function' ? part(newFitStore.getState()) : part),
    discard: forgetChosen,
  };
}

/** The fit of what was chosen, every fitting in its first setting. */
async function makeChosen({ record, starters, named }: ChosenFit): Promise<Fit> {
  const { id, boat } = record!;
  const crew = boat.seats.length > 1 ? await withSingles(starters) : starters;
  return makeFit({ name: named.trim(), boat: { ...boat, id }, starters: crew });
}

function NewFitForm(listed: FitChoices) {
  const rules = newFitRules(listed);
  const held = useChosenValues();
  const [proposed, setProposed] = useState<ProposedStart | null>(null);
  const fit = chosenFit(held.formValues, listed);
  const { record, starters } = fit;
  // A key that changes with everything that a first setting depends on.
  const choice = JSON.stringify([record?.id, starters.map(({ athlete, side }) => [athlete?.id, side])]);
  const form = useForm(rules, {
    start: held.formValues,
    held,
    save: async ({ name }) =>
      call('fits.create', {
        fit: proposed?.choice === choice ? { ...proposed.fit, name } : await makeChosen(fit),
      }),
    onSaved: ({ id }) => go({ page: 'fit', id }),
  });
  const ready = readForm(rules, held.formValues).ok && starters.some(({ athlete }) => athlete);
  return (
    <Form
      form={form}
      className="entries"
      buttons={
        <Button look="chief" type="submit">
          {say('new-fit.begin')}
        </Button>
      }
    >
      <section>
        <BoatChoice boats={listed.boats} record={record} form={form} />
        <SeatChoices {...fit} {...listed} form={form} />
        {record && (
          <TextField
            {...form.at('name')}
            label={say('measures.fit-name')}
            value={fit.named}
            onChange={(name) => form.change({ name })}
          />
        )}
      </section>
      <p className="soft">
        <Explained text={say('new-fit.about')} />
      </p>
      {ready && <FirstSetting choice={choice} make={() => makeChosen(fit)} onProposed={setProposed} />}
      <CautionList />
    </Form>
  );
}

interface InForm {
  readonly form: FormState<NewFitValues>;
}

function BoatChoice({
  boats,
  record,
  form,
}: InForm & { boats: FitChoices['boats']; record: BoatRecord | null }) {
  const format = useFormat();
  return (
    <div className="entry-row">
      {boats.length > 0 ? (
        <SelectField
          {...form.at('boatId')}
          label={say('fitting.boat')}
          value={record?.id ?? null}
          placeholder={say('new-fit.choose')}
          options={boatChoices(boats, format)}
        />
      ) : (
        <p>{say('boats.empty')}</p>
      )}
      <a
        className="button"
        href={hrefOf({ page: 'boat', id: 'new' })}
        onClick={() => newFitStore.setState({ awaited: { what: 'boat' } })}
      >
        {say('new-fit.make-boat')}
      </a>
    </div>
  );
}

/** Who kneels in each seat; in the one seat of a boat that is yet to be made, where there is none. */
function SeatChoices({ record, starters, boats, athletes, form }: ChosenFit & FitChoices & InForm) {
  const count = record?.boat.seats.length ?? (boats.length === 0 ? 1 : 0);
  return Array.from({ length: count }, (_, i) => (
    <SeatChoice
      // biome-ignore lint/suspicious/noArrayIndexKey: a seat is its place in the boat
      key={i}
      index={i}
      seats={count}
      athletes={athletes}
      choice={form.values.seats[i] ?? UNCHOSEN}
      side={starters[i]?.side ?? 'left'}
      form={form}
    />
  ));
}
