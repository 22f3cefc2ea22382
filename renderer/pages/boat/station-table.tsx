import { useState } from 'react';
import { useFormat } from '../../display/use-display.ts';
import { say, sayCount } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/form/field.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import type { BoatSectionProps } from './boat-values.ts';
import { BLANK_STATION, type StationValues, spreadStations } from './boat-values.ts';
import { outlyingBeams } from './stands-out.ts';
import { pasteStations } from './station-paste.ts';

/** Stations at least and at most, as a tape's hull allows. */
const FEWEST = 5;
const MOST = 60;

const CELLS = [
  ['fromSternM', 'boat.station.from-stern'],
  ['keelM', 'boat.station.keel'],
  ['sheerM', 'boat.station.sheer'],
  ['sheerBeamM', 'boat.station.sheer-beam'],
] as const;

/** The tape's readings, a row for each station from the stern forward. */
export function StationTable({ form }: BoatSectionProps) {
  const { stations } = form.values;
  const columns = useStationColumns(form);
  const { told, onPaste } = usePastedStations(form);
  return (
    <div className="stack">
      <BeamHeights form={form} />
      {/* biome-ignore lint/a11y/noStaticElementInteractions: it only hears what its entries are given */}
      <div className="table-scroll" onPaste={onPaste} onKeyDown={goOnWithEnter}>
        <DataTable className="ruled stations" columns={columns} rows={stations} rowKey={(_, at) => at} />
      </div>
      <p className="soft" role="status">
        {told ?? say('boat.stations.paste')}
      </p>
      <StandsOutQuestions form={form} />
      <p>
        <Button
          disabled={stations.length >= MOST}
          onClick={() => form.change({ stations: [...stations, BLANK_STATION] })}
        >
          {say('boat.stations.add')}
        </Button>
      </p>
    </div>
  );
}

/** Enter leads to the next entry of the table, row by row; after the last one the form goes on. */
function goOnWithEnter(event: React.KeyboardEvent<HTMLDivElement>): void {
  if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
  const entries = [...event.currentTarget.querySelectorAll('input')];
  const next = entries[entries.indexOf(event.target) + 1];
  if (!next) return;
  event.preventDefault();
  next.focus();
}

/** Takes a table that is pasted into an entry, and says what became of it. */
function usePastedStations(form: BoatSectionProps['form']) {
  const format = useFormat();
  const [told, setTold] = useState<string | null>(null);
  function onPaste(event: React.ClipboardEvent): void {
    const entry = (event.target as HTMLInputElement).name ?? '';
    const text = event.clipboardData.getData('text/plain');
    const pasted = pasteStations(form.values, { entry, text }, format);
    if (!pasted) return;
    event.preventDefault();
    form.change({ stations: pasted.stations });
    const { notUnderstood } = pasted;
    setTold(
      notUnderstood > 0
        ? sayCount('boat.stations.pasted.partly', notUnderstood)
        : say('boat.stations.pasted'),
    );
  }
  return { told, onPaste };
}

/** Beams that stand out from those beside them, each asked about until it is changed or said to be right. */
function StandsOutQuestions({ form }: BoatSectionProps) {
  const format = useFormat();
  return outlyingBeams(form.values).map(({ key, station, valueM, neighboursM: [aft, fore] }) => (
    <p key={key} className="row field-problem" role="status">
      <span>
        {say('boat.station.stands-out.ask', {
          number: station + 1,
          value: format.length(valueM),
          aft: format.length(aft),
          fore: format.length(fore),
        })}
      </span>
      <Button look="words" onClick={() => form.change({ sureOf: [...form.values.sureOf, key] })}>
        {say('boat.station.stands-out.right')}
      </Button>
    </p>
  ));
}

/** A column for each reading, and one for each common height that beams are measured at. */
function useStationColumns(form: BoatSectionProps['form']): readonly Column<StationValues>[] {
  const format = useFormat();
  const { stations, beamHeightsM } = form.values;
  const label = (at: number, what: string) => say('boat.station.cell', { number: at + 1, what });
  const readings = CELLS.map(([key, title]) => ({
    title: say(title),
    cell: (_: StationValues, at: number) => (
      <Field as="length" {...form.at('stations', at, key)} label={label(at, say(title))} labelHidden />
    ),
  }));
  const beams = beamHeightsM.map((heightM, i) => {
    const title = say('boat.station.beam', { height: heightM === null ? '–' : format.length(heightM) });
    return {
      title,
      id: i,
      cell: (_: StationValues, at: number) => (
        <Field as="length" {...form.at('stations', at, 'beamsM', i)} label={label(at, title)} labelHidden />
      ),
    };
  });
  const remove = (at: number) => (
    <Button
      look="bare"
      aria-label={say('boat.stations.remove', { number: at + 1 })}
      disabled={stations.length <= FEWEST}
      onClick={() => form.change({ stations: stations.filter((_, i) => i !== at) })}
    >
      ×
    </Button>
  );
  return [
    { title: '', id: 'number', isName: true, cell: (_, at) => at + 1 },
    ...readings,
    ...beams,
    { title: '', id: 'remove', cell: (_, at) => remove(at) },
  ];
}

/** The heights above the keel at which lower beams are measured, and the stations spread along the boat. */
function BeamHeights({ form }: BoatSectionProps) {
  const { beamHeightsM, lengthM } = form.values;
  return (
    <div className="entry-row">
      <span className="field-label">{say('boat.beam-height')}</span>
      {beamHeightsM.map((_, i) => (
        <Field
          // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place in the table
          key={i}
          as="length"
          {...form.at('beamHeightsM', i)}
          label={say('boat.beam-height.of', { number: i + 1 })}
          labelHidden
        />
      ))}
      <Button
        disabled={lengthM === null}
        onClick={() => form.change({ stations: spreadStations(form.values) })}
      >
        {say('boat.stations.spread')}
      </Button>
    </div>
  );
}
