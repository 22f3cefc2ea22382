import { useDocument, useFit } from '../../bench/bench-context.tsx';
import { say } from '../../language/messages.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';

/** Which seat of a crew boat is worked on. A single boat needs none. */
export function SeatChooser() {
  const document = useDocument();
  const seat = useFit((state) => state.seat);
  const seats = useFit(({ fit }) => fit.seats);
  if (seats.length === 1) return null;
  return (
    <div className="seat-chooser">
      <ChoiceField
        label={say('bench.seat')}
        labelHidden
        value={String(seat)}
        onChange={(value) => document.focusSeat(Number(value))}
        options={seats.map(({ athlete }, index) => ({
          value: String(index),
          name: say('bench.seat.of', { number: index + 1, name: athlete?.name ?? say('bench.seat.nobody') }),
        }))}
      />
    </div>
  );
}
