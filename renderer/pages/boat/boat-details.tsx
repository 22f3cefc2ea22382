import type { FitSummary } from '../../../app/contract/records.ts';
import type { Format } from '../../../app/language/format.ts';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { type ClassRule, classCheck } from '../../../core/evaluation/class-check.ts';
import { CLASS_LIMITS_DATE } from '../../../core/evaluation/class-limits.ts';
import { useCall } from '../../client/use-call.ts';
import { useFormat } from '../../display/use-display.ts';
import { dateText } from '../../language/dates.ts';
import { say, sayCount, words } from '../../language/messages.ts';
import { Name } from '../../language/name.tsx';
import { hrefOf } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { SeverityMark } from '../../ui/severity-mark.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { BoardPlanSection } from './board-plan.tsx';
import { BoatPhotos } from './boat-photos.tsx';
import { HullKnown } from './hull-known.tsx';
import { OlderFits } from './older-fits.tsx';

/** What is known of a boat besides its own entries: its class, how it floats, who is fitted in it, photographs. */
export function BoatDetails({ id, boat, onSaved }: { id: string; boat: Boat; onSaved: () => void }) {
  return (
    <div className="entries apart">
      <HullKnown boat={boat} />
      <ClassCheck boat={boat} />
      <FloatState id={id} boat={boat} />
      <FittedHere id={id} boat={boat} />
      <BoardPlanSection id={id} boat={boat} onSaved={onSaved} />
      <BoatPhotos boatId={id} />
    </div>
  );
}

/** A rule's figures as they are written. */
function writeRule({ rule }: ClassRule, format: Format): (value: number) => string {
  if (rule === 'least-mass') return format.mass;
  return (value) => format.length(value, format.lengthUnit === 'in' ? {} : { unit: 'm' });
}

/** Beyond the limit or within it, and by how much. */
function findingText(rule: ClassRule, format: Format): string {
  const write = rule.rule === 'least-mass' ? format.mass : (value: number) => format.length(value);
  const by = write(Math.abs(rule.within));
  if (!rule.kept) {
    return say(rule.rule === 'least-mass' ? 'boat.class-check.under' : 'boat.class-check.over', { by });
  }
  return rule.within < 5e-4 ? say('boat.class-check.on') : say('boat.class-check.good', { by });
}

function ClassCheck({ boat }: { boat: Boat }) {
  const format = useFormat();
  const rules = classCheck(boat);
  return (
    <section>
      <h2>{say('boat.class')}</h2>
      {rules.length === 0 ? (
        <p className="soft">{say('boat.class-check.none')}</p>
      ) : (
        <>
          <DataTable
            rows={rules}
            rowKey={({ rule }) => rule}
            marks={({ kept }) => ({ 'data-severity': kept ? 'good' : 'change' })}
            columns={[
              {
                title: say('boat.class-check.rule'),
                isName: true,
                cell: ({ rule }) => say(`boat.class-check.${rule}`),
              },
              {
                title: say('boat.class-check.boat'),
                numeric: true,
                cell: (rule) => writeRule(rule, format)(rule.value),
              },
              {
                title: say('boat.class-check.limit'),
                numeric: true,
                cell: (rule) =>
                  say(`boat.class-check.${rule.rule === 'least-mass' ? 'at-least' : 'at-most'}`, {
                    value: writeRule(rule, format)(rule.limit),
                  }),
              },
              {
                title: say('boat.class-check.finding'),
                className: 'class-finding',
                cell: (rule) => (
                  <>
                    <SeverityMark /> {findingText(rule, format)}
                  </>
                ),
              },
            ]}
          />
          <p className="soft">
            {say('boat.class-check.source', {
              class: boat.boatClass,
              day: dateText(CLASS_LIMITS_DATE),
              source: say('band-source.class-rule'),
            })}
          </p>
        </>
      )}
    </section>
  );
}

function FloatState({ id, boat }: { id: string; boat: Boat }) {
  const format = useFormat();
  const { floatCheck, correction } = boat;
  const day = floatCheck?.takenOn ? dateText(floatCheck.takenOn) : say('boat.float.undated');
  return (
    <section>
      <h2>{say('term.float-check')}</h2>
      <p>
        {!floatCheck && say('boat.float.none')}
        {floatCheck &&
          correction &&
          say('boat.float.kept', { day, residual: format.length(correction.residualM, { fine: true }) })}
        {floatCheck && !correction && say('boat.float.stale', { day })}
      </p>
      <EarlierChecks checks={boat.earlierFloatChecks ?? []} />
      <p>
        <a className="button" href={hrefOf({ page: 'hull', id })}>
          {say('boat.float.go')}
        </a>
      </p>
    </section>
  );
}

function EarlierChecks({ checks }: { checks: NonNullable<Boat['earlierFloatChecks']> }) {
  const format = useFormat();
  if (checks.length === 0) return null;
  return (
    <details>
      <summary>{sayCount('boat.float.earlier', checks.length)}</summary>
      <ul>
        {checks.map(({ check, correction }) => (
          <li key={JSON.stringify(check)}>
            {say('boat.float.earlier.one-of', {
              day: check.takenOn ? dateText(check.takenOn) : say('boat.float.undated'),
              mass: format.mass(check.loaded.massKg),
              residual: correction ? format.length(correction.residualM, { fine: true }) : '–',
            })}
          </li>
        ))}
      </ul>
    </details>
  );
}

function FittedHere({ id, boat }: { id: string; boat: Boat }) {
  const { value: fits, error, reload } = useCall('boats.fits', { id });
  return (
    <section>
      <h2>{say('boat.fitted')}</h2>
      {error && <ErrorMessage error={error} onRetry={reload} />}
      {fits?.length === 0 && <p className="soft">{say('boat.fitted.none')}</p>}
      <OlderFits id={id} boat={boat} />
      {fits && fits.length > 0 && <FittedTable fits={fits} />}
    </section>
  );
}

function FittedTable({ fits }: { fits: readonly FitSummary[] }) {
  return (
    <DataTable
      rows={fits}
      rowKey={({ id }) => id}
      columns={[
        {
          title: say('archive.counts.athletes'),
          isName: true,
          cell: ({ athleteNames }) => words().row(athleteNames) || say('fits.no-athlete'),
        },
        {
          title: say('term.fit'),
          cell: ({ id, name, archived }) => (
            <>
              <a href={hrefOf({ page: 'fit', id })}>
                <Name text={name} />
              </a>{' '}
              {archived && <span className="soft">{say('boat.fitted.aside')}</span>}
            </>
          ),
        },
        { title: say('list.changed'), cell: ({ changedAt }) => dateText(changedAt) },
      ]}
    />
  );
}
