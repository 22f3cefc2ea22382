import { useEffect } from 'react';
import { useCall } from '../../client/use-call.ts';
import { say } from '../../language/messages.ts';
import { Trouble } from '../../page-parts/trouble.tsx';
import { goInstead } from '../../route/route.ts';
import { FirstStart } from './first-start.tsx';

/** Where the program opens: the first start while there is nothing, else the fit that was changed last. */
export function HomePage() {
  const state = useCall('program.state', {});
  const newest = useCall('fits.list', { limit: 1 });
  const error = state.error ?? newest.error;
  const started = state.value && !state.value.empty;

  useEffect(() => {
    if (!started || !newest.value) return;
    const fit = newest.value[0];
    goInstead(fit ? { page: 'fit', id: fit.id } : { page: 'fits' });
  }, [started, newest.value]);

  if (error) {
    return (
      <main className="sheet-body page" id="content" tabIndex={-1}>
        <Trouble error={error} onRetry={() => window.location.reload()} />
      </main>
    );
  }
  if (state.value?.empty) {
    const { recovery, notices } = state.value;
    return <FirstStart notices={[...(recovery ? [recovery.message] : []), ...notices]} />;
  }
  return (
    <main className="sheet-body page" id="content" tabIndex={-1}>
      <p className="soft">{say('sheet.loading')}</p>
    </main>
  );
}
