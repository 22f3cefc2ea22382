import { useState } from 'react';
import type { FitSummary } from '../../../app/contract/records.ts';
import type { Boat } from '../../../core/document/boat-schema.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { USUAL_DRILLING } from '../../../core/drilling/drilling-model.ts';
import { drillingWishes } from '../../../core/drilling/drilling-wish.ts';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import type { DrillingAnswer } from '../../jobs/plan-drilling.ts';
import { useJob } from '../../jobs/use-job.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { Tick } from '../../ui/fields/tick.tsx';
import { ProgressLine } from '../../ui/progress-line.tsx';
import { BoardPlanTable } from './board-plan-table.tsx';

/** How far a fitting may usually be moved for a shared hole, metres, and the most that may be asked. */
const USUAL_M = 0.003;
const MOST_M = 0.015;
/** How many fits are chosen at first. */
const CHOSEN_AT_FIRST = 6;

/** One board for everybody: chosen fits, how far each may be moved, and the plan of the fewest new holes. */
export function BoardPlanSection({ id, boat, onSaved }: { id: string; boat: Boat; onSaved: () => void }) {
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
  const job = useJob('planDrilling');
  const busy = job.state.kind === 'working';
  const toleranceOf = (fit: string | undefined) => tolerances[fit ?? ''] ?? USUAL_M;

  async function plan(): Promise<void> {
    const opened = await openFits(fits.filter((fit) => chosen.includes(fit.id)));
    // Holes are drilled in the boat as it is now, whatever each fit's own copy says of it.
    const { floorboard, hardware, holes = [] } = boat;
    const moved = opened.map(({ fit }) => ({ ...fit, boat: { ...fit.boat, floorboard, hardware } }));
    const wishes = drillingWishes(moved, (at) => toleranceOf(opened[at]?.id));
    const rules = { ...USUAL_DRILLING, board: floorboard, known: holes };
    job.start({ wishes, rules }, (answer) => {
      // Ending the worker frees the solver's memory.
      job.stop();
      setFound({ fits: moved, answer });
    });
  }

  return (
    <section>
      <h2>{say('board.title')}</h2>
      <p className="soft">{say('board.about')}</p>
      {fits.map((fit) => (
        <ChosenFit
          key={fit.id}
          fit={fit}
          toleranceM={chosen.includes(fit.id) ? toleranceOf(fit.id) : null}
          onChoose={(on) => setChosen(on ? [...chosen, fit.id] : chosen.filter((one) => one !== fit.id))}
          onTolerance={(toleranceM) => setTolerances({ ...tolerances, [fit.id]: toleranceM })}
        />
      ))}
      <Button disabled={busy || chosen.length === 0} onClick={() => void plan()}>
        {say('board.plan')}
      </Button>
      {busy && <ProgressLine name={say('board.plan')} text={say('proposal.working')} onStop={job.cancel} />}
      {found && !busy && (
        <BoardPlanTable id={id} boat={boat} fits={found.fits} answer={found.answer} onSaved={onSaved} />
      )}
    </section>
  );
}

/** One fit that may get its holes: whether it does, and how far it may be moved for them (null: it gets none). */
function ChosenFit(props: {
  fit: FitSummary;
  toleranceM: number | null;
  onChoose: (on: boolean) => void;
  onTolerance: (toleranceM: number) => void;
}) {
  const { fit, toleranceM } = props;
  return (
    <div className="entry-row kept-row">
      <Tick
        name={say('board.fit', { name: fit.name, athlete: fit.athleteNames[0] ?? '' })}
        isOn={toleranceM !== null}
        onChange={props.onChoose}
      />
      {toleranceM !== null && (
        <MeasureField
          label={say('board.tolerance')}
          kind="length"
          value={toleranceM}
          min={0}
          max={MOST_M}
          onEnter={props.onTolerance}
        />
      )}
    </div>
  );
}

/** The fits themselves, in the order asked for; one that cannot be opened is left out. */
async function openFits(asked: readonly FitSummary[]): Promise<{ id: string; fit: Fit }[]> {
  const opened = await Promise.all(asked.map(({ id }) => call('fits.open', { id })));
  return opened.flatMap((one, k) => (one.ok ? [{ id: asked[k]!.id, fit: one.value.fit }] : []));
}
