import type { OpenedFit } from '../../../app/contract/records.ts';
import type { TrialRecord } from '../../../app/contract/trials.ts';
import { useCall } from '../../client/use-call.ts';
import { dateText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { Page } from '../../ui/page.tsx';
import { TrialForm } from './trial-form.tsx';
import './trial.css';

/** A trial on the water, entered after the session or corrected later. */
export function TrialPage({ fitId, trialId }: { fitId: string; trialId: string | null }) {
  const opened = useCall('fits.open', { id: fitId });
  const listed = useCall('trials.list', { fitId });
  const error = opened.error ?? listed.error;
  const record = listed.value?.find(({ id }) => id === trialId) ?? null;
  return (
    <Page
      title={titleOf(opened.value, record)}
      tools={
        <>
          <a className="button" href={hrefOf({ page: 'photograph', id: fitId })}>
            {say('photograph.open')}
          </a>
          <a className="button" href={hrefOf({ page: 'fit', id: fitId })}>
            {say('trial.leave')}
          </a>
        </>
      }
      wide
    >
      {error && <ErrorMessage error={error} />}
      {!error && !(opened.value && listed.value) && <p className="soft">{say('sheet.loading')}</p>}
      {opened.value && listed.value && <Found opened={opened.value} record={record} trialId={trialId} />}
    </Page>
  );
}

function titleOf(opened: OpenedFit | null, record: TrialRecord | null): string {
  const fit = opened?.fit.name ?? '';
  return record
    ? say('trial.title.edit', { date: dateText(record.trial.heldOn), fit })
    : say('trial.title', { fit });
}

function Found(props: { opened: OpenedFit; record: TrialRecord | null; trialId: string | null }) {
  const { opened, record, trialId } = props;
  if (trialId !== null && !record) return <p>{say('trial.not-found')}</p>;
  if (opened.fit.seats.every(({ athlete }) => !athlete)) return <p>{say('trial.no-seat')}</p>;
  return <TrialForm opened={opened} record={record} />;
}
