import type { ReadPicture } from '../../../core/photograph/read-picture.ts';
import { toDegrees } from '../../../core/units/angle.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';

/** How the boat floats in the picture, beside what is expected of the fit. */
export function AfloatLine({ afloat }: { afloat: ReadPicture['afloat'] }) {
  const format = useFormat();
  if (!afloat) return null;
  const { seen, planned } = afloat;
  const degrees = (radians: number, half: number, signed = false) =>
    format.degrees(toDegrees(radians), { signed, decimals: 1, half: toDegrees(half) });
  const half = 1.96 * seen.trimSd;
  const plannedHalf = 1.96 * (planned?.sd ?? 0);
  return (
    <p>
      {say('photograph.afloat', {
        trim: degrees(seen.trim, half, true),
        doubt: degrees(half, half),
        draft: format.length(seen.draft),
      })}{' '}
      {planned &&
        say(planned.sd === null ? 'photograph.afloat.planned' : 'photograph.afloat.planned.doubt', {
          trim: degrees(planned.value, plannedHalf, true),
          doubt: degrees(plannedHalf, plannedHalf),
        })}
    </p>
  );
}
