import { call } from '../client/client.ts';
import { useProgress } from '../client/use-progress.ts';
import { say } from '../language/messages.ts';
import { ProgressLine } from './progress-line.tsx';

/** The progress of the program's own long work, with a button that stops it; nothing while there is none. */
export function WorkLine({ active }: { active: boolean }) {
  const progress = useProgress(active);
  if (!active || !progress) return null;
  const { what, done, of } = progress;
  const text = say(`archive.work.${what}`, { done, of });
  return (
    <ProgressLine name={text} text={text} share={{ done, of }} onStop={() => void call('work.cancel', {})} />
  );
}
