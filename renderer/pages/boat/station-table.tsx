import { tapeStation } from '../../../core/document/hull-kinds-schema.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { BLANK_STATION, type BoatEntries, type StationEntry, spreadStations } from './boat-entries.ts';

const { keelM, sheerM, sheerBeamM } = tapeStation.shape;
const beam = tapeStation.shape.beams.unwrap().element.shape;

/** The tape's readings, a row for each station from the stern forward. */
export function StationTable(props: {
  entries: BoatEntries;
  onChange: (part: Partial<BoatEntries>) => void;
}) {
  const { entries, onChange } = props;
  const format = useFormat();
  const { stations, beamHeightsM } = entries;
  const set = (at: number, part: Partial<StationEntry>) =>
    onChange({ stations: stations.map((s, i) => (i === at ? { ...s, ...part } : s)) });
  const heading = (heightM: number | null) =>
    say('boat.station.beam', { height: heightM === null ? '–' : format.length(heightM) });

  const cell = (
    at: number,
    key: Exclude<keyof StationEntry, 'beamsM'>,
    limits: { min: number; max: number },
  ) => {
    const what = say(
      (
        {
          fromSternM: 'boat.station.from-stern',
          keelM: 'boat.station.keel',
          sheerM: 'boat.station.sheer',
          sheerBeamM: 'boat.station.sheer-beam',
        } as const
      )[key],
    );
    return (
      <td>
        <MeasureField
          label={say('boat.station.cell', { number: at + 1, what })}
          labelHidden
          kind="length"
          value={stations[at]![key]}
          {...limits}
          onEnter={(value) => set(at, { [key]: value })}
          onEmpty={() => set(at, { [key]: null })}
        />
      </td>
    );
  };

  return (
    <div className="stack">
      <div className="entry-row">
        <span className="field-label">{say('boat.beam-height')}</span>
        {beamHeightsM.map((heightM, i) => (
          <MeasureField
            // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place in the table
            key={i}
            label={say('boat.beam-height.of', { number: i + 1 })}
            labelHidden
            kind="length"
            value={heightM}
            {...limitsOf(beam.aboveKeelM)}
            onEnter={(value) => onChange({ beamHeightsM: beamHeightsM.map((h, j) => (j === i ? value : h)) })}
          />
        ))}
        <button
          type="button"
          className="button"
          disabled={entries.lengthM === null}
          onClick={() => onChange({ stations: spreadStations(entries) })}
        >
          {say('boat.stations.spread')}
        </button>
      </div>
      <div className="table-scroll">
        <table className="ruled stations">
          <thead>
            <tr>
              <td />
              <th scope="col">{say('boat.station.from-stern')}</th>
              <th scope="col">{say('boat.station.keel')}</th>
              <th scope="col">{say('boat.station.sheer')}</th>
              <th scope="col">{say('boat.station.sheer-beam')}</th>
              {beamHeightsM.map((heightM, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place in the table
                <th key={i} scope="col">
                  {heading(heightM)}
                </th>
              ))}
              <td />
            </tr>
          </thead>
          <tbody>
            {stations.map((station, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the table
              <tr key={at}>
                <th scope="row">{at + 1}</th>
                {cell(at, 'fromSternM', { min: 0, max: 15 })}
                {cell(at, 'keelM', limitsOf(keelM))}
                {cell(at, 'sheerM', limitsOf(sheerM))}
                {cell(at, 'sheerBeamM', limitsOf(sheerBeamM))}
                {beamHeightsM.map((heightM, i) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place in the table
                  <td key={i}>
                    <MeasureField
                      label={say('boat.station.cell', { number: at + 1, what: heading(heightM) })}
                      labelHidden
                      kind="length"
                      value={station.beamsM[i] ?? null}
                      {...limitsOf(beam.beamM)}
                      onEnter={(value) =>
                        set(at, {
                          beamsM: beamHeightsM.map((_, j) => (j === i ? value : (station.beamsM[j] ?? null))),
                        })
                      }
                      onEmpty={() =>
                        set(at, {
                          beamsM: beamHeightsM.map((_, j) => (j === i ? null : (station.beamsM[j] ?? null))),
                        })
                      }
                    />
                  </td>
                ))}
                <td>
                  <button
                    type="button"
                    className="button bare"
                    aria-label={say('boat.stations.remove', { number: at + 1 })}
                    disabled={stations.length <= 5}
                    onClick={() => onChange({ stations: stations.filter((_, i) => i !== at) })}
                  >
                    ×
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p>
        <button
          type="button"
          className="button"
          disabled={stations.length >= 60}
          onClick={() => onChange({ stations: [...stations, BLANK_STATION] })}
        >
          {say('boat.stations.add')}
        </button>
      </p>
    </div>
  );
}
