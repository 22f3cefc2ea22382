import { useEffect, useRef } from 'react';
import type { CallError } from '../../app/contract/result.ts';
import { say } from '../language/messages.ts';
import { Button } from './button.tsx';

/** A refused call: what happened, each problem with its place, and a button to try again. It comes into sight by itself. */
export function ErrorMessage({ error, onRetry }: { error: CallError; onRetry?: () => void }) {
  const place = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each refusal is shown, also the second in the same place
  useEffect(() => place.current?.scrollIntoView({ block: 'nearest' }), [error]);
  return (
    <div className="error-box stack" role="alert" ref={place}>
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
