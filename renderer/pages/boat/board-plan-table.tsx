import { useMemo, useState } from 'react';
import type { Boat } from '../../../core/document/boat-schema.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { ProvenPlan } from '../../../core/drilling/best-drilling.ts';
import type { DrillingModel, Standing } from '../../../core/drilling/drilling-model.ts';
import { givenUp } from '../../../core/drilling/given-up.ts';
import { letteredHoles } from '../../../core/drilling/hole-letters.ts';
import { BOLT_CLEARANCE } from '../../../core/parts/fixing-holes.ts';
import { USUAL_BOLT } from '../../../core/parts/seat-parts.ts';
import { toDegrees } from '../../../core/units/angle.ts';
import { call } from '../../client/client.ts';
import { useFormat } from '../../display/use-display.ts';
import type { DrillingAnswer } from '../../jobs/drilling-worker.ts';
import { say } from '../../language/messages.ts';
import { DataTable } from '../../ui/table/data-table.tsx';

interface TableProps {
  readonly id: string;
  readonly boat: Boat;
  readonly fits: readonly Fit[];
  readonly answer: DrillingAnswer;
}

/** What a plan of holes comes to: whose fittings go in which holes, what each gives up, what is drilled. */
export function BoardPlanTable(props: TableProps) {
  const { answer } = props;
  if (answer.kind === 'failed') return <p role="alert">{say('board.failed', { why: answer.why })}</p>;
  if (!answer.proven) return <p role="status">{say('board.none')}</p>;
  return <Found {...props} model={answer.model} proven={answer.proven} />;
}

/** One paddler's line: the holes of pad and rest, and what is given up. */
function linesOf({
  fits,
  model,
  proven,
}: {
  fits: readonly Fit[];
  model: DrillingModel;
  proven: ProvenPlan;
}) {
  const holes = letteredHoles(proven.plan);
  const lettersOf = (standing: Standing | null | undefined) =>
    (standing?.holes ?? [])
      .map((at) => {
        const { x, y } = model.holes[at]!;
        return holes.find((hole) => hole.x === x && hole.y === y)?.letter ?? '';
      })
      .sort();
  return fits.flatMap((fit, at) =>
    fit.seats.flatMap((seat, index) => {
      if (!seat.athlete) return [];
      const standingOf = (fitting: 'kneePad' | 'rearRest') => {
        const wish = model.wishes.findIndex(
          (one) => one.fit === at && one.seat === index && one.fitting === fitting,
        );
        return proven.plan.standings[wish] ?? null;
      };
      const [pad, rest] = [standingOf('kneePad'), standingOf('rearRest')];
      const change = givenUp(fit, index, { ...(pad && { kneePad: pad }), ...(rest && { rearRest: rest }) });
      return [{ who: seat.athlete.name, pad: lettersOf(pad), rest: lettersOf(rest), change }];
    }),
  );
}

function Found({ id, boat, fits, model, proven }: TableProps & { model: DrillingModel; proven: ProvenPlan }) {
  const format = useFormat();
  const [kept, setKept] = useState<'no' | 'yes' | 'failed'>('no');
  const lines = useMemo(() => linesOf({ fits, model, proven }), [fits, model, proven]);
  const { fresh, plates } = proven.plan;
  const holes = letteredHoles(proven.plan);

  async function keep(): Promise<void> {
    const diameterM = (boat.hardware.boltM ?? USUAL_BOLT) + BOLT_CLEARANCE;
    const planned = fresh.map(({ x, y }) => ({ xM: x, yM: y, diameterM, state: 'planned' as const }));
    const before = (boat.holes ?? []).filter(({ state }) => state !== 'planned');
    const saved = await call('boats.save', { boat: { ...boat, id, holes: [...before, ...planned] } });
    setKept(saved.ok ? 'yes' : 'failed');
  }

  return (
    <>
      <p role="status">
        {say('board.found', { fresh: fresh.length, used: holes.length, plates })}{' '}
        {proven.gap > 0 ? say('board.gap', { percent: Math.ceil(100 * proven.gap) }) : say('board.exact')}
      </p>
      <div className="table-scroll">
        <DataTable
          className="ruled"
          rows={lines}
          rowKey={({ who }) => who}
          columns={[
            { title: say('board.who'), isName: true, cell: ({ who }) => who },
            { title: say('board.pad'), cell: ({ pad }) => pad.join(' ') || '–' },
            { title: say('board.rest'), cell: ({ rest }) => rest.join(' ') || '–' },
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
              cell: ({ change }) => `${toDegrees(change.kneeRad).toFixed(1)}°`,
            },
            {
              title: say('board.load'),
              numeric: true,
              cell: ({ change }) => `${change.kneeLoadN.toFixed(0)} N`,
            },
            {
              title: say('board.trim'),
              numeric: true,
              cell: ({ change }) => `${toDegrees(change.trimRad).toFixed(2)}°`,
            },
          ]}
        />
      </div>
      <DataTable
        className="ruled"
        rows={holes}
        rowKey={({ letter }) => letter}
        columns={[
          { title: say('board.hole'), isName: true, cell: ({ letter }) => letter },
          { title: say('board.from-middle'), numeric: true, cell: ({ x }) => format.length(x) },
          { title: say('board.to-port'), numeric: true, cell: ({ y }) => format.length(y) },
          { title: say('board.state'), cell: ({ drilled }) => say(drilled ? 'board.drilled' : 'board.new') },
        ]}
      />
      {fresh.length > 0 && kept !== 'yes' && (
        <button type="button" className="button" onClick={() => void keep()}>
          {say('board.keep')}
        </button>
      )}
      {kept !== 'no' && <p role="status">{say(kept === 'yes' ? 'board.kept' : 'board.not-kept')}</p>}
    </>
  );
}
