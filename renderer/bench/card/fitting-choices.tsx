import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Lockable, Seat } from '../../../core/document/seat-schema.ts';
import { otherSide } from '../../../core/frame/mirror.ts';
import { say } from '../../language/messages.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { Tick } from '../../ui/fields/tick.tsx';
import { useDocument, useFit } from '../bench-context.tsx';
import { FromStock } from './from-stock.tsx';
import { PadBlockSizes } from './pad-block-sizes.tsx';

/** What a fitting is chosen to be, beside where it stands: strap, brace, non-slip floor. */
export function FittingChoices({ fitting }: { fitting: Lockable }) {
  const document = useDocument();
  const index = useFit((state) => state.seat);
  const seat = useFit(({ fit }) => fit.seats[index]!);
  const change = (what: string, edit: (seat: Seat) => Seat) =>
    document.apply(say('step.set', { what }), (fit: Fit) => ({
      ...fit,
      seats: fit.seats.map((at, i) => (i === index ? edit(at) : at)),
    }));

  if (fitting === 'rearRest') {
    return (
      <>
        <FromStock fitting="rearRest" change={change} />
        <ChoiceField
          label={say('measures.strap')}
          value={seat.rearRest.strap}
          onChange={(strap) =>
            change(say('measures.strap'), (at) => ({ ...at, rearRest: { ...at.rearRest, strap } }))
          }
          options={(['releases', 'fixed', 'none'] as const).map((value) => ({
            value,
            name: say(`measures.strap.${value}`),
          }))}
        />
      </>
    );
  }
  if (fitting === 'kneePad') {
    const name = say('measures.braced');
    return (
      <>
        <FromStock fitting="kneePad" change={change} />
        <PadBlockSizes pad={seat.kneePad} change={change} />
        <Tick
          name={name}
          isOn={seat.kneePad.braced}
          onChange={(braced) => change(name, (at) => ({ ...at, kneePad: { ...at.kneePad, braced } }))}
        />
        <Tick
          name={say('measures.other-knee')}
          isOn={(seat.kneels ?? seat.side) !== seat.side}
          onChange={(other) => change(say('measures.knee'), (at) => onKnee(at, other))}
        />
      </>
    );
  }
  if (fitting === 'frontFoot') {
    const name = say('measures.non-slip');
    return (
      <Tick
        name={name}
        isOn={seat.frontFoot.nonSlip}
        onChange={(nonSlip) => change(name, (at) => ({ ...at, frontFoot: { ...at.frontFoot, nonSlip } }))}
      />
    );
  }
  return null;
}

/** The seat kneeling on the knee of the paddling side, or on the other: the whole setting is mirrored with the knee. */
function onKnee({ kneels: _, ...seat }: Seat, other: boolean): Seat {
  return other ? { ...seat, kneels: otherSide(seat.side) } : seat;
}
