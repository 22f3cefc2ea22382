import { useEffect, useRef, useState } from 'react';
import { SEEN_MOMENTS } from '../../../core/photograph/photo-study-schema.ts';
import type { SeenMoment } from '../../../core/photograph/seen-moment.ts';
import { type SeenRate, strokeRate } from '../../../core/photograph/stroke-rate.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { frameOf } from './upright-picture.ts';

/** One frame of most telephones' videos, seconds. */
const FRAME_S = 1 / 30;

/** A video of which single frames are picked, and whose catches give the rate. The video itself is not kept. */
export function Film(props: {
  source: string;
  onFrame: (file: File, moment: SeenMoment) => void;
  onRate: (rate: SeenRate) => void;
  onProblem: (problem: string) => void;
}) {
  const video = useRef<HTMLVideoElement>(null);
  const [moment, setMoment] = useState<SeenMoment>('ready');
  const [catches, setCatches] = useState<readonly number[]>([]);
  useEffect(() => () => URL.revokeObjectURL(props.source), [props.source]);
  const step = (frames: number) => {
    if (!video.current) return;
    video.current.pause();
    video.current.currentTime += frames * FRAME_S;
  };
  const use = async () => {
    const frame = video.current && (await frameOf(video.current));
    if (frame) props.onFrame(frame, moment);
  };
  const addCatch = () => {
    const at = video.current?.currentTime;
    if (at !== undefined) setCatches([...catches, at]);
  };
  return (
    <div className="photograph-film">
      <video
        ref={video}
        src={props.source}
        controls
        muted
        onError={() => props.onProblem(say('photograph.film.problem'))}
      />
      <p className="row">
        <Button onClick={() => step(-1)}>{say('photograph.film.back')}</Button>
        <Button onClick={() => step(1)}>{say('photograph.film.on')}</Button>
      </p>
      <div className="row">
        <ChoiceField
          label={say('photograph.moment')}
          value={moment}
          options={SEEN_MOMENTS.map((value) => ({ value, name: say(`photograph.moment.${value}`) }))}
          onChange={setMoment}
        />
        <Button look="chief" onClick={() => void use()}>
          {say('photograph.film.use')}
        </Button>
      </div>
      <RateOfCatches
        catches={catches}
        onAdd={addCatch}
        onClear={() => setCatches([])}
        onRate={props.onRate}
      />
    </div>
  );
}

function RateOfCatches(props: {
  catches: readonly number[];
  onAdd: () => void;
  onClear: () => void;
  onRate: (rate: SeenRate) => void;
}) {
  const format = useFormat();
  const { catches } = props;
  const rate = strokeRate(catches, FRAME_S);
  return (
    <div className="row">
      <Button onClick={props.onAdd}>{say('photograph.rate.catch')}</Button>
      <span role="status">
        {rate
          ? say('photograph.rate.is', {
              rate: format.number(rate.perMin, { decimals: 0, half: 1.96 * rate.sd }),
              doubt: format.number(1.96 * rate.sd, { decimals: 0, half: 1.96 * rate.sd }),
              count: rate.strokes,
            })
          : say('photograph.rate.about')}
      </span>
      {rate && <Button onClick={() => props.onRate(rate)}>{say('photograph.rate.use')}</Button>}
      {catches.length > 0 && (
        <Button look="words" onClick={props.onClear}>
          {say('measure.forget')}
        </Button>
      )}
    </div>
  );
}
