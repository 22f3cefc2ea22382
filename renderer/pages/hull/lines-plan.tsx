import { useMemo } from 'react';
import type { BoatPoint } from '../../../core/frame/vec3.ts';
import { lineThrough } from '../../../core/graphics/shape.ts';
import { svgPath } from '../../../core/graphics/svg.ts';
import type { Hull } from '../../../core/hull/hull.ts';
import { type HullLines, hullLines } from '../../../core/hull/hull-lines.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { LinesFiles } from './lines-files.tsx';

/** Heights and breadths are drawn larger than lengths, or a racing canoe is a needle. Said on the drawing. */
const TIMES = 3;
/** Room between and around the views, in the drawing's own millimetres of boat length. */
const GAP = 190;
/** Sections drawn in the body plan on each side. */
const BODY_SECTIONS = 6;

const MILLIMETRES = { perUnit: 1000, flip: false, decimals: 1 } as const;
const path = (points: readonly (readonly [number, number])[]) =>
  svgPath([lineThrough(points)], MILLIMETRES, 'open');

/** The lines plan: profile over plan on one length, the body plan below; bow to the right. */
export function LinesPlan({ id, hull, name }: { id: string; hull: Hull; name: string }) {
  const format = useFormat();
  const lines = useMemo(() => hullLines(hull), [hull]);
  const depth = (hull.highestZ - hull.lowestZ) * TIMES * 1000;
  const half = Math.max(...lines.sheer.map((p) => p.y)) * TIMES * 1000;
  const profileY = GAP + depth;
  const planY = profileY + GAP + half * 0.2;
  const bodyY = planY + half + 2 * GAP + depth;
  const width = hull.length * 1000 + 2 * GAP;
  const left = hull.aftX * 1000 - GAP;
  const length = format.length(hull.length, { unit: 'm' });
  return (
    <section>
      <h2>{say('hull.lines')}</h2>
      <LinesFiles id={id} hull={hull} name={name} />
      <figure className="lines-plan">
        <svg
          viewBox={`${left} 0 ${width} ${bodyY + GAP * 0.4}`}
          role="img"
          aria-label={say('hull.lines.spoken', { name, length })}
        >
          <Stations hull={hull} from={GAP * 0.6} to={planY + half + 30} />
          <g transform={`translate(0 ${profileY + hull.lowestZ * TIMES * 1000})`}>
            <Profile lines={lines} />
          </g>
          <g transform={`translate(0 ${planY})`}>
            <Plan lines={lines} hull={hull} />
          </g>
          <g transform={`translate(${left + width / 2} ${bodyY + hull.lowestZ * TIMES * 1000})`}>
            <Body lines={lines} hull={hull} />
          </g>
          <g className="lines-words">
            <text x={left + 20} y={GAP * 0.45}>
              {say('hull.lines.profile')}
            </text>
            <text x={left + 20} y={planY - 30}>
              {say('hull.lines.plan')}
            </text>
            <text x={left + 20} y={bodyY - depth}>
              {say('hull.lines.body')}
            </text>
            <text x={left + width - 20} y={GAP * 0.45} textAnchor="end">
              {say('hull.lines.across', { times: TIMES })}
            </text>
            <ScaleBar x={left + 20} y={bodyY + GAP * 0.25} />
            <text x={hull.foreX * 1000 + 20} y={profileY - depth / 2}>
              {say('stroke.line.bow')}
            </text>
            <text x={hull.aftX * 1000 - 20} y={profileY - depth / 2} textAnchor="end">
              {say('stroke.line.stern')}
            </text>
          </g>
        </svg>
      </figure>
    </section>
  );
}

/** How long a metre is on the drawing, whatever it is printed at. */
function ScaleBar({ x, y }: { x: number; y: number }) {
  const format = useFormat();
  const ticks = Array.from({ length: 11 }, (_, k) => `M${x + 100 * k} ${y}v${k % 5 === 0 ? -40 : -22}`);
  return (
    <>
      <path className="lines-thin" d={`M${x} ${y}h1000${ticks.join('')}`} />
      <text x={x + 1020} y={y}>
        {format.length(1, { unit: 'm' })}
      </text>
    </>
  );
}

function Stations({ hull, from, to }: { hull: Hull; from: number; to: number }) {
  const marks = Array.from({ length: 11 }, (_, i) => hull.aftX + (hull.length * i) / 10);
  return (
    <>
      <path className="lines-grid" d={marks.map((x) => `M${(1000 * x).toFixed(1)} ${from}V${to}`).join('')} />
      <g className="lines-words">
        {marks.map((x, station) => (
          <text key={x} x={1000 * x} y={to + 70} textAnchor="middle">
            {station}
          </text>
        ))}
      </g>
    </>
  );
}

const side = ({ x, z }: BoatPoint) => [x, -z * TIMES] as const;
const above = ({ x, y }: BoatPoint) => [x, y * TIMES] as const;

/**
 * The name of each line, counted from the keel or from the centreline: at the place along its last run that `along` says,
 * a share from its after to its fore end.
 */
function LineNames(props: {
  lines: readonly { readonly runs: readonly BoatPoint[][] }[];
  named: (number: number) => string;
  see: (point: BoatPoint) => readonly [number, number];
  along?: (index: number) => number;
}) {
  const { along = () => 1 } = props;
  const ends = props.lines.flatMap(({ runs }, k) => {
    const run = runs.at(-1) ?? [];
    const at = run[Math.round(along(k) * (run.length - 1))];
    return at ? [{ name: props.named(k + 1), at: props.see(at) }] : [];
  });
  return (
    <g className="lines-words lines-names">
      {ends.map(({ name, at: [x, y] }) => (
        <text key={name} x={1000 * x + 8} y={1000 * y}>
          {name}
        </text>
      ))}
    </g>
  );
}

function Profile({ lines }: { lines: HullLines }) {
  return (
    <>
      <path
        className="lines-thick"
        d={path([...lines.sheer, ...[...lines.keel].reverse(), lines.sheer[0]!].map(side))}
      />
      <path
        className="lines-thin"
        d={lines.buttocks.flatMap(({ runs }) => runs.map((run) => path(run.map(side)))).join('')}
      />
      <LineNames lines={lines.buttocks} named={(k) => say('hull.lines.buttock', { number: k })} see={side} />
    </>
  );
}

/** Waterlines all end at bow and stern: their names stand one after another along the middle, where they lie apart. */
const waterlineName = (index: number) => 0.3 + 0.08 * index;

function Plan({ lines, hull }: { lines: HullLines; hull: Hull }) {
  return (
    <>
      <path className="lines-axis" d={`M${hull.aftX * 1000 - 80} 0H${hull.foreX * 1000 + 80}`} />
      <path className="lines-thick" d={path(lines.sheer.map(above))} />
      <path
        className="lines-thin"
        d={lines.waterlines.flatMap(({ runs }) => runs.map((run) => path(run.map(above)))).join('')}
      />
      <LineNames
        lines={lines.waterlines}
        named={(k) => say('hull.lines.waterline', { number: k })}
        see={above}
        along={waterlineName}
      />
    </>
  );
}

function Body({ lines, hull }: { lines: HullLines; hull: Hull }) {
  const middle = (hull.aftX + hull.foreX) / 2;
  const wanted = Array.from(
    { length: BODY_SECTIONS },
    (_, i) => (0.97 * (hull.length / 2) * i) / (BODY_SECTIONS - 1),
  );
  const nearest = (x: number) =>
    lines.sections.reduce((best, s) => (Math.abs(s.x - x) < Math.abs(best.x - x) ? s : best));
  const sections = (sign: 1 | -1) =>
    wanted
      .map((d) =>
        path(nearest(middle + sign * d).points.map(({ y, z }) => [sign * y * TIMES, -z * TIMES] as const)),
      )
      .join('');
  const top = -hull.highestZ * TIMES * 1000 - 60;
  return (
    <>
      <path className="lines-axis" d={`M0 ${top}V${-hull.lowestZ * TIMES * 1000 + 30}`} />
      <path className="lines-thick" d={sections(1) + sections(-1)} />
    </>
  );
}
