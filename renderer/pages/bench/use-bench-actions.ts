import { useMemo } from 'react';
import { useDocument, useFit } from '../../bench/bench-context.tsx';
import { type FindAction, useOfferedActions } from '../../find/offered-actions.ts';
import { say } from '../../language/messages.ts';
import { go } from '../../route/route.ts';
import { sendCommand } from '../../ui/menu-commands.tsx';
import { duplicateAndOpen } from './duplicate-refused.tsx';

/** Offers what can be done with the fit on the bench. */
export function useBenchActions(fitId: string): void {
  const document = useDocument();
  const undoName = useFit((state) => state.undoName);
  const redoName = useFit((state) => state.redoName);
  const seats = useFit(({ fit }) => fit.seats);
  const actions = useMemo((): FindAction[] => {
    const people = seats.flatMap(({ athlete }) =>
      athlete?.id ? [{ id: athlete.id, name: athlete.name }] : [],
    );
    return [
      { id: 'save', name: say('revisions.save'), run: () => sendCommand('save-revision') },
      {
        id: 'duplicate',
        name: say('menu.duplicate'),
        run: () => void duplicateAndOpen(document.getState().fit),
      },
      {
        id: 'trial',
        name: say('trials.enter'),
        words: say('do.trial.words'),
        run: () => go({ page: 'trial', id: fitId }),
      },
      ...(undoName === null
        ? []
        : [{ id: 'undo', name: say('do.undo', { step: undoName }), run: () => sendCommand('undo') }]),
      ...(redoName === null
        ? []
        : [{ id: 'redo', name: say('do.redo', { step: redoName }), run: () => sendCommand('redo') }]),
      {
        id: 'trials',
        name: say('archive.counts.trials'),
        run: () => go({ page: 'fit', id: fitId, tab: 'trials' }),
      },
      {
        id: 'revisions',
        name: say('archive.counts.revisions'),
        run: () => go({ page: 'fit', id: fitId, tab: 'revisions' }),
      },
      { id: 'photograph', name: say('do.photograph'), run: () => go({ page: 'photograph', id: fitId }) },
      { id: 'transfer', name: say('do.transfer'), run: () => go({ page: 'transfer', id: fitId }) },
      { id: 'set-out', name: say('setout.page'), run: () => go({ page: 'set-out', id: fitId }) },
      { id: 'show', name: say('show.page'), run: () => go({ page: 'show', id: fitId }) },
      ...people.flatMap(({ id, name }) => [
        { id: `athlete ${id}`, name: say('do.athlete', { name }), run: () => go({ page: 'athlete', id }) },
        { id: `measure ${id}`, name: say('do.measure', { name }), run: () => go({ page: 'measure', id }) },
        { id: `timeline ${id}`, name: say('do.timeline', { name }), run: () => go({ page: 'timeline', id }) },
      ]),
    ];
  }, [document, fitId, undoName, redoName, seats]);
  useOfferedActions(actions);
}
