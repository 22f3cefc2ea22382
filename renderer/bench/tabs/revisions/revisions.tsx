import { useState } from 'react';
import type { RevisionSummary } from '../../../../app/contract/records.ts';
import type { CallError } from '../../../../app/contract/result.ts';
import { call } from '../../../client/client.ts';
import { instantText } from '../../../language/dates.ts';
import { Explained } from '../../../language/explained.tsx';
import { say, words } from '../../../language/messages.ts';
import { revisionName, revisionNumber } from '../../../language/revision-number.ts';
import { Button } from '../../../ui/button.tsx';
import { ErrorMessage } from '../../../ui/error-message.tsx';
import type { BenchTabProps } from '../../bench-tab.ts';
import type { FetchedRevision } from '../../fetched-revision.ts';
import { observationText } from '../trials/observation-text.ts';
import { DifferencesTable } from './differences-table.tsx';
import './revisions.css';

/** The revision block: every named state, newest first; each can be compared, shown or restored. */
export function Revisions(props: BenchTabProps) {
  const { compared } = props;
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const { revisions, more } = useEarlier(props, setRefusal);

  async function fetch(id: string, use: (fetched: FetchedRevision) => void): Promise<void> {
    const result = await call('revisions.open', { id });
    setRefusal(result.ok ? null : result.error);
    if (result.ok) use(result.value);
  }

  return (
    <div className="revisions">
      <p className="row">
        {props.onSave && <Button onClick={props.onSave}>{say('revisions.save')}</Button>}
        {compared && (
          <Button look="words" onClick={() => props.onCompare(null)}>
            {say('revisions.compare.end')}
          </Button>
        )}
      </p>
      {refusal && <ErrorMessage error={refusal} />}
      {compared && <DifferencesTable revision={compared.revision} older={compared.fit} />}
      {revisions.length === 0 && (
        <p className="soft">
          <Explained text={say('revisions.none')} />
        </p>
      )}
      <ol className="revision-list">
        {revisions.map((revision) => (
          <RevisionLine
            key={revision.id}
            revision={revision}
            isCompared={compared?.revision.id === revision.id}
            isLooked={props.looked?.revision.id === revision.id}
            onCompare={() => fetch(revision.id, props.onCompare)}
            onLook={() => fetch(revision.id, props.onLook)}
          />
        ))}
      </ol>
      {more && (
        <Button look="words" onClick={more}>
          {say('timeline.earlier')}
        </Button>
      )}
    </div>
  );
}

/** The revisions that came with the fit, and those before them that were asked for; `more` asks for the next ones, where there are any. */
function useEarlier(
  { fitId, revisions }: Pick<BenchTabProps, 'fitId' | 'revisions'>,
  setRefusal: (refusal: CallError | null) => void,
) {
  // Those that came with the fit are kept too: each revision saved since then pushes one of them out of `revisions`.
  const [seen, setSeen] = useState<readonly RevisionSummary[]>(revisions);
  const [isAll, setIsAll] = useState(false);
  const all = [...revisions, ...seen.filter(({ id }) => !revisions.some((one) => one.id === id))];
  const before = all.at(-1)?.number ?? 1;
  const more = async () => {
    const result = await call('revisions.list', { fitId, before });
    setRefusal(result.ok ? null : result.error);
    if (!result.ok) return;
    setIsAll(result.value.length === 0);
    setSeen([...all, ...result.value]);
  };
  return { revisions: all, more: isAll || before === 1 ? null : more };
}

interface LineProps {
  readonly revision: RevisionSummary;
  readonly isCompared: boolean;
  readonly isLooked: boolean;
  readonly onCompare: () => void;
  readonly onLook: () => void;
}

function RevisionLine({ revision, isCompared, isLooked, onCompare, onLook }: LineProps) {
  const { number, reason, savedAt, answers } = revision;
  const name = revisionName(revision);
  const told = words().row(answers.map(({ observation }) => observationText(observation)));
  return (
    <li data-lit={isCompared ? 'compared' : isLooked ? 'looked' : undefined}>
      <span className="lettering">{say('revisions.number', { number: revisionNumber(revision) })}</span>
      <strong>{name}</strong>
      <span className="soft">{instantText(savedAt)}</span>
      {reason && <p>{reason}</p>}
      {told && <p className="soft">{say('answers.of', { what: told })}</p>}
      <p className="row">
        <Button
          look="words"
          aria-pressed={isCompared}
          aria-label={say('revisions.compare.of', { number, name })}
          onClick={onCompare}
        >
          {say('revisions.compare')}
        </Button>
        <Button
          look="words"
          aria-pressed={isLooked}
          aria-label={say('revisions.look.of', { number, name })}
          onClick={onLook}
        >
          {say('revisions.look')}
        </Button>
      </p>
    </li>
  );
}
