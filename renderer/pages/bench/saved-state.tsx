import { useEffect, useState } from 'react';
import { useFit } from '../../bench/bench-context.tsx';
import type { Keeping } from '../../document/autosave.ts';
import { agoText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';

/** Under this it is "just now". */
const JUST_NOW_MS = 2000;

/** How long ago the fit was kept, in words. */
export function savedText(
  state: { keeping: Keeping; savedAt: string | null; retrying: boolean },
  now: number,
): string {
  if (state.keeping === 'keeping') return say('kept.keeping');
  if (state.keeping === 'failed') return say(state.retrying ? 'kept.failed' : 'kept.conflict');
  if (state.savedAt === null) return '';
  if (now - Date.parse(state.savedAt) < JUST_NOW_MS) return say('kept.now');
  return say('kept.at', { when: agoText(state.savedAt, now) });
}

/** "saved 2 sec ago": that every movement is on the disk, seen all the time. */
export function SavedState() {
  const keeping = useFit((state) => state.keeping);
  const savedAt = useFit((state) => state.savedAt);
  const retrying = useFit((state) => state.retrying);
  const [now, setNow] = useState(Date.now);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a fresh draft is told of at once, not at the next tick
  useEffect(() => {
    setNow(Date.now());
    const timer = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(timer);
  }, [savedAt]);
  return (
    <span className="kept" data-keeping={keeping}>
      {savedText({ keeping, savedAt, retrying }, now)}
    </span>
  );
}
