import type { Format } from '../../../app/language/format.ts';
import type { Severity } from '../../../core/evaluation/finding.ts';
import { findQuantity, type QuantityId } from '../../../core/evaluation/quantities.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { quantityText } from '../../bench/quantity-text.ts';
import { quantityName } from '../../language/sentences.ts';

/** One value in one column: as written, and what a finding says of it (null where none speaks). */
export interface TransferCell {
  readonly text: string;
  readonly severity: Severity | null;
}

export interface TransferRow {
  readonly id: string;
  readonly name: string;
  readonly cells: readonly TransferCell[];
}

const SETTING: readonly QuantityId[] = ['padAft', 'padFromMid', 'padHeight', 'restAft', 'frontHeelForward'];
const ROOM: readonly QuantityId[] = [
  'kneeInsideHull',
  'padInsideHull',
  'restInsideHull',
  'footInsideHull',
  'padTravel',
  'restTravel',
];
const PADDLE: readonly QuantityId[] = [
  'paddleByStance',
  'paddleDifference',
  'handOverGunwale',
  'handOverWater',
];
const STANCE: readonly QuantityId[] = ['frontKnee', 'kneelingKnee', 'trunkPitch'];
const BOAT: readonly QuantityId[] = [
  'trimRest',
  'trimCatch',
  'draft',
  'freeboardBow',
  'freeboardStern',
  'offCentre',
  'transverseGm',
  'leanMoment',
];

/** Quantities of a seat by what they are about, in the order they are reported. */
export const SEAT_GROUPS = { setting: SETTING, room: ROOM, paddle: PADDLE, stance: STANCE } as const;

/** In the place of a value that a boat does not have. */
const ABSENT = '–';

/** Rows of one seat (or of the boat: null) with a cell for each report; a quantity that none of them has is left out. */
export function transferRows(
  reports: readonly Report[],
  { ids = BOAT, seat, format }: { ids?: readonly QuantityId[]; seat: number | null; format: Format },
): TransferRow[] {
  return ids.flatMap((id): TransferRow[] => {
    const cells = reports.map((report) => cellOf(report, { id, seat, format }));
    return cells.every(({ text }) => text === ABSENT) ? [] : [{ id, name: quantityName(id), cells }];
  });
}

function cellOf(
  { quantities, findings }: Report,
  { id, seat, format }: { id: QuantityId; seat: number | null; format: Format },
): TransferCell {
  const quantity = findQuantity(quantities, id, seat);
  if (!quantity) return { text: ABSENT, severity: null };
  const finding = findings.find((f) => f.quantity === id && f.seat === seat);
  return { text: quantityText(quantity, format), severity: finding?.severity ?? null };
}
