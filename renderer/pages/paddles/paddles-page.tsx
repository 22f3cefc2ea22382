import type { PaddleRecord } from '../../../app/contract/records.ts';
import { usePaddle } from '../../client/use-record.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { Page } from '../../ui/page.tsx';
import { RosterList } from '../../ui/roster-list.tsx';
import { ToDecide } from '../../ui/to-decide.tsx';
import { PaddleForm } from './paddle-form.tsx';

/** The club's paddles; with an id, the entries of one of them, or of a new one. */
export function PaddlesPage({ id }: { id?: string }) {
  return id === undefined ? <Stock /> : <OnePaddle id={id} />;
}

function Stock() {
  const format = useFormat();
  return (
    <Page
      title={say('archive.counts.paddles')}
      tools={
        <a className="button chief" href={hrefOf({ page: 'paddles', id: 'new' })}>
          {say('paddles.new')}
        </a>
      }
    >
      <RosterList<PaddleRecord>
        of="paddles"
        nameTitle={say('kind.paddle')}
        nameOf={({ paddle }) => paddle.name}
        hrefOf={({ id }) => hrefOf({ page: 'paddles', id })}
        columns={[
          {
            title: say('measure.paddle.lengthM'),
            numeric: true,
            cell: ({ paddle }) => format.length(paddle.lengthM),
          },
          {
            title: say('paddles.blade'),
            numeric: true,
            cell: ({ paddle }) => format.length(paddle.bladeLengthM),
          },
          {
            title: say('paddles.angle'),
            numeric: true,
            cell: ({ paddle }) => format.degrees(paddle.bladeAngleDeg),
          },
          {
            title: say('boat.class-check.least-mass'),
            numeric: true,
            cell: ({ paddle }) => format.mass(paddle.massKg),
          },
          { title: say('paddles.note'), cell: ({ paddle }) => paddle.note },
        ]}
        empty={<p>{say('paddles.empty')}</p>}
      />
    </Page>
  );
}

function OnePaddle({ id }: { id: string }) {
  const { record, error } = usePaddle(id);
  return (
    <Page title={record?.paddle.name ?? say(id === 'new' ? 'paddles.entry.new' : 'archive.counts.paddles')}>
      {error && <ErrorMessage error={error} />}
      {record === undefined && !error && <p className="soft">{say('sheet.loading')}</p>}
      {record === null && id !== 'new' && <p>{say('problem.not-found', { what: 'paddle' })}</p>}
      {record && <ToDecide id={record.id} />}
      {(record || id === 'new') && <PaddleForm paddle={record?.paddle ?? null} id={record?.id} />}
    </Page>
  );
}
