import { useEffect, useState } from 'react';
import { useCall } from '../../client/use-call.ts';
import { say } from '../../language/messages.ts';
import { replaceRoute } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { FirstStart } from './first-start.tsx';
import { RecentPage } from './recent-page.tsx';
import './home.css';

/** The program goes back to the last fit once after the page is loaded; a later visit to this page stays here. */
let ledBack = false;

/**
 * Where the program opens: the first start while there is nothing, else recent work. After it was cut short, the fit that
 * was on the bench, so that one is where one was.
 */
export function HomePage() {
  const { value, error } = useCall('program.state', {});
  const [returning] = useState(!ledBack);
  const newest = useCall('fits.list', { limit: 1 });
  const back = returning && value?.cutShort ? newest.value?.[0] : undefined;
  const waiting = returning && value?.cutShort && !newest.value && !newest.error;
  useEffect(() => {
    if (!value || waiting) return;
    ledBack = true;
    if (back) replaceRoute({ page: 'fit', id: back.id });
  }, [value, waiting, back]);

  if (value?.empty) {
    const { recovery, notices } = value;
    return <FirstStart notices={[...(recovery ? [recovery.message] : []), ...notices]} />;
  }
  if (value && !waiting && !back) return <RecentPage />;
  return (
    <main className="sheet-body page" id="content" tabIndex={-1}>
      {error ? (
        <ErrorMessage error={error} onRetry={() => window.location.reload()} />
      ) : (
        <p className="soft">{say('sheet.loading')}</p>
      )}
    </main>
  );
}
