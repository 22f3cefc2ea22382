import type { Lockable } from '../../../core/document/seat-schema.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { useDocument, useFit } from '../bench-context.tsx';
import { toggleLock } from '../lock-part.ts';

/** Locks a fitting against proposals, or frees it. The word says the state; the padlock only repeats it. */
export function LockSwitch({ fitting }: { fitting: Lockable }) {
  const document = useDocument();
  const seat = useFit((state) => state.seat);
  const locked = useFit(({ fit }) => fit.seats[seat]!.locks.includes(fitting));
  const what = say(`fitting.${fitting}`);
  return (
    <Button
      look="bare"
      className="lock"
      aria-label={say(locked ? 'measures.locked.of' : 'measures.lock.of', { fitting: what })}
      title={say('measures.lock.about')}
      onClick={() => toggleLock(document, fitting)}
    >
      <svg viewBox="0 0 14 16" width="12" height="14" aria-hidden="true">
        <path
          d={locked ? 'M3.5 7V4.5a3.5 3.5 0 0 1 7 0V7' : 'M3.5 7V4.5a3.5 3.5 0 0 1 6.8-1.2'}
          fill="none"
          stroke="currentColor"
          strokeWidth="1.6"
        />
        <path
          d="M1.5 7h11v8h-11Z"
          fill={locked ? 'currentColor' : 'none'}
          stroke="currentColor"
          strokeWidth="1.4"
        />
      </svg>
      {say(locked ? 'measures.locked' : 'measures.lock')}
    </Button>
  );
}
