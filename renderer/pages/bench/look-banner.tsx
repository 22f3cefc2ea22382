import type { FetchedRevision } from '../../bench/fetched-revision.ts';
import { say } from '../../language/messages.ts';

/** Says that an earlier revision is looked at, not edited, and the two ways on from there. */
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
