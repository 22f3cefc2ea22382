import { useCall } from '../../client/use-call.ts';
import { say } from '../../language/messages.ts';
import { Trouble } from '../../page-parts/trouble.tsx';
import { FirstStart } from './first-start.tsx';
import { RecentPage } from './recent-page.tsx';

/** Where the program opens: the first start while there is nothing, else recent work. */
export function HomePage() {
  const { value, error } = useCall('program.state', {});
  if (value && !value.empty) return <RecentPage />;
  if (value) {
    const { recovery, notices } = value;
    return <FirstStart notices={[...(recovery ? [recovery.message] : []), ...notices]} />;
  }
  return (
    <main className="sheet-body page" id="content" tabIndex={-1}>
      {error ? (
        <Trouble error={error} onRetry={() => window.location.reload()} />
      ) : (
        <p className="soft">{say('sheet.loading')}</p>
      )}
    </main>
  );
}
