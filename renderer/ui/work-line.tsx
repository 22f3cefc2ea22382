import { call } from '../client/client.ts';
import { useProgress } from '../client/use-progress.ts';
import { say } from '../language/messages.ts';
import { Button } from './button.tsx';

/** The progress of long work, with a button that stops it; nothing while there is none. */
export function WorkLine({ active }: { active: boolean }) {
  const progress = useProgress(active);
  if (!active || !progress) return null;
  const { what, done, of } = progress;
  return (
    <div className="row" role="status">
      <progress value={done} max={Math.max(of, 1)} aria-label={say(`archive.work.${what}`, { done, of })} />
      <span>{say(`archive.work.${what}`, { done, of })}</span>
      <Button look="words" onClick={() => void call('work.cancel', {})}>
        {say('archive.work.stop')}
      </Button>
    </div>
  );
}
