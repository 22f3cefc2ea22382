import type { AthleteRecord } from '../../../app/contract/records.ts';
import type { Side } from '../../../core/frame/mirror.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { SelectField } from '../../ui/fields/select-field.tsx';
import type { FormState } from '../../ui/form/use-form.ts';
import { athleteChoices } from '../../ui/told-apart.ts';
import { type ChosenSeat, type NewFitValues, newFitStore, withSeat } from './chosen.ts';

/** Stands for an empty seat in the list of athletes. */
const NOBODY = 'nobody';

function seatLabel(index: number, seats: number): string {
  if (seats === 1) return say('conflicts.kind.athlete');
  return say(index === 0 ? 'new-fit.seat.bow' : 'new-fit.seat', { number: index + 1 });
}

/** One seat of a new fit: who kneels in it, and on which side. */
export function SeatChoice(props: {
  index: number;
  seats: number;
  athletes: readonly AthleteRecord[];
  choice: ChosenSeat;
  side: Side;
  form: FormState<NewFitValues>;
}) {
  const { index, seats, athletes, choice, side, form } = props;
  const choose = (part: Partial<ChosenSeat>) =>
    form.change({ seats: withSeat(form.values.seats, index, part) });
  const path = `seats.${index}.athleteId`;
  const options = [
    ...athleteChoices(athletes, useFormat()),
    ...(seats > 1 ? [{ value: NOBODY, name: say('bench.seat.nobody') }] : []),
  ];
  return (
    <div className="entry-row">
      {options.length > 0 ? (
        <SelectField
          name={path}
          problem={form.problems[path] ?? null}
          label={seatLabel(index, seats)}
          value={choice.athleteId === undefined ? null : (choice.athleteId ?? NOBODY)}
          placeholder={say('new-fit.choose')}
          options={options}
          onChange={(value) => choose({ athleteId: value === NOBODY ? null : value, side: null })}
        />
      ) : (
        <p>{say('new-fit.no-athlete')}</p>
      )}
      {choice.athleteId && (
        <ChoiceField
          label={say('athlete.side')}
          value={side}
          onChange={(value) => choose({ side: value })}
          options={[
            { value: 'left', name: say('side.left') },
            { value: 'right', name: say('side.right') },
          ]}
        />
      )}
      <a
        className="button"
        href={hrefOf({ page: 'athlete', id: 'new' })}
        onClick={() => newFitStore.setState({ awaited: { what: 'athlete', seat: index } })}
      >
        {say('new-fit.make-athlete')}
      </a>
    </div>
  );
}
