import { useDocument, useFit } from '../../bench/bench-context.tsx';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';

/** Says that the fit cannot be saved, why, and what to do, until it is saved again. */
export function AutosaveError({ onReload }: { onReload: () => void }) {
  const document = useDocument();
  const problem = useFit((state) => state.keepProblem);
  const retrying = useFit((state) => state.retrying);
  if (problem === null) return null;
  return (
    <div className="bench-banner" role="alert">
      <p>{problem}</p>
      <Button onClick={retrying ? () => void document.keepNow() : onReload}>
        {say(retrying ? 'error.retry' : 'bench.load-again')}
      </Button>
    </div>
  );
}
