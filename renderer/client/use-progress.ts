import { useEffect, useState } from 'react';
import type { CallOutput } from '../../app/contract/contract.ts';
import { call } from './client.ts';

/** Asked this often while something long is going on, milliseconds. */
const EVERY_MS = 300;

/** How far a long piece of work has come, while `active`. */
export function useProgress(active: boolean): CallOutput<'work.progress'> {
  const [progress, setProgress] = useState<CallOutput<'work.progress'>>(null);
  useEffect(() => {
    if (!active) {
      setProgress(null);
      return;
    }
    let wanted = true;
    const timer = setInterval(async () => {
      const result = await call('work.progress', {});
      if (wanted && result.ok) setProgress(result.value);
    }, EVERY_MS);
    return () => {
      wanted = false;
      clearInterval(timer);
    };
  }, [active]);
  return progress;
}
