import { useEffect, useState } from 'react';
import { DEFAULT_RATE_PER_MIN } from '../../../../core/document/stroke-defaults.ts';
import { secondsAt, strokeAt } from '../../../../core/stroke/stroke-clock.ts';
import { LEGS } from '../../../language/instant-name.ts';
import { say } from '../../../language/messages.ts';
import { Button } from '../../../ui/button.tsx';
import { useBenchView, useFit } from '../../bench-context.tsx';

/** One frame, in legs. */
const FRAME = 0.1;

/** Plays the stroke at the athlete's rate, or goes through it frame by frame; where less motion is asked for, frames only. */
export function StrokePlay() {
  const { strokeView } = useBenchView();
  const rate = useFit(({ fit, seat }) => fit.seats[seat]?.stroke.ratePerMin ?? DEFAULT_RATE_PER_MIN);
  const [playing, setPlaying] = useState(false);
  const still = useStillness();

  useEffect(() => {
    if (!playing) return;
    const began = performance.now() - 1000 * secondsAt(strokeView.getState().at, rate);
    let frame = requestAnimationFrame(function show(now) {
      strokeView.setState({ at: strokeAt(Math.max(0, now - began) / 1000, rate) });
      frame = requestAnimationFrame(show);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing, rate, strokeView]);

  const step = (by: number) => {
    setPlaying(false);
    const at = strokeView.getState().at + by;
    strokeView.setState({
      at: at < -1e-9 ? LEGS + by : at > LEGS + 1e-9 ? by : Math.min(LEGS, Math.max(0, at)),
    });
  };
  return (
    <div className="row stroke-play">
      {!still && (
        <Button aria-pressed={playing} onClick={() => setPlaying(!playing)}>
          {say(playing ? 'stroke.pause' : 'stroke.play')}
        </Button>
      )}
      <Button onClick={() => step(-FRAME)}>{say('photograph.film.back')}</Button>
      <Button onClick={() => step(FRAME)}>{say('photograph.film.on')}</Button>
    </div>
  );
}

/** Whether the person asks for less motion. */
function useStillness(): boolean {
  const [still, setStill] = useState(() => asked().matches);
  useEffect(() => {
    const query = asked();
    const changed = () => setStill(query.matches);
    query.addEventListener('change', changed);
    return () => query.removeEventListener('change', changed);
  }, []);
  return still;
}

const asked = () => window.matchMedia('(prefers-reduced-motion: reduce)');
