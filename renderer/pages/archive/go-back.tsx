import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { CallOutput } from '../../../app/contract/contract.ts';
import { instantText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';

export type ListedBackup = CallOutput<'backups.list'>[number];

/** Asks before the whole store is restored from a backup. */
export function GoBack(props: {
  backup: ListedBackup | null;
  onYes: (backup: ListedBackup) => void;
  onNo: () => void;
}) {
  const { backup } = props;
  return (
    <ModalOverlay className="veil" isOpen={backup !== null} onOpenChange={props.onNo} isDismissable>
      <Modal className="dialog">
        <Dialog role="alertdialog" className="stack">
          {backup && (
            <>
              <Heading slot="title" level={2}>
                {say('archive.back.sure', { when: instantText(backup.takenAt) })}
              </Heading>
              <p>{say('archive.back.sure.about')}</p>
              <p className="row ends">
                <Button onClick={props.onNo}>{say('revisions.cancel')}</Button>
                <Button look="chief" onClick={() => props.onYes(backup)}>
                  {say('archive.back.replace')}
                </Button>
              </p>
            </>
          )}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
