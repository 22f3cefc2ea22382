import { useEffect, useState } from 'react';
import { useFit } from '../../bench/bench-context.tsx';
import type { Keeping } from '../../document/autosave.ts';
import { instantText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';

/** Under this it is "just now", seconds. */
const JUST_NOW_S = 2;
const MINUTE_S = 60;
const HOUR_S = 3600;

/** How long ago the fit was kept, in words. */
export function keptText(
  state: { keeping: Keeping; savedAt: string | null; retrying: boolean },
  now: number,
): string {
  if (state.keeping === 'keeping') return say('kept.keeping');
  if (state.keeping === 'failed') return say(state.retrying ? 'kept.failed' : 'kept.conflict');
  if (state.savedAt === null) return '';
  const seconds = Math.floor((now - Date.parse(state.savedAt)) / 1000);
  if (seconds < JUST_NOW_S) return say('kept.now');
  if (seconds < MINUTE_S) return say('kept.seconds', { count: seconds });
  if (seconds < HOUR_S) return say('kept.minutes', { count: Math.floor(seconds / MINUTE_S) });
  return say('kept.at', { when: instantText(state.savedAt) });
}

/** "kept 2 s ago": that every movement is on the disk, seen all the time. */
export function KeptState() {
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
      {keptText({ keeping, savedAt, retrying }, now)}
    </span>
  );
}
