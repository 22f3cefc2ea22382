import { useState } from 'react';
import type { CallError } from '../../../../app/contract/result.ts';
import { call } from '../../../client/client.ts';
import { instantText } from '../../../language/dates.ts';
import { say } from '../../../language/messages.ts';
import { revisionNumber } from '../../../language/revision-number.ts';
import { ErrorMessage } from '../../../ui/error-message.tsx';
import type { BenchTabProps } from '../../bench-tab.ts';
import type { FetchedRevision } from '../../fetched-revision.ts';
import { observationText } from '../trials/observation-text.ts';
import { DifferencesTable } from './differences-table.tsx';
import './revisions.css';

/** The revision block: every named state, newest first; compare with any, look at any, put any back on the bench. */
export function Revisions(props: BenchTabProps) {
  const { revisions, compared } = props;
  const [refusal, setRefusal] = useState<CallError | null>(null);

  async function fetch(id: string, use: (fetched: FetchedRevision) => void): Promise<void> {
    const result = await call('revisions.open', { id });
    setRefusal(result.ok ? null : result.error);
    if (result.ok) use(result.value);
  }

  return (
    <div className="revisions">
      <p className="row">
        <button type="button" className="button" onClick={props.onSave}>
          {say('revisions.save')}
        </button>
        {compared && (
          <button type="button" className="button words" onClick={() => props.onCompare(null)}>
            {say('revisions.compare.end')}
          </button>
        )}
      </p>
      {refusal && <ErrorMessage error={refusal} />}
      {compared && <DifferencesTable revision={compared.revision} older={compared.fit} />}
      {revisions.length === 0 && <p className="soft">{say('revisions.none')}</p>}
      <ol className="revision-list">
        {revisions.map((revision) => {
          const { id, number, name, reason, savedAt, answers } = revision;
          return (
            <li key={id} data-lit={compared?.revision.id === id || undefined}>
              <span className="lettering">
                {say('revisions.number', { number: revisionNumber(revision) })}
              </span>
              <strong>{name}</strong>
              <span className="soft">{instantText(savedAt)}</span>
              {reason && <p>{reason}</p>}
              {answers.length > 0 && (
                <p className="soft">
                  {say('answers.of', {
                    what: answers.map(({ observation }) => observationText(observation)).join(', '),
                  })}
                </p>
              )}
              <p className="row">
                <button
                  type="button"
                  className="button words"
                  aria-pressed={compared?.revision.id === id}
                  aria-label={say('revisions.compare.of', { number, name })}
                  onClick={() => fetch(id, props.onCompare)}
                >
                  {say('revisions.compare')}
                </button>
                <button
                  type="button"
                  className="button words"
                  aria-label={say('revisions.look.of', { number, name })}
                  onClick={() => fetch(id, props.onLook)}
                >
                  {say('revisions.look')}
                </button>
              </p>
            </li>
          );
        })}
      </ol>
    </div>
  );
}
