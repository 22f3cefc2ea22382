import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { z } from 'zod';
import type { RevisionSummary } from '../../../app/contract/records.ts';
import type { TrialRecord } from '../../../app/contract/trials.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { useDocument, useFit } from '../../bench/bench-context.tsx';
import { TrialAnswerTicks, useAnswerTicks } from '../../bench/tabs/trials/trial-answer-ticks.tsx';
import { call } from '../../client/client.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/form/field.tsx';
import { Form } from '../../ui/form/form.tsx';
import type { FormRules } from '../../ui/form/form-rules.ts';
import { useForm } from '../../ui/form/use-form.ts';

interface RevisionProps {
  readonly trials: readonly TrialRecord[];
  readonly revisions: readonly RevisionSummary[];
  readonly onClose: () => void;
  readonly onSaved: (revision: RevisionSummary, fit: Fit) => void;
}

/** Gives the fit as it stands a name, and why: a revision, never changed again. */
export function SaveRevision(props: RevisionProps & { isOpen: boolean }) {
  return (
    <ModalOverlay className="veil" isOpen={props.isOpen} onOpenChange={props.onClose} isDismissable>
      <Modal className="dialog">
        <Dialog className="stack">
          <Heading slot="title" level={2}>
            {say('revisions.save')}
          </Heading>
          <RevisionForm {...props} />
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

const RULES: FormRules<{ name: string; reason: string }, { name: string; reason: string }> = {
  schema: z.object({ name: z.string().trim().min(1), reason: z.string() }),
};

function RevisionForm(props: RevisionProps) {
  const document = useDocument();
  const fit = useFit((state) => state.fit);
  const { answers, ...ticks } = useAnswerTicks({ ...props, fit, evaluator: document.evaluator });
  const form = useForm(RULES, {
    start: { name: '', reason: '' },
    save: async ({ name, reason }) => {
      const { fitId } = document.getState();
      const basedOn = await document.keepNow();
      return call('revisions.save', { fitId, fit, name, reason, answers, basedOn });
    },
    onSaved: (revision) => {
      document.keptAsRevision(revision.savedAt);
      props.onSaved(revision, fit);
      props.onClose();
    },
  });
  return (
    <Form
      form={form}
      className="stack"
      buttonsAtEnd
      buttons={
        <>
          <Button onClick={props.onClose}>{say('revisions.cancel')}</Button>
          <Button type="submit" look="chief">
            {say('trial.keep')}
          </Button>
        </>
      }
    >
      <Field
        as="text"
        {...form.at('name')}
        label={say('boat.name')}
        hint={say('revisions.save.name.hint')}
        autoFocus
      />
      <Field as="notes" {...form.at('reason')} label={say('athlete-page.why')} lines={3} />
      <TrialAnswerTicks {...ticks} />
    </Form>
  );
}
