import { padFromStock, padInStock, restFromStock, restInStock } from '../../../core/document/from-stock.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { useCall } from '../../client/use-call.ts';
import { say } from '../../language/messages.ts';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { useFit } from '../bench-context.tsx';

/** Stands for a fitting that is like no piece of the stock. */
const NONE = 'none';

interface FromStockProps {
  readonly fitting: 'kneePad' | 'rearRest';
  readonly change: (what: string, edit: (seat: Seat) => Seat) => void;
}

/** Makes the seat's pad or rest like a piece of the stock that the boat has now; nothing where there is none. */
export function FromStock(props: FromStockProps) {
  const boatId = useFit(({ fit }) => fit.boat.id);
  return boatId ? <StockOf {...props} boatId={boatId} /> : null;
}

function StockOf({ fitting, change, boatId }: FromStockProps & { boatId: string }) {
  const { value: stock } = useCall('boats.stock', { id: boatId });
  const seat = useFit((state) => state.fit.seats[state.seat]!);
  const pieces = (fitting === 'kneePad' ? stock?.pads : stock?.rests) ?? [];
  if (pieces.length === 0) return null;
  const now =
    fitting === 'kneePad'
      ? padInStock(seat.kneePad, stock?.pads ?? [])
      : restInStock(seat.rearRest, stock?.rests ?? []);

  function take(chosen: string): void {
    const piece = pieces[Number(chosen)];
    if (chosen === NONE || !piece) return;
    change(say('boat.stock.step', { name: piece.name }), (at) =>
      fitting === 'kneePad'
        ? { ...at, kneePad: padFromStock(at.kneePad, stock!.pads[Number(chosen)]!) }
        : { ...at, rearRest: restFromStock(at.rearRest, stock!.rests[Number(chosen)]!) },
    );
  }

  return (
    <SelectField
      label={say('boat.stock.choose.pad')}
      value={now < 0 ? NONE : String(now)}
      onChange={take}
      options={[
        ...(now < 0 ? [{ value: NONE, name: say('boat.stock.own') }] : []),
        ...pieces.map(({ name }, i) => ({ value: String(i), name })),
      ]}
    />
  );
}
