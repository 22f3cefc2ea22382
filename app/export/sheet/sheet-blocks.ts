import { cautionSentence, STANDING_CAUTIONS } from '../../../core/setout/caution-sentences.ts';
import { markName } from '../../../core/setout/floorboard-template.ts';
import type { HoleList, HoleRow } from '../../../core/setout/hole-list.ts';
import { fixingNotes, orderOfWork } from '../../../core/setout/order-of-work.ts';
import type { SeatSetOut } from '../../../core/setout/set-out.ts';
import { figureOf, type SheetUnits, writtenLength } from '../../../core/setout/sheet-length.ts';
import {
  acrossText,
  alongText,
  angleName,
  angleText,
  FITTING_NAMES,
  heightCheck,
  heightName,
  markWhat,
} from '../../../core/setout/sheet-names.ts';
import type { Block } from './flow.ts';
import { gridRows, listRows, tableRows } from './table-rows.ts';

/** Everything on a set-out sheet but the drawing, in the order it is worked through. */
export function sheetBlocks(out: SeatSetOut): Block[] {
  const { units } = out.work.options;
  const special = out.cautions.map((caution) => cautionSentence(caution, units));
  return [
    ...(special.length === 0
      ? []
      : [listBlock('Before cutting: this fit', special, { numbered: false, strong: true })]),
    marksBlock(out),
    checksBlock(out),
    heightsBlock(out),
    anglesBlock(out),
    ...out.holes.map((list) => holesBlock(list, out)),
    listBlock('Order of work', orderOfWork(out), { numbered: true }),
    listBlock('Fixing and strap', fixingNotes(out), { numbered: false }),
    listBlock('Cautions', STANDING_CAUTIONS, { numbered: false }),
  ];
}

function listBlock(
  heading: string,
  sentences: readonly string[],
  how: { numbered: boolean; strong?: boolean },
): Block {
  return { heading, rows: (pdf, width) => listRows(pdf, width, { sentences, ...how }) };
}

function marksBlock(out: SeatSetOut): Block {
  const { units } = out.work.options;
  return {
    heading: `Marks on the floorboard, ${units} from the ${markName(out)} and the centreline`,
    rows: (pdf, width) =>
      tableRows(pdf, width, {
        columns: [
          { title: 'mark', share: 9, strong: true },
          { title: 'what it is', share: 52 },
          { title: 'along', share: 26, anchor: 'end', strong: true },
          { title: 'across', share: 24, anchor: 'end', strong: true },
          { title: '±', share: 9, anchor: 'end' },
        ],
        cells: out.marks.map((mark) => [
          mark.name,
          markWhat(out, mark.name),
          alongText(mark, units),
          acrossText(mark, units),
          mark.toleranceMm === 0 ? '' : figureOf(mark.toleranceMm, units),
        ]),
      }),
  };
}

function checksBlock(out: SeatSetOut): Block {
  const { units } = out.work.options;
  const tolerance = writtenLength(out.checks[0]?.toleranceMm ?? 0, units);
  return {
    heading: `Check dimensions, mark to mark, ± ${tolerance}`,
    rows: (pdf, width) =>
      gridRows(pdf, width, {
        perRow: 3,
        entries: out.checks.map(({ from, to, lengthMm }) => ({
          label: `${from} – ${to}`,
          value: figureOf(lengthMm, units),
        })),
      }),
  };
}

function heightsBlock(out: SeatSetOut): Block {
  const { units } = out.work.options;
  return {
    heading: `Heights over the floorboard, ${units}`,
    rows: (pdf, width) =>
      tableRows(pdf, width, {
        columns: [
          { title: 'what', share: 48 },
          { title: 'height', share: 15, anchor: 'end', strong: true },
          { title: '±', share: 9, anchor: 'end' },
          { title: 'check', share: 48 },
        ],
        cells: out.heights.map((row) => [
          heightName(row.height),
          figureOf(row.aboveFloorMm, units),
          figureOf(row.toleranceMm, units),
          heightCheck(row, units),
        ]),
      }),
  };
}

function anglesBlock(out: SeatSetOut): Block {
  const { units } = out.work.options;
  return {
    heading: 'Angles',
    rows: (pdf, width) =>
      tableRows(pdf, width, {
        columns: [
          { title: 'what', share: 42 },
          { title: 'angle', share: 15, anchor: 'end', strong: true },
          { title: '±', share: 9, anchor: 'end' },
          { title: 'the same with a tape', share: 54 },
        ],
        cells: out.angles.map((row) => [
          angleName(row.angle),
          `${row.deg.toFixed(1)}°`,
          `${row.toleranceDeg}°`,
          angleText(row, units),
        ]),
      }),
  };
}

function holesBlock(list: HoleList, out: SeatSetOut): Block {
  const { units } = out.work.options;
  const size = `${list.diameterMm.toFixed(1)} mm`;
  const pitch = list.pitchMm === null ? '' : `, every ${pitchText(list.pitchMm)}`;
  const heading = `Holes: ${FITTING_NAMES[list.fitting].toLowerCase()}, ${size}${pitch}`;
  const sentences = [holesSentence(list, out)];
  return {
    heading,
    rows: (pdf, width) => [
      ...listRows(pdf, width, { sentences, numbered: false }),
      ...gridRows(
        pdf,
        width,
        list.pitchMm === null
          ? { perRow: 2, entries: list.rows.flatMap((row) => screwEntries(row, list, units)) }
          : { perRow: 4, entries: holeEntries(list.rows[0], units) },
      ),
    ],
  };
}

/** Holes of a row by number. The holes of both rows lie straight across from each other, so one list serves. */
function holeEntries(row: HoleRow | undefined, units: SheetUnits) {
  return (row?.holes ?? []).map(({ at, number, now }) => ({
    label: `${number}`,
    value: alongText({ forwardMm: Math.round(at[0]) }, units),
    now,
  }));
}

function screwEntries({ holes }: HoleRow, { tooFine }: HoleList, units: SheetUnits) {
  return holes.map(({ at, now }) => ({
    label: tooFine ? 'bolt' : 'screw',
    value: `${alongText({ forwardMm: Math.round(at[0]) }, units)}, ${across(at[1], units)}`,
    now,
  }));
}

/** The hardware's own pitch, in millimetres in either units: a rounded inch would add up along the row. */
function pitchText(pitchMm: number): string {
  return `${Math.round(pitchMm * 100) / 100} mm`;
}

function across(portMm: number, units: SheetUnits): string {
  return acrossText({ portMm: Math.round(portMm) }, units);
}

function holesSentence(list: HoleList, out: SeatSetOut): string {
  const { units } = out.work.options;
  const from = `the ${markName(out)}`;
  if (list.pitchMm === null) return `Along from ${from}, across from the centreline.`;
  const rows = list.rows.map(({ holes }) => across(holes[0]?.at[1] ?? 0, units)).join(' and ');
  const what = list.fitting === 'kneePad' ? 'the knee' : 'the bearing edge';
  const now =
    list.numberNow === null
      ? 'The setting stands between two holes.'
      : `This setting uses hole ${list.numberNow} of each row.`;
  return `${list.rows.length === 1 ? 'One row' : 'Two rows'}, ${rows} of the centreline. Along: each hole from ${from}. Hole n sets ${what} n × ${pitchText(list.pitchMm)} aft. ${now}`;
}
