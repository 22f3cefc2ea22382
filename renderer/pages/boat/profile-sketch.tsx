import { say } from '../../language/messages.ts';
import type { ProfilePoint } from './blank-pieces.ts';

/** Heights are drawn this many times larger than lengths; the text below the sketch says so. */
const TALLER = 5;
/** Size of the sketch's own sheet, and the room around the line. */
const WIDTH = 620;
const ROOM = 16;

/** The floorboard from the side as far as its points are complete, bow to the right. */
export function ProfileSketch({ points }: { points: readonly ProfilePoint[] }) {
  const complete = points.flatMap(({ fromSternM, heightM }) =>
    fromSternM === null || heightM === null ? [] : [{ x: fromSternM, z: heightM }],
  );
  if (complete.length < 2) return null;
  const sorted = complete.toSorted((a, b) => a.x - b.x);
  const [first, last] = [sorted[0]!.x, sorted.at(-1)!.x];
  const perMetre = (WIDTH - 2 * ROOM) / Math.max(0.1, last - first);
  const most = Math.max(...sorted.map(({ z }) => z));
  const height = Math.min(220, most * perMetre * TALLER + 2 * ROOM);
  const low = height - ROOM;
  const scale = Math.min(perMetre * TALLER, (height - 2 * ROOM) / Math.max(most, 0.001));
  const at = sorted.map(({ x, z }) => [ROOM + (x - first) * perMetre, low - z * scale] as const);
  return (
    <figure className="profile-sketch">
      <svg viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-label={say('boat.profile.sketch')}>
        <path d={`M0 ${low}H${WIDTH}`} className="plot-rule" />
        <path d={`M${at.map(([x, y]) => `${x} ${y}`).join('L')}`} className="profile-line" />
        {at.map(([x, y]) => (
          <circle key={x} cx={x} cy={y} r="4" className="plot-point" />
        ))}
      </svg>
      <figcaption className="soft">{say('boat.profile.sketch')}</figcaption>
    </figure>
  );
}
