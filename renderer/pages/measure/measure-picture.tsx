import { useMemo } from 'react';
import type { TapeMeasure } from '../../../core/document/athlete-schema.ts';
import { figureShapes } from '../../../core/figure/figure-shapes.ts';
import { measuringFigure } from '../../../core/figure/measuring-poses.ts';
import type { ViewPoint } from '../../../core/graphics/view.ts';
import { ShapesSvg } from '../../drawing/shapes-svg.tsx';
import { TAPE_PICTURES, type TapePicture } from './measure-figures.ts';

/** The picture is written in millimetres. */
const PER_METRE = 1000;
/** Sizes of what is drawn over the figure, as shares of the picture's breadth. */
const MARK = 0.016;
const TAPE_END = 0.02;

const point = ([right, up]: ViewPoint) => `${Math.round(right * PER_METRE)} ${Math.round(-up * PER_METRE)}`;
const line = (points: readonly ViewPoint[]) => `M${points.map(point).join('L')}`;

/** Where a measure is taken, drawn: the body in its posture, the two landmarks, and the tape between them. */
export function MeasurePicture({ measure, spoken }: { measure: TapeMeasure | 'stature'; spoken: string }) {
  const picture = TAPE_PICTURES[measure];
  const { pose, view, seen, ground } = picture;
  const shapes = useMemo(() => figureShapes(measuringFigure(pose), view), [pose, view]);
  const [right, up, breadth] = seen;
  const box = [right - breadth / 2, -up - breadth / 2, breadth, breadth].map((metres) => metres * PER_METRE);
  return (
    <svg className="measure-picture" viewBox={box.join(' ')} role="img" aria-label={spoken}>
      {ground.map((points) => (
        <path key={line(points)} d={line(points)} className="picture-ground" />
      ))}
      <ShapesSvg shapes={shapes} perMetre={PER_METRE} />
      <Tape picture={picture} />
    </svg>
  );
}

/** The measured stretch: two landmarks, lines from them to the tape where it lies aside, and the tape with its ends. */
function Tape({ picture: { from, to, aside, seen } }: { picture: TapePicture }) {
  const [a, b] = aside ?? [from, to];
  const breadth = seen[2];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const across = [
    (-(b[1] - a[1]) / length) * TAPE_END * breadth,
    ((b[0] - a[0]) / length) * TAPE_END * breadth,
  ] as const;
  const end = ([x, y]: ViewPoint) =>
    line([
      [x - across[0], y - across[1]],
      [x + across[0], y + across[1]],
    ]);
  return (
    <g>
      {aside && <path d={line([from, a]) + line([to, b])} className="picture-reach" />}
      <path d={line([a, b]) + end(a) + end(b)} className="picture-tape" />
      {[from, to].map((mark) => (
        <circle
          key={String(mark)}
          cx={mark[0] * PER_METRE}
          cy={-mark[1] * PER_METRE}
          r={MARK * breadth * PER_METRE}
          className="picture-mark"
        />
      ))}
    </g>
  );
}
