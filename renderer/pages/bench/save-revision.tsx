import { useState } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { RevisionSummary } from '../../../app/contract/records.ts';
import type { CallError } from '../../../app/contract/result.ts';
import type { TrialRecord } from '../../../app/contract/trials.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import { useDocument, useFit } from '../../bench/bench-context.tsx';
import { TrialAnswerTicks, useAnswerTicks } from '../../bench/tabs/trials/trial-answer-ticks.tsx';
import { call } from '../../client/client.ts';
import { say } from '../../language/messages.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';

interface EntriesProps {
  readonly trials: readonly TrialRecord[];
  readonly revisions: readonly RevisionSummary[];
  readonly onClose: () => void;
  readonly onSaved: (revision: RevisionSummary, fit: Fit) => void;
}

/** Gives the fit as it stands a name, and why: a revision, never changed again. */
export function SaveRevision(props: EntriesProps & { isOpen: boolean }) {
  return (
    <ModalOverlay className="veil" isOpen={props.isOpen} onOpenChange={props.onClose} isDismissable>
      <Modal className="leaf">
        <Dialog>{() => <Entries {...props} />}</Dialog>
      </Modal>
    </ModalOverlay>
  );
}

function Entries(props: EntriesProps) {
  const document = useDocument();
  const fit = useFit((state) => state.fit);
  const { answers, ...ticks } = useAnswerTicks({ ...props, fit });
  const [name, setName] = useState('');
  const [reason, setReason] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<CallError | null>(null);

  async function save(event: React.FormEvent): Promise<void> {
    event.preventDefault();
    if (name.trim() === '') return setProblem(say('field.needed'));
    const { fitId } = document.getState();
    await document.keepNow();
    const basedOn = document.getState().savedAt;
    const made = { fitId, fit, name: name.trim(), reason, answers, basedOn };
    const result = await call('revisions.save', made);
    if (!result.ok) return setRefusal(result.error);
    document.keptAsRevision(result.value.savedAt);
    props.onSaved(result.value, fit);
    props.onClose();
  }

  return (
    <form className="stack" onSubmit={save} noValidate>
      <Heading slot="title" level={2}>
        {say('revisions.save')}
      </Heading>
      <TextField
        label={say('revisions.save.name')}
        hint={say('revisions.save.name.hint')}
        value={name}
        onChange={setName}
        problem={problem}
        autoFocus
        required
      />
      <TextField label={say('revisions.save.reason')} value={reason} onChange={setReason} lines={3} />
      <TrialAnswerTicks {...ticks} />
      {refusal && <ErrorMessage error={refusal} />}
      <p className="row ends">
        <button type="button" className="button" onClick={props.onClose}>
          {say('revisions.cancel')}
        </button>
        <button type="submit" className="button chief">
          {say('revisions.save.keep')}
        </button>
      </p>
    </form>
  );
}
