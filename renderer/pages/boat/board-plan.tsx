import { useState } from 'react';
import type { FitSummary } from '../../../app/contract/records.ts';
import type { Boat } from '../../../core/document/boat-schema.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { USUAL_DRILLING } from '../../../core/drilling/drilling-model.ts';
import { drillingWishes } from '../../../core/drilling/drilling-wish.ts';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import type { DrillingAnswer } from '../../jobs/drilling-worker.ts';
import { say } from '../../language/messages.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { Tick } from '../../ui/fields/tick.tsx';
import { WorkLine } from '../../ui/work-line.tsx';
import { BoardPlanTable } from './board-plan-table.tsx';
import { useDrilling } from './use-drilling.ts';

/** How far a fitting may usually be moved for a shared hole, metres, and the most that may be asked. */
const USUAL_M = 0.003;
const MOST_M = 0.015;
/** So many fits are chosen at first. */
const CHOSEN_AT_FIRST = 6;

/** One board for everybody: chosen fits, how far each may be moved, and the plan of the fewest new holes. */
export function BoardPlan({ id, boat, onSaved }: { id: string; boat: Boat; onSaved: () => void }) {
  const { value: fits } = useCall('boats.fits', { id });
  const open = (fits ?? []).filter(({ archived }) => !archived);
  if (open.length < 2) return null;
  return <Planner id={id} boat={boat} fits={open} onSaved={onSaved} />;
}

interface PlannerProps {
  readonly id: string;
  readonly boat: Boat;
  readonly fits: readonly FitSummary[];
  readonly onSaved: () => void;
}

function Planner({ id, boat, fits, onSaved }: PlannerProps) {
  const [chosen, setChosen] = useState<readonly string[]>(() =>
    fits.slice(0, CHOSEN_AT_FIRST).map((fit) => fit.id),
  );
  const [tolerances, setTolerances] = useState<Readonly<Record<string, number>>>({});
  const [found, setFound] = useState<{ fits: readonly Fit[]; answer: DrillingAnswer } | null>(null);
  const { busy, ask } = useDrilling();
  const toleranceOf = (fit: string | undefined) => tolerances[fit ?? ''] ?? USUAL_M;

  async function plan(): Promise<void> {
    const inOrder = fits.filter((fit) => chosen.includes(fit.id)).map((fit) => fit.id);
    const opened = await Promise.all(inOrder.map((fit) => call('fits.open', { id: fit })));
    // Holes are drilled in the boat as it is now, whatever each fit's own copy says of it.
    const all = opened.flatMap((one, k) => {
      if (!one.ok) return [];
      const { fit } = one.value;
      const { floorboard, hardware } = boat;
      return [{ from: inOrder[k], fit: { ...fit, boat: { ...fit.boat, floorboard, hardware } } }];
    });
    const wishes = drillingWishes(
      all.map(({ fit }) => fit),
      (at) => toleranceOf(all[at]?.from),
    );
    const rules = { ...USUAL_DRILLING, board: boat.floorboard, known: boat.holes ?? [] };
    ask({ wishes, rules }, (answer) => setFound({ fits: all.map(({ fit }) => fit), answer }));
  }

  return (
    <section>
      <h2>{say('board.title')}</h2>
      <p className="soft">{say('board.about')}</p>
      {fits.map((fit) => (
        <div className="entry-row kept-row" key={fit.id}>
          <Tick
            name={say('board.fit', { name: fit.name, athlete: fit.athleteNames[0] ?? '' })}
            isOn={chosen.includes(fit.id)}
            onChange={(on) => setChosen(on ? [...chosen, fit.id] : chosen.filter((one) => one !== fit.id))}
          />
          {chosen.includes(fit.id) && (
            <MeasureField
              label={say('board.tolerance')}
              kind="length"
              value={toleranceOf(fit.id)}
              min={0}
              max={MOST_M}
              onEnter={(value) => setTolerances({ ...tolerances, [fit.id]: value })}
            />
          )}
        </div>
      ))}
      <button
        type="button"
        className="button"
        disabled={busy || chosen.length === 0}
        onClick={() => void plan()}
      >
        {say('board.plan')}
      </button>
      <WorkLine active={busy} />
      {found && !busy && (
        <BoardPlanTable id={id} boat={boat} fits={found.fits} answer={found.answer} onSaved={onSaved} />
      )}
    </section>
  );
}
