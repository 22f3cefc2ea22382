import { say } from '../../language/messages.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { type BoatEntries, withSeats } from './boat-entries.ts';

/** How many seats, and where the mark of each stands. */
export function SeatMarks(props: {
  entries: BoatEntries;
  problems: Readonly<Record<string, string>>;
  onChange: (part: Partial<BoatEntries>) => void;
}) {
  const { entries, problems, onChange } = props;
  const marks = entries.seatsFromSternM;
  return (
    <section>
      <h2>{say('boat.seats')}</h2>
      <div className="entry-grid">
        <ChoiceField
          label={say('boat.seats')}
          labelHidden
          value={String(marks.length)}
          onChange={(count) => onChange({ seatsFromSternM: withSeats(entries, Number(count)) })}
          options={['1', '2', '3', '4'].map((value) => ({ value, name: value }))}
        />
        {marks.map((fromSternM, i) => (
          <MeasureField
            // biome-ignore lint/suspicious/noArrayIndexKey: a seat is its place in the boat
            key={i}
            label={
              marks.length === 1 ? say('boat.seat-station') : say('boat.seat-station.of', { number: i + 1 })
            }
            hint={i === 0 ? say('boat.seat-station.hint') : undefined}
            kind="length"
            value={fromSternM}
            min={0}
            max={entries.lengthM ?? 15}
            onEnter={(value) => onChange({ seatsFromSternM: marks.map((m, j) => (j === i ? value : m)) })}
            problem={fromSternM === null ? problems[`seats.${i}.stationM`] : null}
            required
          />
        ))}
      </div>
    </section>
  );
}
