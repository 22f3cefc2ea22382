import { useMemo } from 'react';
import type { AthleteRecord, KneltFit } from '../../../app/contract/records.ts';
import type { Format } from '../../../app/language/format.ts';
import type { Athlete } from '../../../core/document/athlete-schema.ts';
import { worsening } from '../../../core/evaluation/side-effects.ts';
import type { GrowthChanges } from '../../../core/growth/growth-changes.ts';
import { measureAgain } from '../../../core/growth/measure-again.ts';
import { type ComparedBody, comparedBody } from '../../bench/compared-body.ts';
import { dueValues } from '../../bench/tabs/growth/difference-text.ts';
import { useGrownFits } from '../../bench/tabs/growth/use-grown-fits.ts';
import { useCall } from '../../client/use-call.ts';
import { useFormat } from '../../display/use-display.ts';
import { type FindAction, useOfferedActions } from '../../find/offered-actions.ts';
import { today } from '../../language/dates.ts';
import { say, words } from '../../language/messages.ts';
import { Name } from '../../language/name.tsx';
import { quantityName } from '../../language/sentences.ts';
import { go, hrefOf } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';

/** Fits looked at for growth; an athlete in more than these has outgrown the oldest long ago. */
const MOST_LOOKED_AT = 12;

/** An athlete's fits, whether the body has outgrown them, and when to measure again. */
export function AthleteFits({ record }: { record: AthleteRecord }) {
  const { value, error } = useCall('athletes.fits', { id: record.id });
  const fits = useMemo(() => (value ?? []).filter(({ archived }) => !archived), [value]);
  useOfferedActions(useMemo(() => actionsOf(record), [record]));
  return (
    <section className="stack athlete-fits">
      <GrowthDue record={record} />
      <h2>{say('archive.counts.fits')}</h2>
      {error && <ErrorMessage error={error} />}
      {value && <FitTable fits={fits} athlete={record.athlete} />}
    </section>
  );
}

/** The fits that the body may have outgrown, asked as `useGrownFits` takes them. */
function useGrowthQuestions(fits: readonly KneltFit[], athlete: Athlete) {
  return useMemo(
    () =>
      fits
        .map((one) => ({ one, compared: comparedBody(one.fit.seats[one.seat]!.athlete!, athlete) }))
        .filter(({ compared }) => compared.difference)
        .slice(0, MOST_LOOKED_AT)
        .map(({ one: { id, fit, seat }, compared: { newest } }) => ({ key: id, fit, seat, newest })),
    [fits, athlete],
  );
}

function FitTable({ fits, athlete }: { fits: readonly KneltFit[]; athlete: Athlete }) {
  const answers = useGrownFits(useGrowthQuestions(fits, athlete));
  return (
    <DataTable
      rows={fits}
      rowKey={({ id }) => id}
      empty={
        <p className="soft">
          {say('week.fits.none')} <a href={hrefOf({ page: 'new-fit' })}>{say('fits.new')}</a>
        </p>
      }
      columns={[
        {
          title: say('term.fit'),
          isName: true,
          cell: ({ id, fit }) => (
            <a className="row-link" href={hrefOf({ page: 'fit', id })}>
              <Name text={fit.name} />
            </a>
          ),
        },
        {
          title: say('photograph.open'),
          className: 'whole',
          cell: ({ id, fit }) => (
            <a
              aria-label={say('photograph.open.fit', { fit: fit.name })}
              href={hrefOf({ page: 'photograph', id })}
            >
              {say('photograph.open')}
            </a>
          ),
        },
        { title: say('fitting.boat'), cell: ({ fit }) => fit.boat.name, className: 'fit-boat' },
        {
          title: say('week.body'),
          cell: (one) => <BodyThen one={one} athlete={athlete} changes={answers.get(one.id) ?? null} />,
        },
      ]}
    />
  );
}

/** What can be done with an athlete, within reach of the keyboard. */
function actionsOf({ id, athlete: { name } }: AthleteRecord): FindAction[] {
  return [
    { id: 'measure', name: say('do.measure', { name }), run: () => go({ page: 'measure', id }) },
    { id: 'timeline', name: say('do.timeline', { name }), run: () => go({ page: 'timeline', id }) },
  ];
}

/** That age and time suggest another measuring. */
function GrowthDue({ record }: { record: AthleteRecord }) {
  const format = useFormat();
  const due = measureAgain(record.athlete, today());
  if (!due) return null;
  return (
    <p className="growth-due" role="status">
      {say('growth.due', dueValues(due, format))}
    </p>
  );
}

/** The body that a fit was made for beside the athlete's present one. */
function BodyThen(props: { one: KneltFit; athlete: Athlete; changes: GrowthChanges | null }) {
  const { one, athlete, changes } = props;
  const compared = comparedBody(one.fit.seats[one.seat]!.athlete!, athlete);
  const format = useFormat();
  return (
    <>
      {words().beside([bodyText(compared, format), compared.difference && changes ? worseText(changes) : ''])}
      {compared.difference && (
        <>
          {' '}
          <a
            href={hrefOf({ page: 'fit', id: one.id, tab: 'growth' })}
            aria-label={say('week.see.of', { fit: one.fit.name })}
          >
            {say('week.see')}
          </a>
        </>
      )}
    </>
  );
}

function bodyText({ difference, due }: ComparedBody, format: Format): string {
  if (!difference) return say('week.body.now');
  if (due) return say('week.body.likely', { by: format.length(due.likelyM) });
  return difference.statureM > 0
    ? say('week.body.grown', { by: format.length(difference.statureM) })
    : say('week.body.measured');
}

function worseText({ changes }: GrowthChanges): string {
  const worse = changes.filter((change) => worsening(change) > 0);
  if (worse.length === 0) return say('week.worse.none');
  const names = words().row([...new Set(worse.map(({ id }) => quantityName(id)))]);
  return say('week.worse', { count: worse.length, names });
}
