import type { PhotoRecord } from '../../../app/contract/photos.ts';
import { seenStroke } from '../../../core/photograph/seen-stroke.ts';
import { toDegrees } from '../../../core/units/angle.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';

/** What the applied pictures of catch, drive and exit tell of the stroke; nothing before there are any. */
export function StrokeSeen({ pictures, seat }: { pictures: readonly PhotoRecord[]; seat: number }) {
  const format = useFormat();
  const { trunkRange, topHandOver } = seenStroke(
    pictures.flatMap(({ study }) => (study ? [study] : [])),
    seat,
  );
  if (!trunkRange && !topHandOver) return null;
  return (
    <section className="stack">
      <h3>{say('photograph.stroke')}</h3>
      {trunkRange && (
        <p>
          {say('photograph.stroke.trunk', {
            range: format.degrees(toDegrees(trunkRange.value)),
            doubt: format.degrees(toDegrees(1.96 * trunkRange.sd)),
          })}
        </p>
      )}
      {topHandOver && (
        <p>
          {say('photograph.stroke.top-hand', {
            height: format.length(topHandOver.value, { half: 1.96 * topHandOver.sd }),
            doubt: format.length(1.96 * topHandOver.sd, { half: 1.96 * topHandOver.sd }),
          })}
        </p>
      )}
    </section>
  );
}
