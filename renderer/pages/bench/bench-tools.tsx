import { useEffect, useState } from 'react';
import { createPortal } from 'react-dom';
import { announce } from '../../announce/announce.ts';
import { useDocument, useFit } from '../../bench/bench-context.tsx';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { onCommand } from '../../ui/menu-commands.tsx';
import { PAGE_STEPS_ID, PAGE_TOOLS_ID } from '../../ui/page-tools.ts';

/** Links to papers and to the athlete's page, undo and redo in the head, by button, key and menu; saving a revision by key and menu. */
export function BenchTools({ onSave }: { onSave: () => void }) {
  const document = useDocument();
  useEffect(
    () =>
      onCommand((command) => {
        if (command === 'undo') undo(document);
        if (command === 'redo') redo(document);
        if (command === 'save-revision') onSave();
      }),
    [document, onSave],
  );

  return (
    <>
      <InHead placeId={PAGE_TOOLS_ID}>
        <Ways fitId={document.getState().fitId} />
      </InHead>
      <InHead placeId={PAGE_STEPS_ID}>
        <Steps />
      </InHead>
    </>
  );
}

/** Puts a page's own controls into their place in the head, once that is there. */
function InHead({ placeId, children }: { placeId: string; children: React.ReactNode }) {
  const [place, setPlace] = useState<HTMLElement | null>(null);
  useEffect(() => setPlace(window.document.getElementById(placeId)), [placeId]);
  return place && createPortal(children, place);
}

const WAYS = [
  { page: 'set-out', name: 'setout.page' },
  { page: 'full-size', name: 'fullsize.page' },
  { page: 'show', name: 'show.page' },
] as const;

function Ways({ fitId: id }: { fitId: string }) {
  return WAYS.map(({ page, name }) => (
    <a key={page} className="button bare" href={hrefOf({ page, id })}>
      {say(name)}
    </a>
  ));
}

function Steps() {
  const document = useDocument();
  const undoName = useFit((state) => state.undoName);
  const redoName = useFit((state) => state.redoName);
  return (
    <>
      <Button
        look="bare"
        disabled={undoName === null}
        title={undoName === null ? undefined : say('do.undo', { step: undoName })}
        onClick={() => undo(document)}
      >
        {say('bench.undo')}
      </Button>
      <Button
        look="bare"
        disabled={redoName === null}
        title={redoName === null ? undefined : say('do.redo', { step: redoName })}
        onClick={() => redo(document)}
      >
        {say('bench.redo')}
      </Button>
    </>
  );
}

function undo(document: ReturnType<typeof useDocument>): void {
  const step = document.getState().undoName;
  document.undo();
  if (step !== null) announce(say('bench.undone', { step }));
}

function redo(document: ReturnType<typeof useDocument>): void {
  const step = document.getState().redoName;
  document.redo();
  if (step !== null) announce(say('bench.redone', { step }));
}
