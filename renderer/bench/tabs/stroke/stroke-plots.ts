import type { Format } from '../../../../app/language/format.ts';
import type { Side } from '../../../../core/frame/mirror.ts';
import type { StrokeRow, StrokeSeatRow } from '../../../../core/stroke/stroke-cycle.ts';
import { LENGTH_UNITS } from '../../../../core/units/length-text.ts';
import { say } from '../../../language/messages.ts';

/** One line of a plot: a value for each row of the cycle, in the plot's shown unit. */
export interface PlotLine {
  readonly id:
    | 'ahead'
    | 'up'
    | 'out'
    | 'trim'
    | 'bow'
    | 'stern'
    | 'knee'
    | 'rearFoot'
    | 'frontFoot'
    | 'blade';
  readonly name: string;
  readonly values: readonly number[];
}

/** One plot: lines of as many values each, evenly spaced. */
export interface Plot {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  /** Places after the decimal mark where numbers are written. */
  readonly decimals: number;
  readonly lines: readonly (Omit<PlotLine, 'id'> & { readonly id: string })[];
}

/** One plot over the stroke. */
export interface StrokePlot extends Plot {
  readonly id: 'travel' | 'trim' | 'freeboard' | 'loads';
  readonly lines: readonly PlotLine[];
}

type AfloatRow = Extract<StrokeRow['afloat'], { kind: 'afloat' }>;

/** The plots of a stroke; null if the boat does not float throughout or the seat is empty. */
export function strokePlots(
  rows: readonly StrokeRow[],
  { seat, side, format }: { seat: number; side: Side; format: Format },
): StrokePlot[] | null {
  const seats = rows.flatMap((row) => row.seats[seat] ?? []).filter(({ loadsN }) => loadsN !== null);
  const afloat = rows.flatMap((row) => (row.afloat.kind === 'afloat' ? row.afloat : []));
  if (seats.length < rows.length || afloat.length < rows.length) return null;
  return [travelPlot(seats, side, format), ...boatPlots(afloat, format), loadPlot(seats)];
}

function line(id: PlotLine['id'], values: readonly number[]): PlotLine {
  return { id, name: say(`stroke.line.${id}`), values };
}

function travelPlot(seats: readonly StrokeSeatRow[], side: Side, format: Format): StrokePlot {
  const fine = lengthUnit(format, 'mm');
  const out = side === 'left' ? 1 : -1;
  const of = (read: (travel: StrokeSeatRow['travel']) => number) =>
    seats.map(({ travel }) => read(travel) * fine.perMetre);
  return {
    id: 'travel',
    ...fine,
    title: say('stroke.plot.travel', { unit: fine.unit }),
    lines: [
      line(
        'ahead',
        of(({ x }) => x),
      ),
      line(
        'up',
        of(({ z }) => z),
      ),
      line(
        'out',
        of(({ y }) => out * y),
      ),
    ],
  };
}

function boatPlots(afloat: readonly AfloatRow[], format: Format): StrokePlot[] {
  const fine = lengthUnit(format, 'mm');
  const coarse = lengthUnit(format, 'cm');
  const of = (read: (row: AfloatRow) => number, perMetre: number) =>
    afloat.map((row) => read(row) * perMetre);
  return [
    {
      id: 'trim',
      ...fine,
      title: say('stroke.plot.trim', { unit: fine.unit }),
      lines: [
        line(
          'trim',
          of(({ bowOverStern }) => bowOverStern, fine.perMetre),
        ),
      ],
    },
    {
      id: 'freeboard',
      ...coarse,
      title: say('stroke.plot.freeboard', { unit: coarse.unit }),
      lines: [
        line(
          'bow',
          of(({ freeboardBow }) => freeboardBow, coarse.perMetre),
        ),
        line(
          'stern',
          of(({ freeboardStern }) => freeboardStern, coarse.perMetre),
        ),
      ],
    },
  ];
}

function loadPlot(seats: readonly StrokeSeatRow[]): StrokePlot {
  const of = (contact: 'knee' | 'frontFoot' | 'rearFoot') =>
    line(
      contact,
      seats.map(({ loadsN }) => loadsN![contact]),
    );
  const blade = line(
    'blade',
    seats.map(({ bladeForceN }) => bladeForceN),
  );
  return {
    id: 'loads',
    unit: 'N',
    decimals: 0,
    title: say('stroke.plot.loads', { unit: 'N' }),
    lines: [of('knee'), of('frontFoot'), of('rearFoot'), blade],
  };
}

/** The unit that lengths of a plot are shown in: inches where those are read, else the usual one for their size. */
function lengthUnit({ lengthUnit: chosen }: Format, usual: 'mm' | 'cm') {
  const unit = chosen === 'in' ? 'in' : chosen === 'mm' ? 'mm' : usual;
  const decimals = unit === 'in' ? 2 : unit === 'cm' ? 1 : 0;
  return { unit, decimals, perMetre: 1 / LENGTH_UNITS[unit] };
}

/** Places of labels, in the same order and moved as little as possible, so that none is nearer to its neighbour than `apart`. */
export function spreadLabels(
  wished: readonly number[],
  { apart, most }: { apart: number; most: number },
): number[] {
  const order = wished.map((_, i) => i).sort((a, b) => wished[a]! - wished[b]! || a - b);
  const placed = [...wished];
  let floor = 0;
  for (const i of order) {
    placed[i] = Math.max(placed[i]!, floor);
    floor = placed[i]! + apart;
  }
  let ceiling = most;
  for (const i of order.toReversed()) {
    placed[i] = Math.min(placed[i]!, ceiling);
    ceiling = placed[i]! - apart;
  }
  return placed;
}
