import { useEffect } from 'react';
import { useDocument, useFit } from '../../bench/bench-context.tsx';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { InHead } from '../../ui/in-head.tsx';
import { onCommand } from '../../ui/menu-commands.tsx';
import { PAGE_TOOLS_ID } from '../../ui/page-tools.ts';
import { UndoRedo } from '../../ui/undo-redo.tsx';

/** Links to papers and to the athlete's page, undo and redo in the head, by button, key and menu; saving a revision by key and menu. */
export function BenchTools({ onSave }: { onSave: () => void }) {
  const document = useDocument();
  const undoName = useFit((state) => state.undoName);
  const redoName = useFit((state) => state.redoName);
  useEffect(
    () =>
      onCommand((command) => {
        if (command === 'save-revision') onSave();
      }),
    [onSave],
  );

  return (
    <>
      <InHead placeId={PAGE_TOOLS_ID}>
        <Ways fitId={document.getState().fitId} />
      </InHead>
      <UndoRedo
        undoName={undoName}
        redoName={redoName}
        onUndo={() => document.undo()}
        onRedo={() => document.redo()}
      />
    </>
  );
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
