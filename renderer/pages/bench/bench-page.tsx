import { useOpenedFit } from '../../document/use-fit-states.ts';
import { say } from '../../language/messages.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { OpenBench } from './open-bench.tsx';

/** The bench: fetches a fit, once what was edited of it is kept, and lays it out as a drawing with its margin. */
export function BenchPage({ fitId }: { fitId: string }) {
  const opened = useOpenedFit(fitId);
  if (opened.value) return <OpenBench key={opened.answered} opened={opened.value} onReload={opened.reload} />;
  return (
    <main className="sheet-body page" id="content" tabIndex={-1}>
      {opened.error ? (
        <ErrorMessage error={opened.error} onRetry={opened.reload} />
      ) : (
        <p className="soft">{say('sheet.loading')}</p>
      )}
    </main>
  );
}
