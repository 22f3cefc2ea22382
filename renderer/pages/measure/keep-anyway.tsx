import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';

/** A value that is more likely a typing error: why, and a button to keep it. */
export function KeepAnyway({ why, more, onKeep }: { why: string; more?: string; onKeep: () => void }) {
  return (
    <div className="odd-value" role="alert">
      <p>{why}</p>
      {more && <p className="soft">{more}</p>}
      <p className="row">
        <Button onClick={onKeep}>{say('measure.keep-anyway')}</Button>
        <span className="soft">{say('measure.not-counted')}</span>
      </p>
    </div>
  );
}
