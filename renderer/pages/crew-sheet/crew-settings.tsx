import type { Format } from '../../../app/language/format.ts';
import {
  COORDINATES,
  coordinatesOfFitting,
  type FittingCoordinate,
} from '../../../core/document/coordinates.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { coordinateOf } from '../../../core/document/fitting-coordinate.ts';
import type { Lockable } from '../../../core/document/seat-schema.ts';
import { coordinateText } from '../../bench/change-text.ts';
import { nameInSeat } from '../../bench/crew-names.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';

const FITTINGS = ['kneePad', 'rearRest', 'frontFoot', 'paddle'] as const satisfies readonly Lockable[];
/** Below this a place is on its mark, metres. */
const ON_MARK_M = 0.0005;

/** A place along the boat as a tape reads it: so much aft or forward of a mark. */
export function alongText(aftM: number, format: Format): string {
  if (Math.abs(aftM) < ON_MARK_M) return say('crew.on-mark');
  const by = format.length(Math.abs(aftM), { exact: true });
  return say(aftM > 0 ? 'drawing.place.aft' : 'drawing.place.forward', { by });
}

/** How far aft of the seat's own mark a coordinate of place lies, metres; null for what is not measured along the boat. */
function aftOf(coordinate: FittingCoordinate, value: number): number | null {
  const { axis, sign } = COORDINATES[coordinate];
  return axis === 'forward' ? -sign * value : null;
}

/** Every seat's setting side by side: what is measured along the boat from the seat's own mark and from the centre mark. */
export function CrewSettings({ fit }: { fit: Fit }) {
  const format = useFormat();
  const seats = fit.seats.map((seat, index) => ({ seat, station: fit.boat.seats[index]?.stationM ?? 0 }));
  const row = (name: string, cell: (of: (typeof seats)[number], index: number) => string) => (
    <tr key={name}>
      <th scope="row">{name}</th>
      {seats.map((of, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a seat is its place in the boat
        <td key={index}>{cell(of, index)}</td>
      ))}
    </tr>
  );
  const side = (which: 'left' | 'right') => say(which === 'left' ? 'crew.left' : 'crew.right');
  const measures = (coordinate: FittingCoordinate) => {
    const name = say(`measure.${coordinate}`);
    if (aftOf(coordinate, 0) === null)
      return [row(name, ({ seat }) => coordinateText(coordinate, coordinateOf(seat, coordinate), format))];
    const aft = (of: (typeof seats)[number]) => aftOf(coordinate, coordinateOf(of.seat, coordinate))!;
    const what = say(coordinate === 'frontFoot.forwardM' ? 'crew.sheet.heel' : 'crew.sheet.place');
    return [
      row(say('crew.sheet.from-seat', { what }), (of) => alongText(aft(of), format)),
      row(say('crew.sheet.from-centre', { what }), (of) => alongText(aft(of) - of.station, format)),
    ];
  };
  return (
    <table className="crew-table crew-settings">
      <caption className="only-spoken">{say('crew.sheet.settings')}</caption>
      <thead>
        <tr>
          <td />
          {seats.map((_, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a seat is its place in the boat
            <th key={index} scope="col">
              {say('new-fit.seat', { number: index + 1 })}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {row(say('crew.paddler'), (_, index) => nameInSeat(fit, index))}
        {row(say('athlete.side'), ({ seat }) => side(seat.side))}
        {row(say('crew.sheet.kneels'), ({ seat }) => side(seat.kneels ?? seat.side))}
        {row(say('crew.sheet.mark'), ({ station }) => alongText(-station, format))}
      </tbody>
      {FITTINGS.map((fitting) => (
        <tbody key={fitting}>
          <tr>
            <th scope="rowgroup" colSpan={seats.length + 1} className="lettering">
              {say(`fitting.${fitting}`)}
            </th>
          </tr>
          {coordinatesOfFitting(fitting).flatMap(measures)}
        </tbody>
      ))}
    </table>
  );
}
