import type { Pixel } from '../../../core/photograph/camera.ts';
import type { PictureShapes } from '../../../core/photograph/picture-shapes.ts';
import type { FigurePoint } from '../../../core/posture/stance.ts';
import { ShapesSvg } from '../../drawing/shapes-svg.tsx';
import { FIGURE_LINES } from './mark-order.ts';
import type { PictureReading } from './use-reading.ts';

/** The plan's figure as it is drawn, in the picture's perspective, the boat's gunwales, and the joints that were seen. */
export function FigureLines({
  reading,
  opacity,
  width,
}: {
  reading: PictureReading;
  opacity: number;
  width: number;
}) {
  if (reading.kind !== 'read') return null;
  const { plan, seen, gunwales } = reading.answer;
  return (
    <g className="photograph-figures" strokeWidth={width / 250}>
      {plan && (
        <g opacity={opacity} data-testid="plan-figure">
          {plan.drawn && <Drawn drawn={plan.drawn} />}
          <g className="of-boat" strokeWidth={width / 500}>
            {gunwales.map((line, side) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: port and starboard, always two
              <polyline key={side} points={pointsText(line)} fill="none" />
            ))}
          </g>
        </g>
      )}
      {seen && (
        <g className="of-seen" data-testid="seen-figure">
          <Joined points={seen} />
        </g>
      )}
    </g>
  );
}

function Drawn({ drawn }: { drawn: PictureShapes }) {
  const { shapes, origin, pxPerMetre } = drawn;
  return (
    <g transform={`translate(${origin.u} ${origin.v})`}>
      <ShapesSvg shapes={shapes} perMetre={pxPerMetre} />
    </g>
  );
}

function Joined({ points }: { points: Readonly<Record<FigurePoint, Pixel>> }) {
  return FIGURE_LINES.map((line) => (
    <polyline key={line.join(' ')} points={pointsText(line.map((name) => points[name]))} fill="none" />
  ));
}

const pointsText = (line: readonly Pixel[]) => line.map(({ u, v }) => `${u},${v}`).join(' ');
