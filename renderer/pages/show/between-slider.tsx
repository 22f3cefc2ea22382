import { useEffect, useRef } from 'react';
import type { Translator } from '../../../app/language/translator.ts';
import { useShownWords } from '../../language/shown-words.tsx';
import { Button } from '../../ui/button.tsx';

/** The slider's range, and how long a move from end to end takes, milliseconds. */
const WHOLE = 100;
const WHOLE_WAY_MS = 900;

/** Where the picture stands between before (0) and now (100): by hand, by keys, or by a word that moves it there. */
export function BetweenSlider(props: { percent: number; onMove: (percent: number) => void }) {
  const { percent, onMove } = props;
  const { say } = useShownWords();
  const frame = useRef(0);
  useEffect(() => () => cancelAnimationFrame(frame.current), []);

  function moveTo(goal: number): void {
    cancelAnimationFrame(frame.current);
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) {
      onMove(goal);
      return;
    }
    const from = percent;
    let start: number | null = null;
    const step = (time: number) => {
      start ??= time;
      const share = Math.min(
        1,
        ((time - start) / WHOLE_WAY_MS) * (WHOLE / Math.max(1, Math.abs(goal - from))),
      );
      onMove(from + (goal - from) * (share * share * (3 - 2 * share)));
      if (share < 1) frame.current = requestAnimationFrame(step);
    };
    frame.current = requestAnimationFrame(step);
  }

  return (
    <div className="show-between">
      <Button look="bare" onClick={() => moveTo(0)}>
        <Sample dashed />
        {say('athlete-page.before')}
      </Button>
      <input
        type="range"
        min={0}
        max={WHOLE}
        step={1}
        value={Math.round(percent)}
        aria-label={say('show.between')}
        aria-valuetext={placeText(Math.round(percent), say)}
        onChange={(event) => {
          cancelAnimationFrame(frame.current);
          onMove(event.target.valueAsNumber);
        }}
      />
      <Button look="bare" onClick={() => moveTo(WHOLE)}>
        {say('athlete-page.now')}
        <Sample dashed={false} />
      </Button>
    </div>
  );
}

/** How the outline of a picture is drawn: dashed before, solid now. */
function Sample({ dashed }: { dashed: boolean }) {
  return (
    <svg viewBox="0 0 26 10" width="26" height="10" aria-hidden="true">
      <path d="M1 5h24" stroke="currentColor" strokeWidth="2" strokeDasharray={dashed ? '5 4' : undefined} />
    </svg>
  );
}

function placeText(percent: number, say: Translator['say']): string {
  if (percent === 0) return say('athlete-page.before');
  if (percent === WHOLE) return say('athlete-page.now');
  return say('show.between.part', { percent });
}
