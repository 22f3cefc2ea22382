import { useCallback, useEffect, useState } from 'react';
import { Dialog, Modal, ModalOverlay } from 'react-aria-components';
import { say } from '../language/messages.ts';
import { Button } from '../ui/button.tsx';
import { FindDialog } from './find-dialog.tsx';
import './find.css';

/** Control (or Command) and full stop. */
const isFinderKey = (event: KeyboardEvent) =>
  (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey && event.key === '.';

/** The finder: a button in the head, a key, and the dialog they open. */
export function Find() {
  const [open, setOpen] = useState(false);
  const close = useCallback(() => setOpen(false), []);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!isFinderKey(event)) return;
      event.preventDefault();
      setOpen((was) => !was);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
  return (
    <>
      <Button
        look="bare"
        title={say('help.key.find')}
        aria-keyshortcuts="Control+."
        onClick={() => setOpen(true)}
      >
        {say('finder.title')}
      </Button>
      <ModalOverlay className="veil find-veil" isOpen={open} onOpenChange={setOpen} isDismissable>
        <Modal className="dialog find-dialog">
          <Dialog aria-label={say('finder.title')}>
            <FindDialog onDone={close} />
          </Dialog>
        </Modal>
      </ModalOverlay>
    </>
  );
}
