import { useMemo, useState } from 'react';
import type { BoatRecord } from '../../../app/contract/records.ts';
import type { CallError } from '../../../app/contract/result.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import { useFormat } from '../../display/use-display.ts';
import type { TransferAnswer } from '../../jobs/transfer-to-boat.ts';
import { useJobOn } from '../../jobs/use-job.ts';
import { dateText, today } from '../../language/dates.ts';
import { say, sayCount } from '../../language/messages.ts';
import { go, hrefOf } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { Page } from '../../ui/page.tsx';
import { boatChoices } from '../../ui/told-apart.ts';
import { nameInBoat } from '../new-fit/fit-name.ts';
import { shiftSentences } from './shift-sentences.ts';
import { type TransferColumn, TransferTable } from './transfer-table.tsx';
import './transfer.css';
import { Explained } from '../../language/explained.tsx';

/** What a name and a note may hold, characters. */
const NAME_LENGTH = 120;
const NOTES_LENGTH = 10_000;

/** The same stance in another hull: what it asks for, what changes, and a new fit of it in one press. */
export function TransferPage({ fitId }: { fitId: string }) {
  const opened = useCall('fits.open', { id: fitId });
  const boats = useCall('boats.list', {});
  const error = opened.error ?? boats.error;
  const fit = opened.value?.fit ?? null;
  return (
    <Page
      title={say('transfer.title', { fit: fit?.name ?? '' })}
      tools={
        <a className="button" href={hrefOf({ page: 'fit', id: fitId })}>
          {say('trial.leave')}
        </a>
      }
      wide
    >
      {error && <ErrorMessage error={error} />}
      {!error && !(fit && boats.value) && <p className="soft">{say('sheet.loading')}</p>}
      {fit && boats.value && <Transfer fit={fit} boats={boats.value} />}
    </Page>
  );
}

function Transfer({ fit, boats }: { fit: Fit; boats: readonly BoatRecord[] }) {
  const format = useFormat();
  const [boatId, setBoatId] = useState<string | null>(null);
  const others = boats.filter(({ id, boat }) => boat.seats.length === fit.seats.length && id !== fit.boat.id);
  const boat = useMemo(() => {
    const record = boats.find(({ id }) => id === boatId);
    return record ? { ...record.boat, id: record.id } : null;
  }, [boats, boatId]);
  const question = useMemo(() => (boat ? { fit, boat } : null), [fit, boat]);
  const state = useJobOn('transferToBoat', question);
  const answer = state.kind === 'done' ? state.result : null;
  if (others.length === 0) {
    return (
      <div className="stack">
        <p>{sayCount('transfer.no-boat', fit.seats.length)}</p>
        <p>
          <a className="button" href={hrefOf({ page: 'boat', id: 'new' })}>
            {say('new-fit.make-boat')}
          </a>
        </p>
      </div>
    );
  }
  return (
    <div className="stack">
      <p className="soft">
        <Explained text={say('transfer.about')} />
      </p>
      <div className="transfer-boat">
        <SelectField
          label={say('fitting.boat')}
          value={boatId}
          placeholder={say('new-fit.choose')}
          options={boatChoices(others, format)}
          onChange={setBoatId}
        />
      </div>
      {boat && !answer && <p className="soft">{say('proposal.working')}</p>}
      {answer && <Answered answer={answer} />}
    </div>
  );
}

/** The columns of the table: now, the same places, trim kept, and in the new boat's holes. */
export function columnsOf({ old, moved }: TransferAnswer): TransferColumn[] {
  const boat = moved.asIs.fit.boat.name;
  return [
    { title: say('transfer.old', { boat: old.fit.boat.name }), ...old },
    { title: say('transfer.as-is', { boat }), ...moved.asIs },
    ...(moved.trimKept ? [{ title: say('transfer.kept', { boat }), ...moved.trimKept }] : []),
    ...(moved.inHoles ? [{ title: say('transfer.holes', { boat }), ...moved.inHoles }] : []),
  ];
}

function Answered({ answer }: { answer: TransferAnswer }) {
  const format = useFormat();
  const [refusal, setRefusal] = useState<CallError | null>(null);

  async function make({ fit }: TransferColumn): Promise<void> {
    const from = answer.old.fit;
    const note = say('transfer.note', { fit: from.name, boat: from.boat.name, date: dateText(today()) });
    const result = await call('fits.create', {
      fit: {
        ...fit,
        name: nameInBoat(from.name, { from: from.boat.name, to: fit.boat.name }).slice(0, NAME_LENGTH),
        notes: [fit.notes, note].filter(Boolean).join('\n').slice(0, NOTES_LENGTH),
      },
    });
    if (!result.ok) return setRefusal(result.error);
    go({ page: 'fit', id: result.value.id });
  }

  return (
    <>
      <div role="status">
        {shiftSentences(answer, format).map((sentence) => (
          <p key={sentence}>
            <Explained text={sentence} />
          </p>
        ))}
      </div>
      {refusal && <ErrorMessage error={refusal} />}
      <TransferTable columns={columnsOf(answer)} onMake={(column) => void make(column)} />
      <p className="soft">{say('transfer.caution')}</p>
    </>
  );
}
