import type { CallError } from '../../app/contract/result.ts';
import { say } from '../language/messages.ts';
import { Button } from './button.tsx';

/** A refused call: what happened, each problem with its place, and a button to try again. */
export function ErrorMessage({ error, onRetry }: { error: CallError; onRetry?: () => void }) {
  return (
    <div className="error-box stack" role="alert">
      <p>{error.message}</p>
      {error.problems.length > 0 && (
        <ul>
          {error.problems.map(({ path, message }) => (
            <li key={`${path} ${message}`}>
              {!message.startsWith(path) && <span className="soft">{path} </span>}
              {message}
            </li>
          ))}
        </ul>
      )}
      {onRetry && (
        <p>
          <Button onClick={onRetry}>{say('error.retry')}</Button>
        </p>
      )}
    </div>
  );
}
