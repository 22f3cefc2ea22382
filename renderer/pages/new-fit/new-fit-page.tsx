import { useState } from 'react';
import { useStore } from 'zustand';
import type { AthleteRecord, BoatRecord } from '../../../app/contract/records.ts';
import type { CallError } from '../../../app/contract/result.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { FirstSetting, type ProposedStart } from '../../bench/proposal/first-setting.tsx';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import { say } from '../../language/messages.ts';
import { go, hrefOf } from '../../route/route.ts';
import { CautionList } from '../../ui/caution-list.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { Page } from '../../ui/page.tsx';
import { type ChosenSeat, chosen, forgetChosen } from './chosen.ts';
import { FirstFit } from './first-fit.tsx';
import { fitName } from './fit-name.ts';
import { makeFit, type Starter } from './make-fit.ts';
import { withSingles } from './own-singles.ts';
import { SeatChoice } from './seat-choice.tsx';

const EVERYTHING = { limit: 1000 };
const UNCHOSEN: ChosenSeat = { athleteId: undefined, side: null };

/** A new fit: which boat, who in which seat; the bench then begins from a first setting. */
export function NewFitPage() {
  const boats = useCall('boats.list', EVERYTHING);
  const athletes = useCall('athletes.list', EVERYTHING);
  const error = boats.error ?? athletes.error;
  return (
    <Page title={say('new-fit.title')}>
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

function startersOf(
  record: BoatRecord,
  seats: readonly ChosenSeat[],
  athletes: readonly AthleteRecord[],
): Starter[] {
  return record.boat.seats.map((_, i) => {
    const { athleteId, side } = seats[i] ?? UNCHOSEN;
    const found = athletes.find(({ id }) => id === athleteId);
    const athlete = found ? { ...found.athlete, id: found.id } : null;
    return { athlete, side: side ?? athlete?.side ?? 'left' };
  });
}

interface Listed {
  readonly boats: readonly BoatRecord[];
  readonly athletes: readonly AthleteRecord[];
}

/** What has been chosen so far, and what keeps it from being begun. */
function useChosenFit({ boats, athletes }: Listed) {
  const { boatId, seats, name } = useStore(chosen);
  const record = boats.find(({ id }) => id === boatId) ?? (boats.length === 1 ? boats[0]! : null);
  const starters = record ? startersOf(record, seats, athletes) : [];
  const named = record
    ? (name ??
      fitName(
        record.boat.name,
        starters.flatMap(({ athlete }) => athlete?.name ?? []),
      ))
    : '';
  const twice = starters.find(
    ({ athlete }, i) => athlete?.id && starters.some((other, j) => j < i && other.athlete?.id === athlete.id),
  )?.athlete;
  const seated = record?.boat.seats.every((_, i) => seats[i]?.athleteId !== undefined) ?? false;
  return {
    record,
    seats,
    starters,
    named,
    twice,
    ready: seated && named.trim() !== '' && !twice,
    /** Changes with everything that a first setting depends on. */
    choice: JSON.stringify([record?.id, starters.map(({ athlete, side }) => [athlete?.id, side])]),
    make: async (boat: BoatRecord): Promise<Fit> => {
      const crew = boat.boat.seats.length > 1 ? await withSingles(starters) : starters;
      return makeFit({ name: named.trim(), boat: { ...boat.boat, id: boat.id }, starters: crew });
    },
  };
}

function NewFitForm(listed: Listed) {
  const fit = useChosenFit(listed);
  const { record, starters, ready, choice, make } = fit;
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const [proposed, setProposed] = useState<ProposedStart | null>(null);

  async function begin(event: React.FormEvent): Promise<void> {
    event.preventDefault();
    if (!record || !ready) return;
    const start =
      proposed?.choice === choice ? { ...proposed.fit, name: fit.named.trim() } : await make(record);
    const result = await call('fits.create', { fit: start });
    if (!result.ok) return setRefusal(result.error);
    forgetChosen();
    go({ page: 'fit', id: result.value.id });
  }

  return (
    <form className="entries" onSubmit={begin} noValidate>
      <section>
        <BoatChoice boats={listed.boats} record={record} />
        <SeatChoices {...fit} {...listed} />
        {record && (
          <TextField
            label={say('new-fit.name')}
            value={fit.named}
            onChange={(text) => chosen.setState({ name: text })}
          />
        )}
      </section>
      <p className="soft">{say('new-fit.about')}</p>
      {record && ready && starters.some(({ athlete }) => athlete) && (
        <FirstSetting choice={choice} make={() => make(record)} onProposed={setProposed} />
      )}
      {refusal && <ErrorMessage error={refusal} />}
      <CautionList />
      <p className="row">
        <button className="button chief" type="submit" disabled={!ready}>
          {say('new-fit.begin')}
        </button>
      </p>
    </form>
  );
}

function BoatChoice({ boats, record }: { boats: readonly BoatRecord[]; record: BoatRecord | null }) {
  return (
    <div className="entry-row">
      {boats.length > 0 ? (
        <SelectField
          label={say('new-fit.boat')}
          value={record?.id ?? null}
          placeholder={say('new-fit.choose')}
          options={boats.map(({ id, boat }) => ({ value: id, name: boat.name }))}
          onChange={(id) => chosen.setState({ boatId: id })}
        />
      ) : (
        <p>{say('new-fit.no-boat')}</p>
      )}
      <a
        className="button"
        href={hrefOf({ page: 'boat', id: 'new' })}
        onClick={() => chosen.setState({ awaited: { what: 'boat' } })}
      >
        {say('new-fit.make-boat')}
      </a>
    </div>
  );
}

/** Who kneels in each seat; in the one seat of a boat that is yet to be made, where there is none. */
function SeatChoices(props: ReturnType<typeof useChosenFit> & Listed) {
  const { record, seats, starters, twice, boats, athletes } = props;
  const count = record?.boat.seats.length ?? (boats.length === 0 ? 1 : 0);
  return (
    <>
      {Array.from({ length: count }, (_, i) => (
        <SeatChoice
          // biome-ignore lint/suspicious/noArrayIndexKey: a seat is its place in the boat
          key={i}
          index={i}
          seats={count}
          athletes={athletes}
          choice={seats[i] ?? UNCHOSEN}
          side={starters[i]?.side ?? 'left'}
        />
      ))}
      {twice && (
        <p className="field-problem" role="alert">
          {say('new-fit.twice', { name: twice.name })}
        </p>
      )}
    </>
  );
}
