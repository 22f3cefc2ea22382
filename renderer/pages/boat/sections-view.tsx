import { useMemo } from 'react';
import type { HullSource } from '../../../core/document/hull-kinds-schema.ts';
import { lineThrough } from '../../../core/graphics/shape.ts';
import { svgPath, viewScale } from '../../../core/graphics/svg.ts';
import type { Hull, SectionPoint, Station } from '../../../core/hull/hull.ts';
import { useFormat } from '../../display/use-display.ts';
import { hullOrWhyNot } from '../../document/solved-fit.ts';
import { say } from '../../language/messages.ts';

/** Sections drawn in each half of the boat. */
const PER_HALF = 5;
/** Room around the drawing, in its own millimetres. */
const MARGIN_MM = 24;

/** Stations to draw: evenly spread over one half, from the midship section outward. */
function half(hull: Hull, direction: 1 | -1): Station[] {
  const middle = (hull.aftX + hull.foreX) / 2;
  const reach = hull.length / 2;
  return Array.from({ length: PER_HALF }, (_, i) => {
    const x = middle + (direction * reach * i) / PER_HALF;
    return hull.stations.reduce((best, s) => (Math.abs(s.x - x) < Math.abs(best.x - x) ? s : best));
  });
}

const line = (section: readonly SectionPoint[], side: 1 | -1) =>
  svgPath([lineThrough(section.map(([y, z]) => [side * y, z]))], viewScale(1000), 'open');

/** The body plan: fore sections to the right of the centreline, after sections to the left, as on a lines drawing. */
export function SectionsView({ source }: { source: HullSource | null }) {
  const format = useFormat();
  const hull = useMemo(() => source && hullOrWhyNot({ hull: source, name: '', correction: null }), [source]);
  // Incomplete entries may not make a hull yet; the form says what is missing.
  if (!hull || typeof hull === 'string')
    return <p className="soft sections-none">{say('boat.sections.none')}</p>;
  const beam = 2 * Math.max(...hull.stations.flatMap(({ section }) => section.map(([y]) => y)));
  const depth = hull.highestZ - hull.lowestZ;
  const [w, h] = [beam * 1000 + 2 * MARGIN_MM, depth * 1000 + 2 * MARGIN_MM];
  const top = -hull.highestZ * 1000 - MARGIN_MM;
  const long = format.length(hull.length, format.lengthUnit === 'in' ? {} : { unit: 'm' });
  const spoken = say('boat.sections.spoken', {
    stations: hull.stations.length,
    length: long,
    beam: format.length(beam),
  });
  return (
    <figure className="sections">
      <svg viewBox={`${-w / 2} ${top} ${w} ${h}`} role="img" aria-label={spoken}>
        <g fill="none" stroke="var(--rule)" strokeWidth="1">
          <path d={`M0 ${top}V${top + h}`} strokeDasharray="12 4 2 4" />
          <path d={`M${-w / 2} ${-hull.lowestZ * 1000}H${w / 2}`} />
        </g>
        <g fill="none" stroke="var(--hull-line)" strokeWidth="1.2">
          {half(hull, 1).map((s) => (
            <path key={`fore ${s.x}`} d={line(s.section, 1)} />
          ))}
          {half(hull, -1).map((s) => (
            <path key={`aft ${s.x}`} d={line(s.section, -1)} />
          ))}
        </g>
      </svg>
      <figcaption>
        {say('boat.sections.figures', {
          length: long,
          beam: format.length(beam),
          depth: format.length(depth),
        })}
      </figcaption>
    </figure>
  );
}
