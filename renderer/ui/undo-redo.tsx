import { useEffect, useRef } from 'react';
import { announce } from '../announce/announce.ts';
import { say } from '../language/messages.ts';
import { Button } from './button.tsx';
import { InHead } from './in-head.tsx';
import { onCommand } from './menu-commands.tsx';
import { PAGE_STEPS_ID } from './page-tools.ts';

interface Steps {
  /** What would be undone, in words; null where nothing would. */
  readonly undoName: string | null;
  readonly redoName: string | null;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
}

/** Undo and redo of a page, in the head, by button, key and menu. */
export function UndoRedo(steps: Steps) {
  const { undoName, redoName, onUndo, onRedo } = steps;
  const undo = () => {
    onUndo();
    if (undoName !== null) announce(say('bench.undone', { step: undoName }));
  };
  const redo = () => {
    onRedo();
    if (redoName !== null) announce(say('bench.redone', { step: redoName }));
  };
  const latest = useRef({ undo, redo });
  latest.current = { undo, redo };
  useEffect(
    () =>
      onCommand((command) => {
        if (command === 'undo' || command === 'redo') latest.current[command]();
      }),
    [],
  );
  return (
    <InHead placeId={PAGE_STEPS_ID}>
      <Button
        look="bare"
        disabled={undoName === null}
        title={undoName === null ? undefined : say('do.undo', { step: undoName })}
        onClick={undo}
      >
        {say('bench.undo')}
      </Button>
      <Button
        look="bare"
        disabled={redoName === null}
        title={redoName === null ? undefined : say('do.redo', { step: redoName })}
        onClick={redo}
      >
        {say('bench.redo')}
      </Button>
    </InHead>
  );
}
