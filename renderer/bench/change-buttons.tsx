import { announce } from '../announce/announce.ts';
import { say } from '../language/messages.ts';
import { Button } from '../ui/button.tsx';
import { useDocument, useFit, useIsLooking } from './bench-context.tsx';
import { type ProposedChange, withChange } from './change-text.ts';

/** A change shown as a dashed outline, or applied in one step. Nothing is taken on a revision that is only looked at. */
export function ChangeButtons({ change, text }: { change: ProposedChange; text: string }) {
  const document = useDocument();
  const fit = useFit((state) => state.fit);
  const ghost = useFit((state) => state.ghost);
  const looking = useIsLooking();
  const changed = withChange(fit, change);
  const isShown = ghost !== null && JSON.stringify(ghost) === JSON.stringify(changed);

  function show(): void {
    document.showGhost(isShown ? null : changed);
    if (!isShown) announce(say('spoken.shown', { change: text }));
  }

  return (
    <p className="row">
      <Button
        look="words"
        aria-label={say(isShown ? 'notes.hide.of' : 'notes.show.of', { change: text })}
        onClick={show}
      >
        {say(isShown ? 'notes.hide' : 'notes.show')}
      </Button>
      <Button
        look="words"
        disabled={looking}
        aria-label={say('notes.take.of', { change: text })}
        onClick={() => document.apply(text, (now) => withChange(now, change))}
      >
        {say('notes.take')}
      </Button>
    </p>
  );
}
