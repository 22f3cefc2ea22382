import { useMemo, useState } from 'react';
import type { Format } from '../../../../app/language/format.ts';
import { CHANGES, type UnderWay } from '../../../../core/under-way/under-way-of-fit.ts';
import { useFormat } from '../../../display/use-display.ts';
import { useJobOn } from '../../../jobs/use-job.ts';
import { say } from '../../../language/messages.ts';
import { MeasureField } from '../../../ui/fields/measure-field.tsx';
import { SelectField } from '../../../ui/fields/select-field.tsx';
import { useFit } from '../../bench-context.tsx';
import type { BenchTabProps } from '../../bench-tab.ts';
import { BowThroughStroke } from './bow-through-stroke.tsx';
import { CostsTable } from './costs-table.tsx';
import { ResistancePlot } from './resistance-plot.tsx';

/** Usual speed over 1000 m by number of seats, m/s: our estimate (rough). */
const USUAL_SPEED = [4.2, 4.6, 4.9, 5.2] as const;
const SPEEDS = { min: 1.5, max: 6 } as const;

/** Depths to choose from, metres. */
const DEPTHS = ['deep', '3', '2', '1.5'] as const;
type DepthChoice = (typeof DEPTHS)[number];

/** The tab of the margin for what the water says: resistance over speed, and what changes it. */
export function UnderWayTab({ compared }: BenchTabProps) {
  const fit = useFit((state) => state.fit);
  const [speed, setSpeed] = useState<number>(USUAL_SPEED[fit.seats.length - 1] ?? USUAL_SPEED[0]);
  const [depth, setDepth] = useState<DepthChoice>('deep');
  const against = compared?.fit ?? null;
  const question = useMemo(
    () => ({ fit, speed, depth: depth === 'deep' ? null : Number(depth), against }),
    [fit, speed, depth, against],
  );
  const state = useJobOn('underWayOf', question);
  return (
    <div className="under-way stack">
      <div className="row">
        <MeasureField
          label={say('under-way.speed')}
          hint={say('under-way.speed.hint', { time: courseTime(1000 / speed) })}
          value={speed}
          kind="number"
          {...SPEEDS}
          stepped
          onEnter={setSpeed}
        />
        <SelectField
          label={say('under-way.depth')}
          value={depth}
          options={DEPTHS.map((value) => ({ value, name: depthName(value) }))}
          onChange={setDepth}
        />
      </div>
      {state.kind === 'done' ? (
        <Found found={state.result} comparedNumber={compared?.revision.number ?? null} />
      ) : (
        <p className="note-looking">{say('under-way.working')}</p>
      )}
      <p className="soft">{say('under-way.left-out')}</p>
    </div>
  );
}

function Found({ found, comparedNumber }: { found: UnderWay | null; comparedNumber: number | null }) {
  const format = useFormat();
  if (!found) return <p className="soft">{say('under-way.no-float')}</p>;
  const { at, speed } = found;
  const newtons = (value: number) => format.number(value, { decimals: 0 });
  return (
    <>
      <p>
        {say('under-way.meets', {
          speed: format.number(speed, { decimals: 1 }),
          total: newtons(at.total),
          doubt: newtons(2 * at.sd),
          friction: newtons(at.friction),
          wave: newtons(at.wave),
          air: newtons(at.air),
        })}
      </p>
      <ResistancePlot found={found} />
      <CostsTable costs={found.costs} comparedNumber={comparedNumber} />
      <p>{handling(found, format)}</p>
      {found.bow && <BowThroughStroke bow={found.bow} />}
    </>
  );
}

/** Trim that changes resistance by less than this share is told as a matter of handling. */
const HANDLING_SHARE = 0.015;

/** Whether trim matters for speed here, from the table's own figures. */
function handling({ costs }: UnderWay, format: Format): string {
  const trims = costs.filter(({ of }) => of === 'bowUp' || of === 'bowDown');
  const worst = Math.max(...trims.map(({ share }) => Math.abs(share)));
  const seconds = Math.max(...trims.map((cost) => Math.abs(cost.seconds.at(-1)!)));
  return say(worst < HANDLING_SHARE ? 'under-way.handling' : 'under-way.trim-counts', {
    bow: format.length(CHANGES.bow, { unit: 'mm' }),
    seconds: format.number(seconds, { decimals: 1 }),
  });
}

function depthName(depth: DepthChoice): string {
  return depth === 'deep'
    ? say('under-way.depth.deep')
    : say('under-way.depth.metres', { depth: Number(depth) });
}

/** Minutes and seconds, as a stopwatch shows them: 3:58. */
export function courseTime(seconds: number): string {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
