import { useCall } from '../client/use-call.ts';
import { sayCount } from '../language/messages.ts';

/** Notices about the store: rows in quarantine, a backup that failed, a damaged file that was recovered. */
export function StoreNotices() {
  const { value } = useCall('program.state', {});
  if (!value) return null;
  const sentences = [
    ...(value.recovery ? [value.recovery.message] : []),
    ...value.notices,
    ...(value.problems.length > 0 ? [sayCount('error.quarantined', value.problems.length)] : []),
  ];
  if (sentences.length === 0) return null;
  return (
    <ul className="error-box">
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
