import { useMemo } from 'react';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { waterSchema } from '../../../core/document/water-schema.ts';
import { lineThrough } from '../../../core/graphics/shape.ts';
import { svgPath } from '../../../core/graphics/svg.ts';
import type { Hull } from '../../../core/hull/hull.ts';
import { shellCentre } from '../../../core/hull/shell-centre.ts';
import { gzCurve } from '../../../core/hydrostatics/gz-curve.ts';
import { waterDensity } from '../../../core/hydrostatics/water-density.ts';
import { toDegrees, toRadians } from '../../../core/units/angle.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';

/** The paddler of the plot: an example, named beside it. */
const PADDLER_KG = 75;
const ABOVE_FLOOR = 0.72;

const WIDTH = 600;
const HEIGHT = 220;
const LEFT = 56;
const TOP = 14;
/** Heels asked for, degrees: fine enough for a smooth line. */
const HEELS = Array.from({ length: 41 }, (_, i) => toRadians(i));

/** Heels written below the plot, degrees. */
const MARKED_EVERY = 5;

/** Righting arms over heel with a plain example paddler; above the line the boat rights itself. */
export function RightingArms({ hull, boat }: { hull: Hull; boat: Boat }) {
  const format = useFormat();
  const height = boat.floorboard.heightM + ABOVE_FLOOR;
  const curve = useMemo(() => {
    const own = boat.centre ? { x: boat.centre.xM, z: boat.centre.zM } : shellCentre(hull);
    const masses = [
      { mass: boat.massKg, x: own.x, y: 0, z: own.z },
      { mass: PADDLER_KG, x: 0, y: 0, z: height },
    ];
    return gzCurve(hull, { masses, waterDensity: waterDensity(waterSchema.parse({})) }, HEELS);
  }, [hull, boat, height]);
  const end = curve.points.at(-1)?.heel ?? 0;
  const most = Math.max(0.02, ...curve.points.map((p) => Math.abs(p.gz)));
  const x = (heel: number) => LEFT + ((WIDTH - LEFT - 20) * heel) / Math.max(end, 1e-6);
  const y = (gz: number) => TOP + (HEIGHT - 2 * TOP) * (0.5 - (0.5 * gz) / most);
  const points = lineThrough(curve.points.map((p) => [x(p.heel), y(p.gz)]));
  const line = svgPath([points], { perUnit: 1, flip: false, decimals: 1 }, 'open');
  const arm = curve.points.find((p) => toDegrees(p.heel) >= 10)?.gz ?? 0;
  const rights = (curve.points[1]?.gz ?? -1) > 0;
  const marked = HEELS.filter((heel, degree) => degree % MARKED_EVERY === 0 && heel <= end + 1e-9);
  const degrees = (value: number) => format.degrees(toDegrees(value));
  return (
    <section>
      <h2>{say('hull.gz')}</h2>
      <p>{say(rights ? 'hull.gz.rights' : 'hull.gz.balanced')}</p>
      <p className="soft">
        {say('hull.gz.about', { mass: format.mass(PADDLER_KG), height: format.length(ABOVE_FLOOR) })}
      </p>
      <figure className="righting">
        <svg
          viewBox={`0 0 ${WIDTH} ${HEIGHT + 26}`}
          role="img"
          aria-label={say('hull.gz.spoken', {
            end: degrees(end),
            arm: format.length(arm, { fine: true, signed: true }),
          })}
        >
          <path className="lines-axis" d={`M${LEFT} ${y(0)}H${WIDTH - 10}M${LEFT} ${TOP}V${HEIGHT - TOP}`} />
          <path className="lines-thick" d={line} />
          <g className="lines-words small">
            <text x={LEFT - 6} y={y(most) + 8} textAnchor="end">
              {format.length(most, { fine: true, signed: true })}
            </text>
            <text x={LEFT - 6} y={y(-most)} textAnchor="end">
              {format.length(-most, { fine: true, signed: true })}
            </text>
            {marked.map((heel) => (
              <text key={heel} x={x(heel)} y={HEIGHT + 16} textAnchor="middle">
                {degrees(heel)}
              </text>
            ))}
          </g>
        </svg>
      </figure>
    </section>
  );
}
