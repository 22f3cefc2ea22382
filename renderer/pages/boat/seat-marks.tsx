import { say } from '../../language/messages.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { Field } from '../../ui/form/field.tsx';
import type { BoatSectionProps } from './boat-values.ts';
import { marksForSeats } from './boat-values.ts';

/** How many seats, and where the mark of each stands. */
export function SeatMarks({ form }: BoatSectionProps) {
  const { seatsFromSternM: marks, lengthM } = form.values;
  return (
    <section>
      <h2>{say('boat.seats')}</h2>
      <div className="entry-grid">
        <ChoiceField
          label={say('boat.seats')}
          labelHidden
          value={String(marks.length)}
          onChange={(count) => form.change({ seatsFromSternM: marksForSeats(form.values, Number(count)) })}
          options={['1', '2', '3', '4'].map((value) => ({ value, name: value }))}
        />
        {marks.map((_, i) => (
          <Field
            // biome-ignore lint/suspicious/noArrayIndexKey: a seat is its place in the boat
            key={i}
            as="length"
            {...form.at('seatsFromSternM', i)}
            max={lengthM ?? 15}
            label={
              marks.length === 1 ? say('boat.seat-station') : say('boat.seat-station.of', { number: i + 1 })
            }
            hint={i === 0 ? say('boat.seat-station.hint') : undefined}
          />
        ))}
      </div>
    </section>
  );
}
