import type { SeenPosture } from '../../../core/photograph/posture-from-marks.ts';
import type { ReadPicture } from '../../../core/photograph/read-picture.ts';
import type { StanceAngle } from '../../../core/posture/stance.ts';
import { toDegrees } from '../../../core/units/angle.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';

/** The angles in the order of the table. */
const ROWS: readonly StanceAngle[] = [
  'trunkPitch',
  'trunkRoll',
  'frontKnee',
  'kneelingKnee',
  'kneelingHip',
  'frontHip',
  'frontAnkle',
  'rearAnkle',
  'thighPitch',
  'thighRoll',
  'pelvisYaw',
];

/** Plan, seen, and the difference with its doubt (95 %), for every angle. */
export function AngleTable({
  plan,
  posture,
}: {
  plan: NonNullable<ReadPicture['plan']>;
  posture: SeenPosture;
}) {
  const format = useFormat();
  return (
    <table className="photograph-table">
      <thead>
        <tr>
          <th scope="col">{say('photograph.table.angle')}</th>
          <th scope="col">{say('photograph.table.plan')}</th>
          <th scope="col">{say('photograph.table.seen')}</th>
          <th scope="col">{say('photograph.table.difference')}</th>
        </tr>
      </thead>
      <tbody>
        {ROWS.map((name) => {
          const planned = toDegrees(plan.angles[name]);
          const seen = toDegrees(posture.angles[name]);
          const doubt = toDegrees(1.96 * posture.sd[name]);
          const clear = Math.abs(seen - planned) > doubt;
          return (
            <tr key={name} className={clear ? 'clear' : undefined}>
              <th scope="row">{say(`photograph.angle.${name}`)}</th>
              <td>{format.degrees(planned)}</td>
              <td>{format.degrees(seen)}</td>
              <td>
                {say('photograph.table.difference.value', {
                  difference: format.degrees(seen - planned, { signed: true }),
                  doubt: format.degrees(doubt),
                })}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
