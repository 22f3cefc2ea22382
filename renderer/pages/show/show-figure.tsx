import type { ShowShape } from '../../../core/show/show-picture.ts';
import type { ShowWindow } from '../../../core/show/show-window.ts';

/** What does not move between before and now. */
const GROUND = new Set(['water', 'waterLine', 'hull', 'hullLine', 'board']);

/** Metres in the view to the picture's units: millimetres, y down. */
const path = (rings: ShowShape['rings'], close: boolean) =>
  rings
    .map((ring) => `M${ring.map(([x, y]) => `${(x * 1000).toFixed(1)} ${(-y * 1000).toFixed(1)}`).join('L')}`)
    .join(close ? 'Z' : '') + (close ? 'Z' : '');

/** The picture of an athlete in the boat, from the far to the near; what stands out of it of an earlier one is dashed. */
export function ShowFigure(props: {
  shapes: readonly ShowShape[];
  before: readonly ShowShape[] | null;
  window: ShowWindow;
  label: string;
}) {
  const { from, width, height } = props.window;
  const box = [from[0], -from[1] - height, width, height].map((metres) => metres * 1000);
  const ground = props.shapes.filter(({ tone }) => GROUND.has(tone));
  const person = props.shapes.filter(({ tone }) => !GROUND.has(tone));
  const earlier = (props.before ?? []).filter(({ tone }) => !GROUND.has(tone) && tone !== 'joint');
  return (
    <svg className="show-figure" viewBox={box.join(' ')} role="img" aria-label={props.label}>
      <Shapes shapes={ground} />
      <g className="show-earlier">
        <Shapes shapes={earlier} />
      </g>
      <g className="show-person">
        <Shapes shapes={person} />
      </g>
    </svg>
  );
}

function Shapes({ shapes }: { shapes: readonly ShowShape[] }) {
  return shapes.map(({ tone, kind, rings }, index) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no names and are drawn anew together
    <path key={index} className={`show-${kind}`} data-tone={tone} d={path(rings, kind === 'area')} />
  ));
}
