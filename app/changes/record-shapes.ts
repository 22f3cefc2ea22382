import type { DocumentShape } from './leaves.ts';

/** Everything that is changed and merged field by field. Revisions are not: they never change. */
export const RECORD_KINDS = ['athlete', 'boat', 'paddle', 'photo', 'fit', 'trial'] as const;
export type RecordKind = (typeof RECORD_KINDS)[number];

const named = (piece: { name: string }) => piece.name;
const byQuantity = (band: { quantity: string }) => band.quantity;
const byPlace = (_: unknown, index: number) => String(index);

/** What was observed, without how strongly. */
function observed(one: { kind: string; place?: string; feeling?: string; sign?: string }): string {
  return one.kind === 'body' ? `${one.place} ${one.feeling}` : String(one.sign);
}

const SEAT = 'seats/*';

/**
 * How each kind of document is taken apart. An object is only entered where every mix of its fields is a sound document: a
 * hull and the check that corrects it are one field, and so are the copies of boat and athlete that a fit carries.
 */
export const RECORD_SHAPES: Readonly<Record<RecordKind, DocumentShape>> = {
  athlete: {
    within: ['tape', 'consent'],
    lists: { limits: (limit: { joint: string }) => limit.joint, bands: byQuantity },
    together: [],
  },
  boat: {
    within: ['floorboard', 'hardware', 'stock'],
    lists: {
      'stock/pads': named,
      'stock/rests': named,
    },
    together: [['hull', 'floatCheck', 'correction', 'earlierFloatChecks']],
  },
  paddle: { within: [], lists: {}, together: [] },
  photo: { within: [], lists: {}, together: [] },
  fit: {
    within: [
      'water',
      SEAT,
      ...['kneePad', 'rearRest', 'frontFoot', 'paddle', 'pins', 'pinReadings', 'stroke'].map(
        (part) => `${SEAT}/${part}`,
      ),
    ],
    lists: { seats: byPlace, [`${SEAT}/bands`]: byQuantity },
    together: [],
  },
  trial: { within: [], lists: { observations: observed }, together: [], needed: ['observations'] },
};
