import { useMemo } from 'react';
import { showPicture } from '../../../core/show/show-picture.ts';
import { showScene } from '../../../core/show/show-scene.ts';
import { solveFit } from '../../document/solved-fit.ts';
import { ShapesSvg } from '../../drawing/shapes-svg.tsx';
import { startFit } from './start-fit.ts';

/** Written in millimetres. */
const PER_METRE = 1000;
/** What is seen of the boat to each side of the seat's mark, and over and under the base line, metres. */
const FRAME = { half: 1.42, top: 1.5, bottom: -0.32, plan: 0.42, gap: 0.06 };

/** A drawing for the empty sheet: a paddler of mean size in a usual single, from above and from the side, as first set. */
export function StartFigure() {
  const views = useMemo(drawn, []);
  const { half, top, bottom, plan, gap } = FRAME;
  const height = 2 * plan + gap + top - bottom;
  if (!views) return null;
  const across = `translate(${half - views.stationX}`;
  return (
    <svg className="start-figure" viewBox={`0 0 ${2 * half} ${height}`} aria-hidden="true" focusable="false">
      <path className="start-axis" d={`M${half} 0V${height}`} />
      <clipPath id="start-plan">
        <rect width={2 * half} height={2 * plan} />
      </clipPath>
      <clipPath id="start-profile">
        <rect y={2 * plan + gap} width={2 * half} height={top - bottom} />
      </clipPath>
      <g clipPath="url(#start-plan)">
        <g transform={`${across} ${plan}) scale(${1 / PER_METRE})`}>
          <ShapesSvg shapes={views.above} perMetre={PER_METRE} />
        </g>
      </g>
      <g clipPath="url(#start-profile)">
        <g transform={`${across} ${2 * plan + gap + top}) scale(${1 / PER_METRE})`}>
          <ShapesSvg shapes={views.side} perMetre={PER_METRE} />
        </g>
      </g>
    </svg>
  );
}

/** The shapes of both views; null where there is nothing to show. */
function drawn() {
  const solved = solveFit(startFit());
  if (typeof solved === 'string') return null;
  const { fit, report, hull } = solved;
  const scene = showScene(fit, report, 0);
  if (!scene) return null;
  const shapes = (view: 'side' | 'above') => {
    const { ground, person } = showPicture(scene, hull, view);
    return [...ground, ...person];
  };
  return { side: shapes('side'), above: shapes('above'), stationX: scene.frame.stationX };
}
