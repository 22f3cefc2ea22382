import type { PhotoStudy } from '../../../core/photograph/photo-study-schema.ts';
import { useFormat } from '../../display/use-display.ts';
import { say, words } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { markName } from './mark-words.ts';
import type { DisagreeingMark } from './use-reading.ts';

/**
 * Takes the posture into the fit, where nothing is open: a proposed joint that nobody has looked at, or marks that disagree. Those are
 * named with how far they lie off, and moved or left out by the coach.
 */
export function Apply(props: {
  study: PhotoStudy;
  isCurrent: boolean;
  disagreeing: readonly DisagreeingMark[];
  /** Few enough disagree for the posture to stand without them. */
  isSettled: boolean;
  onApply: () => void;
  onLeaveOut: () => void;
}) {
  const { study, disagreeing, isSettled } = props;
  const unseen = Object.keys(study.proposed).length;
  const isOpen = unseen > 0 || disagreeing.length > 0;
  return (
    <>
      {unseen === 0 && disagreeing.length > 0 && <Disagreement marks={disagreeing} isSettled={isSettled} />}
      <p className="row">
        <Button look="chief" disabled={isOpen || !props.isCurrent} onClick={props.onApply}>
          {say('photograph.apply')}
        </Button>
        {unseen === 0 && isSettled && disagreeing.some(({ isHere }) => isHere) && (
          <Button onClick={props.onLeaveOut}>{say('photograph.apply.leave-out')}</Button>
        )}
        {unseen > 0 && <span className="soft">{say('photograph.apply.first', { count: unseen })}</span>}
        {study.confirmed && <span className="soft">{say('photograph.applied')}</span>}
      </p>
    </>
  );
}

/** Where so many disagree that none can be told right, these are named; the list of marks shows all. */
const MOST_NAMED = 4;

/** Which marks disagree and by how much, and what to do. */
function Disagreement({ marks, isSettled }: { marks: readonly DisagreeingMark[]; isSettled: boolean }) {
  const format = useFormat();
  const worst = [...marks].sort((a, b) => b.mm - a.mm).slice(0, isSettled ? undefined : MOST_NAMED);
  const named = worst.map(({ name, mm, isHere }) =>
    say('photograph.apply.off', {
      mark: markName(name),
      off: format.length(mm / 1000, { fine: true }),
      where: isHere ? 'here' : 'joined',
    }),
  );
  return (
    <p role="note">
      {say('photograph.apply.disagree', {
        marks: words().list(named),
        extent: isSettled ? 'few' : 'many',
      })}
    </p>
  );
}
