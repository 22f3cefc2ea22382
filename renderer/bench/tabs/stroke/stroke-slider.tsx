import { useEffect, useRef } from 'react';
import type { Format } from '../../../../app/language/format.ts';
import { type StrokeCrew, type StrokeRow, strokeRow } from '../../../../core/stroke/stroke-cycle.ts';
import { useFormat } from '../../../display/use-display.ts';
import { READY_ALONE } from '../../../document/bench-view.ts';
import { bowText } from '../../../language/bow-text.ts';
import { explainedTitle } from '../../../language/explained.tsx';
import { INSTANTS, instantName, LEGS } from '../../../language/instant-name.ts';
import { say, words } from '../../../language/messages.ts';
import { Button } from '../../../ui/button.tsx';
import { useBenchView } from '../../bench-context.tsx';
import { StrokePlay } from './stroke-play.tsx';

/** A slider's step: a twentieth of a leg. */
const STEP = 0.05;

/** What the boat does at one instant, in words. */
export function readingText({ at, afloat }: StrokeRow, format: Format): string {
  const phase = instantName(at);
  if (afloat.kind !== 'afloat') return say('stroke.reading.sunk', { phase });
  return say('stroke.reading', {
    phase,
    trim: bowText(afloat.bowOverStern, format),
    freeboard: format.length(afloat.leastFreeboard.value),
  });
}

/**
 * The slider ready–catch–exit–ready. It writes `strokeView` only: drawing, cursor and reading follow without a new drawing
 * of the page. Leaving it puts the drawing back to ready.
 */
export function StrokeSlider({ crew }: { crew: StrokeCrew }) {
  const { strokeView } = useBenchView();
  const input = useRef<HTMLInputElement>(null);
  const reading = useRef<HTMLParagraphElement>(null);

  useFollowing(input, reading, crew);

  return (
    <div className="stroke-slider">
      <div className="stroke-track">
        <input
          ref={input}
          type="range"
          min={0}
          max={LEGS}
          step={STEP}
          defaultValue={0}
          aria-label={say('stroke.slider')}
          onInput={(event) => strokeView.setState({ at: Number(event.currentTarget.value) })}
        />
        <div className="stroke-instants">
          {INSTANTS.map(([phase, at]) => (
            <Button
              key={phase}
              look="words"
              style={{ left: `${(100 * at) / LEGS}%` }}
              title={explainedTitle(say(`stroke.${phase}`), words())}
              aria-label={say('stroke.show', { phase: say(`stroke.${phase}`) })}
              onClick={() => strokeView.setState({ at })}
            >
              {say(`stroke.${phase}`)}
            </Button>
          ))}
        </div>
      </div>
      <StrokePlay />
      <p className="stroke-reading" ref={reading} />
    </div>
  );
}

/** Slider and reading follow where the stroke stands, in an animation frame; leaving puts it back to ready. */
function useFollowing(
  input: React.RefObject<HTMLInputElement | null>,
  reading: React.RefObject<HTMLElement | null>,
  crew: StrokeCrew,
): void {
  const format = useFormat();
  const { strokeView } = useBenchView();
  useEffect(() => () => strokeView.setState(READY_ALONE), [strokeView]);
  useEffect(() => {
    let frame = 0;
    const show = () => {
      frame = 0;
      const { at } = strokeView.getState();
      const text = readingText(strokeRow(crew, at), format);
      if (reading.current) reading.current.textContent = text;
      if (!input.current) return;
      input.current.value = String(at);
      input.current.setAttribute('aria-valuetext', text);
    };
    const later = () => {
      if (frame === 0) frame = requestAnimationFrame(show);
    };
    show();
    const stop = strokeView.subscribe(later);
    return () => {
      stop();
      cancelAnimationFrame(frame);
    };
  }, [input, reading, crew, format, strokeView]);
}
