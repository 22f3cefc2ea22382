import { say } from '../../../language/messages.ts';
import { SeverityMark } from '../../../ui/severity-mark.tsx';
import './trials.css';

/** Comes before any change: what hurts stops the session, and belongs to somebody licensed when it lasts. */
export function TrialCaution() {
  return (
    <div className="trial-caution" data-severity="stop" role="status">
      <SeverityMark />
      <div>
        <span className="trial-caution-word">{say('severity.stop')}</span>
        <p>
          <strong>{say('trial.caution')}</strong>
        </p>
        <p>{say('trial.caution.why')}</p>
      </div>
    </div>
  );
}
