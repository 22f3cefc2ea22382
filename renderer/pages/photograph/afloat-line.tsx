import type { ReadPicture } from '../../../core/photograph/read-picture.ts';
import { toDegrees } from '../../../core/units/angle.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';

/** How the boat floats in the picture, beside what is expected of the fit. */
export function AfloatLine({ afloat }: { afloat: ReadPicture['afloat'] }) {
  const format = useFormat();
  if (!afloat) return null;
  const { seen, planned } = afloat;
  const degrees = (radians: number, signed = false) =>
    format.degrees(toDegrees(radians), { signed, decimals: 1 });
  return (
    <p>
      {say('photograph.afloat', {
        trim: degrees(seen.trim, true),
        doubt: degrees(1.96 * seen.trimSd),
        draft: format.length(seen.draft),
      })}{' '}
      {planned &&
        say(planned.sd === null ? 'photograph.afloat.planned' : 'photograph.afloat.planned.doubt', {
          trim: degrees(planned.value, true),
          doubt: degrees(1.96 * (planned.sd ?? 0)),
        })}
    </p>
  );
}
