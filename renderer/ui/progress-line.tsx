import { say } from '../language/messages.ts';
import { Button } from './button.tsx';

/** That work goes on: how far it has come, where that is known, what is told of it, and a button that stops it. */
export function ProgressLine(props: {
  /** What the work is, for who hears the page. */
  readonly name: string;
  readonly text: string;
  readonly share?: { readonly done: number; readonly of: number };
  readonly onStop: () => void;
}) {
  const { name, text, share, onStop } = props;
  return (
    <div className="row" role="status">
      <progress {...(share && { value: share.done, max: Math.max(share.of, 1) })} aria-label={name} />
      <span>{text}</span>
      <Button look="words" onClick={onStop}>
        {say('archive.work.stop')}
      </Button>
    </div>
  );
}
