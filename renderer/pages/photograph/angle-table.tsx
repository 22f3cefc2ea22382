import { SIGMAS_95 } from '../../../core/evaluation/probability.ts';
import type { SeenPosture } from '../../../core/photograph/posture-from-marks.ts';
import type { ReadPicture } from '../../../core/photograph/read-picture.ts';
import type { StanceAngle } from '../../../core/posture/stance.ts';
import { toDegrees } from '../../../core/units/angle.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { DataTable } from '../../ui/table/data-table.tsx';

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

interface Row {
  readonly name: StanceAngle;
  /** Degrees; the doubt is a half-width at 95 %. */
  readonly planned: number;
  readonly seen: number;
  readonly doubt: number;
}

/** Plan, seen, and the difference with its doubt (95 %), for every angle. */
export function AngleTable(props: { plan: NonNullable<ReadPicture['plan']>; posture: SeenPosture }) {
  const format = useFormat();
  const { plan, posture } = props;
  const rows = ROWS.map((name) => ({
    name,
    planned: toDegrees(plan.angles[name]),
    seen: toDegrees(posture.angles[name]),
    doubt: toDegrees(SIGMAS_95 * posture.sd[name]),
  }));
  const difference = ({ planned, seen, doubt }: Row) =>
    say('photograph.table.difference.value', {
      difference: format.degrees(seen - planned, { signed: true }),
      doubt: format.degrees(doubt),
    });
  return (
    <DataTable
      className="photograph-table"
      rows={rows}
      rowKey={({ name }) => name}
      marks={({ planned, seen, doubt }) => ({ 'data-clear': Math.abs(seen - planned) > doubt || undefined })}
      columns={[
        {
          title: say('photograph.table.angle'),
          isName: true,
          cell: ({ name }) => say(`photograph.angle.${name}`),
        },
        { title: say('photograph.table.plan'), cell: ({ planned }) => format.degrees(planned) },
        { title: say('photograph.table.seen'), cell: ({ seen }) => format.degrees(seen) },
        { title: say('photograph.table.difference'), cell: difference },
      ]}
    />
  );
}
