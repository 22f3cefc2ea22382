import { useMemo } from 'react';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { ViewPoint } from '../../../core/graphics/view.ts';
import { BOAT_MARKS } from '../../../core/photograph/boat-marks.ts';
import { type MarkGuide, markGuide } from '../../../core/photograph/mark-guide.ts';
import { ShapesSvg } from '../../drawing/shapes-svg.tsx';
import { say } from '../../language/messages.ts';
import { CameraPlaces } from './camera-places.tsx';
import { JOINT_ORDER } from './mark-order.ts';

/** The pictures' units: millimetres. */
const PER_METRE = 1000;
/** Radius of a ring, millimetres; where two would touch, the first is drawn. */
const RING = 15;
const RING_APART_M = 0.04;

/** What to photograph, before there is a picture: where to stand, and the planned paddler as both pictures should show it. */
export function ExamplePictures({ fit, seat }: { fit: Fit; seat: number }) {
  return (
    <section className="photograph-example" aria-labelledby="photograph-example">
      <h2 id="photograph-example">{say('photograph.example')}</h2>
      <div className="photograph-example-row">
        <figure>
          <CameraPlaces fit={fit} seat={seat} />
          <figcaption>{say('photograph.example.stand')}</figcaption>
        </figure>
        {(['side', 'behind'] as const).map((view) => (
          <figure key={view}>
            <Example fit={fit} seat={seat} view={view} />
            <figcaption>{say(`photograph.example.${view}`)}</figcaption>
          </figure>
        ))}
      </div>
      <p className="soft">{say('photograph.example.rings')}</p>
    </section>
  );
}

function Example({ fit, seat, view }: { fit: Fit; seat: number; view: 'side' | 'behind' }) {
  const guide = useMemo(() => markGuide(fit, seat, view), [fit, seat, view]);
  if (!guide) return null;
  const { from, width, height } = guide.window;
  const box = [from[0], -from[1] - height, width, height].map((metres) => metres * PER_METRE);
  return (
    <svg viewBox={box.join(' ')} aria-hidden="true" focusable="false">
      <ShapesSvg shapes={guide.picture.ground} perMetre={PER_METRE} />
      <ShapesSvg shapes={guide.picture.person} perMetre={PER_METRE} />
      {ringed(guide).map(({ name, at: [right, up] }) => (
        <circle key={name} className="ring" cx={right * PER_METRE} cy={-up * PER_METRE} r={RING} />
      ))}
    </svg>
  );
}

/** The joints, and the points of the boat that lie in the picture; of those that lie together, one. */
function ringed({ joints, boat, window: { from, width, height } }: MarkGuide): Ring[] {
  const all = [
    ...JOINT_ORDER.map((name) => ({ name: `joint.${name}`, at: joints[name] })),
    ...BOAT_MARKS.map((name) => ({ name: `boat.${name}`, at: boat[name] })),
  ];
  const isIn = ({ at: [right, up] }: Ring) =>
    right > from[0] && right < from[0] + width && up > from[1] && up < from[1] + height;
  const kept: Ring[] = [];
  for (const ring of all.filter(isIn)) if (kept.every((other) => isApart(other, ring))) kept.push(ring);
  return kept;
}

const isApart = (a: Ring, b: Ring) => Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]) > RING_APART_M;

interface Ring {
  readonly name: string;
  readonly at: ViewPoint;
}
