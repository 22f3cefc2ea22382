import { useMemo } from 'react';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { markGuide } from '../../../core/photograph/mark-guide.ts';
import { ShapesSvg } from '../../drawing/shapes-svg.tsx';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import type { PhotoMarkName } from './mark-order.ts';
import { markName } from './mark-words.ts';
import { markBeside } from './marked-study.ts';

/** The picture's units: millimetres. */
const PER_METRE = 1000;
/** Radius of the spot, millimetres. */
const SPOT = 38;

/** Which point is to be marked next, on the planned paddler: joints from the side, the boat from above. */
export function GuidePicture(props: {
  fit: Fit;
  seat: number;
  inHand: PhotoMarkName;
  onTake: (name: PhotoMarkName) => void;
}) {
  const { fit, seat, inHand, onTake } = props;
  const [kind, own] = inHand.split('.') as ['boat' | 'joint' | 'water', string];
  const view = kind === 'boat' ? 'above' : 'side';
  const guide = useMemo(() => markGuide(fit, seat, view), [fit, seat, view]);
  if (!guide) return null;
  const { from, width, height } = guide.window;
  const places: Readonly<Record<string, readonly [number, number]>> =
    kind === 'joint'
      ? guide.joints
      : { ...guide.boat, waterBow: guide.boat.bow, waterStern: guide.boat.stern };
  // An end of the boat lies outside: the spot then stands at the edge on its side.
  const [right, up] = places[own]!;
  const [x, y] = [inside(right, from[0], width), inside(up, from[1], height)];
  const box = [from[0], -from[1] - height, width, height].map((metres) => metres * PER_METRE);
  return (
    <figure className="photograph-guide">
      <svg
        viewBox={box.join(' ')}
        role="img"
        aria-label={say('photograph.guide', { mark: markName(inHand) })}
      >
        <ShapesSvg shapes={guide.picture.ground} perMetre={PER_METRE} />
        <ShapesSvg shapes={guide.picture.person} perMetre={PER_METRE} />
        <circle className="spot" cx={x * PER_METRE} cy={-y * PER_METRE} r={SPOT} />
      </svg>
      <figcaption>
        <span className="name" aria-live="polite">
          {markName(inHand)}
        </span>
        <Button onClick={() => onTake(markBeside(inHand, -1))}>{say('photograph.guide.back')}</Button>
        <Button onClick={() => onTake(markBeside(inHand, 1))}>{say('photograph.guide.next')}</Button>
      </figcaption>
    </figure>
  );
}

const EDGE_M = 0.05;
const inside = (value: number, least: number, size: number) =>
  Math.min(least + size - EDGE_M, Math.max(least + EDGE_M, value));
