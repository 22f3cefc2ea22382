import type { Pixel } from '../../../core/photograph/camera.ts';
import type { FigurePoint } from '../../../core/posture/stance.ts';
import { FIGURE_LINES } from './mark-order.ts';
import type { PictureReading } from './use-reading.ts';

/** The plan's figure and the one that was seen, as joint lines in the picture's perspective. */
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
  const { plan, seen } = reading.answer;
  return (
    <g className="photograph-figures" strokeWidth={width / 250}>
      {plan && (
        <g className="of-plan" opacity={opacity} data-testid="plan-figure">
          <Lines points={plan.points} />
        </g>
      )}
      {seen && (
        <g className="of-seen" data-testid="seen-figure">
          <Lines points={seen} />
        </g>
      )}
    </g>
  );
}

function Lines({ points }: { points: Readonly<Record<FigurePoint, Pixel>> }) {
  return FIGURE_LINES.map((line) => (
    <polyline
      key={line.join(' ')}
      points={line.map((name) => `${points[name].u},${points[name].v}`).join(' ')}
      fill="none"
    />
  ));
}
