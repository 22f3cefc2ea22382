import type { FetchedRevision } from '../../bench/fetched-revision.ts';
import { say } from '../../language/messages.ts';
import { revisionName } from '../../language/revision-number.ts';
import { Button } from '../../ui/button.tsx';

/** Says that an earlier revision is shown, not edited; one button restores it, one goes back. */
export function LookBanner(props: {
  looked: FetchedRevision;
  onPutBack: (revision: FetchedRevision) => void;
  onEnd: () => void;
}) {
  const { number } = props.looked.revision;
  const name = revisionName(props.looked.revision);
  return (
    <div className="bench-banner" role="status">
      <p>{say('revisions.looking', { number, name })}</p>
      <Button onClick={() => props.onPutBack(props.looked)}>{say('revisions.put-on-bench')}</Button>
      <Button onClick={props.onEnd}>{say('trial.leave')}</Button>
    </div>
  );
}
