import { changeSide, swapSeats } from '../../../../core/crew/swap-seats.ts';
import { otherSide } from '../../../../core/frame/mirror.ts';
import { say } from '../../../language/messages.ts';
import { Button } from '../../../ui/button.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';
import { nameInSeat } from '../../crew-names.ts';

/** Moves the paddler of the selected seat: an exchange with another paddler, or a change of side. */
export function CrewPlaces() {
  const document = useDocument();
  const fit = useFit((state) => state.fit);
  const seat = useFit((state) => state.seat);
  const name = nameInSeat(fit, seat);
  const to = otherSide(fit.seats[seat]!.side);
  const side = say(to === 'left' ? 'crew.left' : 'crew.right');
  return (
    <ul className="crew-places">
      {fit.seats.map((_, other) =>
        other === seat ? null : (
          // biome-ignore lint/suspicious/noArrayIndexKey: a seat is its place in the boat
          <li key={other}>
            <Button
              look="words"
              onClick={() => {
                const step = say('crew.swap.step', { a: name, b: nameInSeat(fit, other) });
                document.apply(step, (now) => swapSeats(now, seat, other));
                document.focusSeat(other);
              }}
            >
              {say('crew.swap', { name: nameInSeat(fit, other) })}
            </Button>
          </li>
        ),
      )}
      <li>
        <Button
          look="words"
          onClick={() =>
            document.apply(say('crew.change-side.step', { name, side }), (now) => changeSide(now, seat))
          }
        >
          {say('crew.change-side', { name, side })}
        </Button>
      </li>
    </ul>
  );
}
