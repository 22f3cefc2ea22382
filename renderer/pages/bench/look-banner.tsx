import type { FetchedRevision } from '../../bench/fetched-revision.ts';
import { say } from '../../language/messages.ts';

/** Says that an earlier revision is shown, not edited; one button restores it, one goes back. */
export function LookBanner(props: {
  looked: FetchedRevision;
  onPutBack: (revision: FetchedRevision) => void;
  onEnd: () => void;
}) {
  const { number, name } = props.looked.revision;
  return (
    <div className="bench-banner" role="status">
      <p>{say('revisions.looking', { number, name })}</p>
      <button type="button" className="button" onClick={() => props.onPutBack(props.looked)}>
        {say('revisions.put-on-bench')}
      </button>
      <button type="button" className="button" onClick={props.onEnd}>
        {say('trial.leave')}
      </button>
    </div>
  );
}
