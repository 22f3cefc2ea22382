import { useMemo } from 'react';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { ViewPoint } from '../../../core/graphics/view.ts';
import { showPicture } from '../../../core/show/show-picture.ts';
import { type ShowScene, showScene } from '../../../core/show/show-scene.ts';
import type { BodyPlace } from '../../../core/trial/observation.ts';
import { solveFit } from '../../document/solved-fit.ts';
import { ShapesSvg } from '../../drawing/shapes-svg.tsx';
import { say } from '../../language/messages.ts';
import { PLACES_AFT, PLACES_FORWARD, placeInView } from './figure-places.ts';

/** The picture's frame, metres from the seat's mark: the figure stands between two columns of names. */
const FRAME = { left: -1.62, right: 1.5, bottom: -0.22 };
const WIDTH = FRAME.right - FRAME.left;
/** The figure is written in millimetres. */
const PER_METRE = 1000;
/** Heights of the picture's upper edge: for most, and over a tall head, metres. */
const USUAL_TOP = 1.5;
const OVER_HEAD = 0.05;
/** Where the names end and their lines begin, metres; heights of the first and last name. */
const NAMES = { aft: -0.98, forward: 0.84, highest: 1.2, lowest: 0.02 };

/** Up is negative in the picture: its upper edge follows the head. */
const svgPoint = ([right, up]: ViewPoint) => `${(right - FRAME.left).toFixed(4)} ${(-up).toFixed(4)}`;
const ringPath = (ring: readonly ViewPoint[]) => `M${ring.map(svgPoint).join('L')}`;

const heightOf = (index: number, count: number) =>
  NAMES.highest + ((NAMES.lowest - NAMES.highest) * index) / (count - 1);

/** The athlete's own figure as it kneels in the setting that was tried, with ten places to touch. */
export function TrialFigure(props: {
  fit: Fit;
  seat: number;
  felt: readonly BodyPlace[];
  onTouch: (place: BodyPlace) => void;
}) {
  const { fit, seat, felt } = props;
  const drawn = useMemo(() => {
    const solved = solveFit(fit);
    if (typeof solved === 'string') return null;
    const scene = showScene(fit, solved.report, seat);
    return scene && { scene, picture: showPicture(scene, solved.hull, 'side') };
  }, [fit, seat]);
  const top = Math.max(USUAL_TOP, (drawn?.scene.points.headTop.z ?? 0) + OVER_HEAD);
  const height = top - FRAME.bottom;
  const columns = [
    { places: PLACES_AFT, edge: NAMES.aft, side: 'aft' },
    { places: PLACES_FORWARD, edge: NAMES.forward, side: 'forward' },
  ] as const;
  return (
    <fieldset className="trial-figure">
      <legend className="only-spoken">{say('trial.figure')}</legend>
      {drawn && (
        <svg viewBox={`0 ${-top} ${WIDTH} ${height}`} aria-hidden="true" focusable="false">
          <g transform={`translate(${-FRAME.left - drawn.scene.frame.stationX} 0) scale(${1 / PER_METRE})`}>
            <ShapesSvg shapes={drawn.picture.ground} perMetre={PER_METRE} />
            <ShapesSvg shapes={drawn.picture.person} perMetre={PER_METRE} />
          </g>
          {columns.flatMap(({ places, edge }) =>
            places.map((place, i) => (
              <PlaceLine
                key={place}
                scene={drawn.scene}
                place={place}
                from={[edge, heightOf(i, places.length)]}
                felt={felt.includes(place)}
              />
            )),
          )}
        </svg>
      )}
      {columns.flatMap(({ places, side }) =>
        places.map((place, i) => (
          <button
            key={place}
            type="button"
            className="trial-place"
            data-side={side}
            style={{ top: `${((top - heightOf(i, places.length)) / height) * 100}%` }}
            aria-pressed={felt.includes(place)}
            onClick={() => props.onTouch(place)}
          >
            {say(`place.${place}`)}
          </button>
        )),
      )}
    </fieldset>
  );
}

function PlaceLine(props: { scene: ShowScene; place: BodyPlace; from: ViewPoint; felt: boolean }) {
  const at = placeInView(props.scene, props.place);
  const [cx, cy] = [at[0] - FRAME.left, -at[1]];
  return (
    <g className="trial-place-line" data-felt={props.felt || undefined}>
      <path d={ringPath([props.from, at])} />
      <circle cx={cx} cy={cy} r={props.felt ? 0.034 : 0.016} />
    </g>
  );
}
