import { useMemo, useState } from 'react';
import type { Format } from '../../../../app/language/format.ts';
import { SIGMAS_95 } from '../../../../core/evaluation/probability.ts';
import { withUnit } from '../../../../core/text/with-unit.ts';
import {
  CHANGES,
  type COURSES,
  trimIsForHandling,
  type UnderWay,
  usualSpeed,
} from '../../../../core/under-way/under-way-of-fit.ts';
import { useFormat } from '../../../display/use-display.ts';
import { useJobOn } from '../../../jobs/use-job.ts';
import { say, words } from '../../../language/messages.ts';
import { MeasureField } from '../../../ui/fields/measure-field.tsx';
import { SelectField } from '../../../ui/fields/select-field.tsx';
import { useFit } from '../../bench-context.tsx';
import type { BenchTabProps } from '../../bench-tab.ts';
import { useTried } from '../trials/use-tried.ts';
import { BowThroughStroke } from './bow-through-stroke.tsx';
import { Calculation } from './calculation.tsx';
import { CostsTable } from './costs-table.tsx';
import { ResistancePlot } from './resistance-plot.tsx';

const SPEEDS = { min: 1.5, max: 6 } as const;

/** Depths to choose from, metres. */
const DEPTHS = ['deep', '3', '2', '1.5'] as const;
type DepthChoice = (typeof DEPTHS)[number];

/** Courses to choose from, metres, in the order of `COURSES`. */
const CHOICES = ['200', '500', '1000'] as const satisfies readonly `${(typeof COURSES)[number]}`[];
type CourseChoice = (typeof CHOICES)[number];

/** A course is told in metres in every unit: races are. */
const courseName = (course: CourseChoice, format: Format) =>
  withUnit(format.number(Number(course), { decimals: 0 }), 'm');

/**
 * The tab of the margin for what the water says: resistance over speed, and what changes it. The setting is held against the revision
 * that is compared, else against the first of its revisions.
 */
export function UnderWayTab({ compared, revisions }: BenchTabProps) {
  const fit = useFit((state) => state.fit);
  const [speed, setSpeed] = useState(usualSpeed(fit.seats.length));
  const [depth, setDepth] = useState<DepthChoice>('deep');
  const [course, setCourse] = useState<CourseChoice>('1000');
  const format = useFormat();
  const first = useTried(compared ? null : (revisions.at(-1)?.id ?? null)) ?? null;
  const other = compared ?? first;
  const against = other?.fit ?? null;
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
          hint={say('under-way.speed.hint', {
            time: courseTime(Number(course) / speed),
            course: courseName(course, format),
          })}
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
        <SelectField
          label={say('under-way.course')}
          value={course}
          options={CHOICES.map((value) => ({ value, name: courseName(value, format) }))}
          onChange={setCourse}
        />
      </div>
      {state.kind === 'done' ? (
        <Found found={state.result} course={course} comparedNumber={other?.revision.number ?? null} />
      ) : (
        <p className="note-looking">{say('proposal.working')}</p>
      )}
    </div>
  );
}

function Found({
  found,
  course,
  comparedNumber,
}: {
  found: UnderWay | null;
  course: CourseChoice;
  comparedNumber: number | null;
}) {
  const format = useFormat();
  if (!found) return <p className="soft">{say('drawing.strip.not-afloat')}</p>;
  const { at, speed } = found;
  const index = CHOICES.indexOf(course);
  const half = SIGMAS_95 * at.sd;
  const newtons = (value: number) => format.number(value, { decimals: 0, half });
  return (
    <>
      <p>
        {say('under-way.meets', {
          speed: format.number(speed, { decimals: 1 }),
          total: newtons(at.total),
          doubt: newtons(half),
          friction: newtons(at.friction),
          wave: newtons(at.wave),
          air: newtons(at.air),
        })}
      </p>
      <ResistancePlot found={found} />
      <CostsTable
        costs={found.costs}
        comparedNumber={comparedNumber}
        course={{ index, name: courseName(course, format) }}
      />
      <p>{handling(found, { index, course, format })}</p>
      {found.bow && <BowThroughStroke bow={found.bow} />}
      <Calculation found={found} course={courseName(course, format)} />
      <p className="soft">{say('under-way.left-out')}</p>
    </>
  );
}

/** Whether trim matters for speed here, from the table's own figures. */
function handling(
  found: UnderWay,
  { index, course, format }: { index: number; course: CourseChoice; format: Format },
): string {
  const trims = found.costs.filter(({ of }) => of === 'bowUp' || of === 'bowDown');
  const most = trims.reduce((a, b) => (Math.abs(b.seconds[index]!) > Math.abs(a.seconds[index]!) ? b : a));
  const seconds = Math.abs(most.seconds[index]!);
  const counts = say('under-way.trim-counts', {
    bow: format.length(CHANGES.bow, { fine: true }),
    seconds: format.number(seconds, { decimals: 1, half: SIGMAS_95 * most.secondsSd[index]! }),
    course: courseName(course, format),
  });
  return trimIsForHandling(found) ? words().sentences([counts, say('under-way.trim-for-handling')]) : counts;
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
