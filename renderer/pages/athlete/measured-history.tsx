import { useState } from 'react';
import type { CallError, CallResult } from '../../../app/contract/result.ts';
import type { Format } from '../../../app/language/format.ts';
import type { Measuring } from '../../../core/document/measuring-schema.ts';
import { latestChange } from '../../../core/growth/body-change.ts';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import { useFormat } from '../../display/use-display.ts';
import { dateText } from '../../language/dates.ts';
import { say, words } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { EarlierMeasuring } from './earlier-measuring.tsx';
import { HistoryPlot } from './history-plot.tsx';

const KINDS = ['statureM', 'massKg'] as const;
const NAMES = { statureM: 'athlete.stature', massKg: 'athlete.mass' } as const;

/** How a value of one kind is written. */
const writer = (kind: (typeof KINDS)[number], format: Format) =>
  kind === 'statureM' ? format.length : format.mass;

/** The dated values of one kind, oldest first. */
function valuesOf(measurings: readonly Measuring[], kind: (typeof KINDS)[number]) {
  return measurings.flatMap(({ takenOn, [kind]: value }) => (value === null ? [] : [{ takenOn, value }]));
}

/** An athlete's dated measurings; adds one, removes one, and knows the one removed last. */
function useMeasurings(athleteId: string) {
  const asked = useCall('measurings.list', { athleteId });
  const [changed, setChanged] = useState<readonly Measuring[] | null>(null);
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const [removed, setRemoved] = useState<Measuring | null>(null);

  function heard(result: CallResult<readonly Measuring[]>): boolean {
    setRefusal(result.ok ? null : result.error);
    if (result.ok) setChanged(result.value);
    return result.ok;
  }
  const save = async (measuring: Measuring) => heard(await call('measurings.save', { athleteId, measuring }));

  async function remove(measuring: Measuring): Promise<void> {
    const { takenOn } = measuring;
    if (heard(await call('measurings.remove', { athleteId, takenOn }))) setRemoved(measuring);
  }
  async function bringBack(measuring: Measuring): Promise<void> {
    if (await save(measuring)) setRemoved(null);
  }
  return { asked, measurings: changed ?? asked.value, refusal, removed, save, remove, bringBack };
}

/** Everything that an athlete ever measured: stature and mass as plots, all of it as a table, earlier days put in. */
export function MeasuredHistory(props: { athleteId: string; measuredOn: string | undefined }) {
  const { measuredOn } = props;
  const { asked, measurings, refusal, removed, save, remove, bringBack } = useMeasurings(props.athleteId);
  const format = useFormat();
  if (asked.error) return <ErrorMessage error={asked.error} onRetry={asked.reload} />;
  if (!measurings) return <p className="soft">{say('sheet.loading')}</p>;
  return (
    <section>
      <h2>{say('history.title')}</h2>
      <p>{growthText(measurings, format)}</p>
      {measurings.length > 1 && (
        <div className="history-plots">
          {KINDS.map((kind) => (
            <HistoryPlot
              key={kind}
              name={say(NAMES[kind])}
              values={valuesOf(measurings, kind)}
              write={writer(kind, format)}
            />
          ))}
        </div>
      )}
      {removed && (
        <p className="row" role="status">
          {say('history.removed', { day: dateText(removed.takenOn) })}
          <Button look="words" onClick={() => bringBack(removed)}>
            {say('archive.back.replace')}
          </Button>
        </p>
      )}
      {refusal && <ErrorMessage error={refusal} />}
      {measurings.length > 0 && (
        <details open={measurings.length > 1 && measurings.length < 6}>
          <summary>{say('history.table')}</summary>
          <HistoryTable measurings={measurings} measuredOn={measuredOn} onRemove={remove} />
        </details>
      )}
      <EarlierMeasuring onSave={save} />
    </section>
  );
}

/** What has changed since the last measuring that lies four weeks back or more. */
function growthText(measurings: readonly Measuring[], format: Format): string {
  const changes = KINDS.map((kind) => ({ kind, change: latestChange(valuesOf(measurings, kind)) }));
  const told = changes.filter(({ change }) => change !== null);
  const [first] = told;
  if (!first?.change) return say('history.once');
  const texts = told.map(({ kind, change }) => {
    const by = change!.by;
    const written = writer(kind, format)(Math.abs(by));
    return say('effect.written', { name: say(NAMES[kind]), change: `${by < 0 ? '−' : '+'}${written}` });
  });
  return say('history.since', { day: dateText(first.change.from.takenOn), changes: words().row(texts) });
}

interface HistoryProps {
  readonly measurings: readonly Measuring[];
  readonly measuredOn: string | undefined;
  readonly onRemove: (measuring: Measuring) => void;
}

function HistoryTable(props: HistoryProps) {
  const format = useFormat();
  return (
    <DataTable
      rows={props.measurings.toReversed()}
      rowKey={({ takenOn }) => takenOn}
      columns={[
        { title: say('history.day'), isName: true, cell: ({ takenOn }) => dateText(takenOn) },
        ...KINDS.map((kind) => ({
          title: say(NAMES[kind]),
          numeric: true,
          cell: ({ [kind]: value }: Measuring) => (value === null ? '–' : writer(kind, format)(value)),
        })),
        { title: say('athlete.tape'), numeric: true, cell: ({ tape }) => Object.keys(tape).length },
        {
          title: '',
          className: 'row-tool',
          cell: (measuring) => <RemoveMeasuring {...props} measuring={measuring} />,
        },
      ]}
    />
  );
}

/** Removes a day; the day of the athlete's present figures stays. */
function RemoveMeasuring(props: HistoryProps & { measuring: Measuring }) {
  const { measuring, measuredOn, onRemove } = props;
  if (measuredOn === undefined || measuring.takenOn >= measuredOn) {
    return <span className="soft">{say('history.now')}</span>;
  }
  return (
    <Button
      look="words"
      aria-label={say('history.remove.of', { day: dateText(measuring.takenOn) })}
      onClick={() => onRemove(measuring)}
    >
      {say('history.remove')}
    </Button>
  );
}
