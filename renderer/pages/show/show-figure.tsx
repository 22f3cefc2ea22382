import { ringsOf, type Shape } from '../../../core/graphics/shape.ts';
import { svgPath, viewScale } from '../../../core/graphics/svg.ts';
import type { ShowPicture } from '../../../core/show/show-picture.ts';
import type { ShowWindow } from '../../../core/show/show-window.ts';
import { ShapesSvg } from '../../drawing/shapes-svg.tsx';

/** The picture's units: millimetres. */
const PER_METRE = 1000;

/** The picture of an athlete in the boat, from the far to the near; what stands out of it of an earlier one is dashed. */
export function ShowFigure(props: {
  picture: ShowPicture;
  before: readonly Shape[] | null;
  window: ShowWindow;
  label: string;
}) {
  const { from, width, height } = props.window;
  const box = [from[0], -from[1] - height, width, height].map((metres) => metres * PER_METRE);
  return (
    <svg className="show-figure" viewBox={box.join(' ')} role="img" aria-label={props.label}>
      <ShapesSvg shapes={props.picture.ground} perMetre={PER_METRE} />
      {props.before && (
        <path className="show-earlier" d={svgPath(ringsOf(props.before), viewScale(PER_METRE), 'closed')} />
      )}
      <g className="show-person">
        <ShapesSvg shapes={props.picture.person} perMetre={PER_METRE} />
      </g>
    </svg>
  );
}
