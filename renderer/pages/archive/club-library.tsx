import { useState } from 'react';
import type { CallOutput } from '../../../app/contract/contract.ts';
import type { CallError, CallResult } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { say } from '../../language/messages.ts';
import { libraryStore, setLibraryState } from '../../library/library-store.ts';
import { choice, ownText, sharedText } from '../../library/library-text.ts';
import { Button } from '../../ui/button.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { ClubGroups } from './club-groups.tsx';

type Preview = CallOutput<'library.preview'>;

/** Sharing with the club: an invitation is tried, what would be shared is shown, and only then is anything sent. */
export function ClubLibrary({ onRefused }: { onRefused: (error: CallError | null) => void }) {
  const state = libraryStore((heard) => heard.state);
  if (!state) return null;
  return (
    <section className="stack club-library">
      <h2>{say('library.title')}</h2>
      <p className="soft">{say('library.about')}</p>
      {state.joined ? <Joined onRefused={onRefused} /> : <Join onRefused={onRefused} />}
    </section>
  );
}

function Join({ onRefused }: { onRefused: (error: CallError | null) => void }) {
  const [code, setCode] = useState('');
  const [preview, setPreview] = useState<Preview | null>(null);
  const [busy, setBusy] = useState(false);

  async function look(): Promise<void> {
    setBusy(true);
    const answer = await call('library.preview', { code });
    setBusy(false);
    onRefused(answer.ok ? null : answer.error);
    setPreview(answer.ok ? answer.value : null);
  }

  async function join(): Promise<void> {
    setBusy(true);
    const answer = await call('library.join', { code });
    setBusy(false);
    onRefused(answer.ok ? null : answer.error);
    if (answer.ok) setLibraryState(answer.value);
  }

  const problem = preview && preview.kind !== 'ready' ? choice(preview.kind) : null;
  return (
    <>
      <TextField
        label={say('library.code')}
        hint={say('library.code.hint')}
        value={code}
        lines={3}
        maxLength={40_000}
        {...(problem ? { problem: say('library.problem', { problem }) } : {})}
        onChange={(text) => {
          setCode(text);
          setPreview(null);
        }}
      />
      {preview?.kind === 'ready' ? (
        <Shares preview={preview} busy={busy} onJoin={join} onCancel={() => setPreview(null)} />
      ) : (
        <div className="row">
          <Button disabled={busy || code.trim() === ''} onClick={() => void look()}>
            {say('library.look')}
          </Button>
        </div>
      )}
    </>
  );
}

const KINDS = ['athletes', 'boats', 'paddles', 'fits', 'revisions', 'trials', 'photos'] as const;

function Shares(props: {
  preview: Extract<Preview, { kind: 'ready' }>;
  busy: boolean;
  onJoin: () => Promise<void>;
  onCancel: () => void;
}) {
  const { host, role, shares } = props.preview;
  const sent = KINDS.filter((kind) => (shares[kind] ?? 0) > 0);
  return (
    <div className="stack" role="status">
      <p>{say('library.ready', { host, role: choice(role) })}</p>
      <p>{say('library.shares')}</p>
      <ul>
        {sent.map((kind) => (
          <li key={kind}>{say('library.shares.kind', { kind, count: shares[kind] ?? 0 })}</li>
        ))}
        {sent.length === 0 && <li>{say('library.shares.none')}</li>}
      </ul>
      {(shares.athletes ?? 0) > 0 && <p>{say('library.shares.consent')}</p>}
      <div className="row">
        <Button look="chief" disabled={props.busy} onClick={() => void props.onJoin()}>
          {say('library.join')}
        </Button>
        <Button look="words" onClick={props.onCancel}>
          {say('revisions.cancel')}
        </Button>
      </div>
    </div>
  );
}

function Joined({ onRefused }: { onRefused: (error: CallError | null) => void }) {
  const state = libraryStore((heard) => heard.state);
  const [leaving, setLeaving] = useState(false);
  if (!state?.joined) return null;
  const { club, person, role, host } = state.joined;

  async function ask(asking: Promise<CallResult<CallOutput<'library.state'>>>): Promise<void> {
    const answer = await asking;
    onRefused(answer.ok ? null : answer.error);
    if (answer.ok) setLibraryState(answer.value);
  }
  return (
    <>
      <p>{say('library.joined', { club, person, host, role: choice(role) })}</p>
      <p role="status">{state.isCalling ? say('library.calling') : sharedText(state, Date.now())}</p>
      {ownText(state) && <p>{ownText(state)}</p>}
      {state.problem === 'away' && <p>{say('library.problem', { problem: 'away' })}</p>}
      {state.kept.map(({ id, name }) => (
        <p key={id} className="row">
          <span>{say('library.kept', { name })}</span>
          <Button onClick={() => void ask(call('library.discard', { athleteId: id }))}>
            {say('library.kept.remove', { name })}
          </Button>
        </p>
      ))}
      {role === 'head-coach' && <ClubGroups onRefused={onRefused} />}
      {leaving && <p>{say('library.leave.about')}</p>}
      <div className="row">
        <Button onClick={() => void ask(call('library.call', {}))}>{say('library.call')}</Button>
        {leaving ? (
          <>
            <Button onClick={() => void ask(call('library.leave', {}))}>{say('library.leave.keep')}</Button>
            <Button onClick={() => void ask(call('library.leave', { remove: true }))}>
              {say('library.leave.remove')}
            </Button>
            <Button look="words" onClick={() => setLeaving(false)}>
              {say('revisions.cancel')}
            </Button>
          </>
        ) : (
          <Button look="words" onClick={() => setLeaving(true)}>
            {say('library.leave')}
          </Button>
        )}
      </div>
    </>
  );
}
