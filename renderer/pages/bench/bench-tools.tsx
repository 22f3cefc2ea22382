import { useEffect, useState } from 'react';
import { createPortal } from 'react-dom';
import { announce } from '../../announce/announce.ts';
import { useDocument, useFit } from '../../bench/bench-context.tsx';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { onCommand } from '../../ui/menu-commands.tsx';
import { PAGE_TOOLS_ID } from '../../ui/page-tools.ts';

/** Ways to paper and to showing, undo and redo in the head of the sheet, by button, key and menu; saving a revision by key and menu. */
export function BenchTools({ onSave }: { onSave: () => void }) {
  const document = useDocument();
  const undoName = useFit((state) => state.undoName);
  const redoName = useFit((state) => state.redoName);
  const [place, setPlace] = useState<HTMLElement | null>(null);
  useEffect(() => setPlace(window.document.getElementById(PAGE_TOOLS_ID)), []);

  useEffect(
    () =>
      onCommand((command) => {
        if (command === 'undo') undo(document);
        if (command === 'redo') redo(document);
        if (command === 'save-revision') onSave();
      }),
    [document, onSave],
  );

  if (!place) return null;
  const { fitId: id } = document.getState();
  return createPortal(
    <>
      <a className="button bare" href={hrefOf({ page: 'set-out', id })}>
        {say('setout.way')}
      </a>
      <a className="button bare" href={hrefOf({ page: 'full-size', id })}>
        {say('fullsize.way')}
      </a>
      <a className="button bare" href={hrefOf({ page: 'show', id })}>
        {say('show.way')}
      </a>
      <button
        type="button"
        className="button bare"
        disabled={undoName === null}
        title={undoName === null ? undefined : say('bench.undo.step', { step: undoName })}
        onClick={() => undo(document)}
      >
        {say('bench.undo')}
      </button>
      <button
        type="button"
        className="button bare"
        disabled={redoName === null}
        title={redoName === null ? undefined : say('bench.redo.step', { step: redoName })}
        onClick={() => redo(document)}
      >
        {say('bench.redo')}
      </button>
    </>,
    place,
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
