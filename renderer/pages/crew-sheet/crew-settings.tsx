import type { Format } from '../../../app/language/format.ts';
import {
  COORDINATES,
  coordinatesOfFitting,
  type FittingCoordinate,
} from '../../../core/document/coordinates.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { coordinateOf } from '../../../core/document/fitting-coordinate.ts';
import type { Lockable, Seat } from '../../../core/document/seat-schema.ts';
import { coordinateText } from '../../bench/change-text.ts';
import { nameInSeat } from '../../bench/crew-names.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { inShownWords } from '../../language/shown-words.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';

const FITTINGS = ['kneePad', 'rearRest', 'frontFoot', 'paddle'] as const satisfies readonly Lockable[];
/** Below this a place is on its mark, metres. */
const ON_MARK_M = 0.0005;

/** A place along the boat as a tape reads it: so much aft or forward of a mark. */
export function aftOfMarkText(aftM: number, format: Format): string {
  if (Math.abs(aftM) < ON_MARK_M) return say('crew.on-mark');
  const by = format.length(Math.abs(aftM), { exact: true });
  return say(aftM > 0 ? 'drawing.place.aft' : 'drawing.place.forward', { by });
}

/** How far aft of the seat's own mark a coordinate of place lies, metres; null for what is not measured along the boat. */
function aftOf(coordinate: FittingCoordinate, value: number): number | null {
  const { axis, sign } = COORDINATES[coordinate];
  return axis === 'forward' ? -sign * value : null;
}

interface SeatColumn {
  readonly seat: Seat;
  readonly index: number;
  readonly stationM: number;
}

/** What stands in one row: its name, and its text for each seat. */
interface SettingRow {
  readonly name: string;
  readonly cell: (of: SeatColumn) => string;
}

/** A fitting's coordinate: what is measured along the boat from the seat's own mark and from the centre mark. */
function coordinateRows(coordinate: FittingCoordinate, format: Format): readonly SettingRow[] {
  const value = ({ seat }: SeatColumn) => coordinateOf(seat, coordinate);
  if (aftOf(coordinate, 0) === null) {
    const cell = (of: SeatColumn) => coordinateText(coordinate, value(of), format);
    return [{ name: say(`measure.${coordinate}`), cell }];
  }
  const aft = (of: SeatColumn) => aftOf(coordinate, value(of))!;
  const what = say(coordinate === 'frontFoot.forwardM' ? 'crew.sheet.heel' : 'crew.sheet.place');
  return [
    { name: say('crew.sheet.from-seat', { what }), cell: (of) => aftOfMarkText(aft(of), format) },
    {
      name: say('crew.sheet.from-centre', { what }),
      cell: (of) => aftOfMarkText(aft(of) - of.stationM, format),
    },
  ];
}

const sideName = (side: 'left' | 'right') => say(side === 'left' ? 'crew.left' : 'crew.right');

/** Every seat's setting side by side. */
export const CrewSettings = inShownWords(({ fit }: { fit: Fit }) => {
  const format = useFormat();
  const seats = fit.seats.map((seat, index) => ({
    seat,
    index,
    stationM: fit.boat.seats[index]?.stationM ?? 0,
  }));
  const rows: readonly SettingRow[] = [
    { name: say('crew.paddler'), cell: ({ index }) => nameInSeat(fit, index) },
    { name: say('athlete.side'), cell: ({ seat }) => sideName(seat.side) },
    { name: say('crew.sheet.kneels'), cell: ({ seat }) => sideName(seat.kneels ?? seat.side) },
    { name: say('crew.sheet.mark'), cell: ({ stationM }) => aftOfMarkText(-stationM, format) },
  ];
  return (
    <DataTable
      className="crew-table crew-settings"
      caption={say('crew.sheet.settings')}
      captionHidden
      rows={rows}
      rowKey={({ name }) => name}
      groups={FITTINGS.map((fitting) => ({
        key: fitting,
        title: say(`fitting.${fitting}`),
        rows: coordinatesOfFitting(fitting).flatMap((coordinate) => coordinateRows(coordinate, format)),
      }))}
      columns={[
        { title: '', isName: true, cell: ({ name }) => name },
        ...seats.map((of) => ({
          title: say('new-fit.seat', { number: of.index + 1 }),
          cell: ({ cell }: SettingRow) => cell(of),
        })),
      ]}
    />
  );
});
