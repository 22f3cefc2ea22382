import { useMemo, useState } from 'react';
import type { Boat } from '../../../core/document/boat-schema.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { ProvenPlan } from '../../../core/drilling/best-drilling.ts';
import type { DrilledFitting } from '../../../core/drilling/drilling-wish.ts';
import { givenUp } from '../../../core/drilling/given-up.ts';
import { type MarkedPaddler, type MarkedPlan, markedPlan } from '../../../core/drilling/marked-plan.ts';
import { BOLT_CLEARANCE } from '../../../core/parts/fixing-holes.ts';
import { USUAL_BOLT } from '../../../core/parts/seat-parts.ts';
import { toDegrees } from '../../../core/units/angle.ts';
import { call } from '../../client/client.ts';
import { useFormat } from '../../display/use-display.ts';
import type { DrillingAnswer } from '../../jobs/plan-drilling.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { BoardPlanFiles } from './board-plan-files.tsx';

interface TableProps {
  readonly id: string;
  readonly boat: Boat;
  readonly fits: readonly Fit[];
  readonly answer: DrillingAnswer;
  /** The boat has been saved with the plan's holes. */
  readonly onSaved: () => void;
}

/** What a plan of holes comes to: whose fittings go in which holes, what each gives up, what is drilled. */
export function BoardPlanTable(props: TableProps) {
  const { answer } = props;
  const format = useFormat();
  switch (answer.kind) {
    case 'failed':
      return <p role="alert">{say('board.failed', { why: answer.why })}</p>;
    case 'late':
      return <p role="status">{say('board.late')}</p>;
    case 'none':
      return (
        <p role="status">
          {say('board.none')}{' '}
          {answer.moreM !== null && say('board.none.more', { by: format.length(answer.moreM) })}
        </p>
      );
    case 'plan':
      return <Found {...props} proven={answer.proven} />;
  }
}

function Found({ id, boat, fits, proven, onSaved }: TableProps & { proven: ProvenPlan }) {
  const [kept, setKept] = useState<'no' | 'yes' | 'failed'>('no');
  const marked = useMemo(() => {
    const paddlers = fits.flatMap(({ seats }, fit) =>
      seats.flatMap(({ athlete }, seat) => (athlete ? [{ fit, seat, name: athlete.name }] : [])),
    );
    return markedPlan(proven.model, proven.plan, paddlers);
  }, [fits, proven]);
  const { fresh, plates } = proven.plan;
  const diameterM = (boat.hardware.boltM ?? USUAL_BOLT) + BOLT_CLEARANCE;

  async function keep(): Promise<void> {
    const planned = fresh.map(({ x, y }) => ({ xM: x, yM: y, diameterM, state: 'planned' as const }));
    const before = (boat.holes ?? []).filter(({ state }) => state !== 'planned');
    const changed = { ...boat, id, holes: [...before, ...planned] };
    const saved = await call('boats.save', { boat: changed, opened: boat });
    setKept(saved.ok ? 'yes' : 'failed');
    if (saved.ok) onSaved();
  }

  return (
    <>
      <p role="status">
        {say('board.found', { fresh: fresh.length, used: marked.holes.length, plates })}{' '}
        {proven.gap > 0 ? say('board.gap', { percent: Math.ceil(100 * proven.gap) }) : say('board.exact')}
      </p>
      <Paddlers fits={fits} marked={marked} />
      <Holes marked={marked} />
      {fits[0] && <BoardPlanFiles fit={fits[0]} boat={boat} marked={marked} diameterM={diameterM} />}
      {fresh.length > 0 && kept !== 'yes' && <Button onClick={() => void keep()}>{say('board.keep')}</Button>}
      {kept !== 'no' && <p role="status">{say(kept === 'yes' ? 'board.kept' : 'board.not-kept')}</p>}
    </>
  );
}

/** Each paddler's letter and holes, and what is given up. */
function Paddlers({ fits, marked }: { fits: readonly Fit[]; marked: MarkedPlan }) {
  const format = useFormat();
  const placeOf = ({ holes, onRails }: MarkedPaddler, fitting: DrilledFitting) => {
    const station = onRails[fitting];
    if (station !== null) return say('board.on-rails', { at: format.length(station) });
    return holes[fitting].join(' ') || '–';
  };
  const rows = useMemo(
    () => marked.paddlers.map((one) => ({ ...one, change: changeOf(fits, one) })),
    [fits, marked],
  );
  return (
    <div className="table-scroll">
      <DataTable
        className="ruled"
        rows={rows}
        rowKey={({ letter }) => letter}
        columns={[
          { title: say('board.letter'), isName: true, cell: ({ letter }) => letter },
          { title: say('conflicts.kind.athlete'), cell: ({ name }) => name },
          { title: say('board.pad'), cell: (one) => placeOf(one, 'kneePad') },
          { title: say('board.rest'), cell: (one) => placeOf(one, 'rearRest') },
          {
            title: say('board.pad-moved'),
            numeric: true,
            cell: ({ change }) => format.length(change.padMm / 1000),
          },
          {
            title: say('board.rest-moved'),
            numeric: true,
            cell: ({ change }) => format.length(change.restMm / 1000),
          },
          {
            title: say('board.knee'),
            numeric: true,
            cell: ({ change }) => format.degrees(toDegrees(change.kneeRad), { decimals: 1 }),
          },
          {
            title: say('quantity.kneeLoad.name'),
            numeric: true,
            cell: ({ change }) => format.value(change.kneeLoadN, 'N'),
          },
          {
            title: say('term.trim'),
            numeric: true,
            cell: ({ change }) => format.degrees(toDegrees(change.trimRad), { decimals: 2 }),
          },
        ]}
      />
    </div>
  );
}

function changeOf(fits: readonly Fit[], { fit, seat, standings }: MarkedPaddler) {
  const { kneePad, rearRest } = standings;
  return givenUp(fits[fit]!, seat, { ...(kneePad && { kneePad }), ...(rearRest && { rearRest }) });
}

function Holes({ marked }: { marked: MarkedPlan }) {
  const format = useFormat();
  return (
    <DataTable
      className="ruled"
      rows={marked.holes}
      rowKey={({ number }) => String(number)}
      columns={[
        { title: say('board.hole'), isName: true, cell: ({ number }) => number },
        { title: say('board.from-middle'), numeric: true, cell: ({ x }) => format.length(x) },
        { title: say('board.to-port'), numeric: true, cell: ({ y }) => format.length(y) },
        { title: say('board.letters'), cell: ({ letters }) => letters.join(' ') },
        {
          title: say('board.state'),
          cell: ({ drilled }) => say(drilled ? 'boat.holes.drilled' : 'table.row.new'),
        },
      ]}
    />
  );
}
