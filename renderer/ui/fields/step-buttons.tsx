import { useEffect, useRef } from 'react';
import { say } from '../../language/messages.ts';

/** A held stepper begins to repeat after this, then at this pace, milliseconds. */
const HOLD_MS = 400;
const REPEAT_MS = 70;

type Timer = { current: ReturnType<typeof setTimeout> | null };

function release(timer: Timer): void {
  if (timer.current !== null) clearTimeout(timer.current);
  timer.current = null;
}

/** Less and more beside an entry. The keyboard has the arrow keys of the entry itself, so Tab passes these by. */
export function StepButtons(props: { label: string; onStep: (sign: 1 | -1) => void }) {
  const timer: Timer = useRef(null);
  const latest = useRef(props.onStep);
  latest.current = props.onStep;
  useEffect(() => () => release(timer), []);

  function hold(sign: 1 | -1): void {
    const again = (wait: number) => {
      timer.current = setTimeout(() => {
        latest.current(sign);
        again(REPEAT_MS);
      }, wait);
    };
    release(timer);
    latest.current(sign);
    again(HOLD_MS);
  }

  const button = (sign: 1 | -1, mark: string, name: string) => (
    <button
      type="button"
      tabIndex={-1}
      aria-label={name}
      onPointerDown={(event) => {
        if (event.button === 0) hold(sign);
      }}
      onPointerUp={() => release(timer)}
      onPointerLeave={() => release(timer)}
      onPointerCancel={() => release(timer)}
    >
      {mark}
    </button>
  );
  return (
    <div className="measure-steps">
      {button(-1, '−', say('field.less', { label: props.label }))}
      {button(1, '+', say('field.more', { label: props.label }))}
    </div>
  );
}
