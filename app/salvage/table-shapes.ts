import { athleteSchema } from '../../core/document/athlete-schema.ts';
import { boatSchema } from '../../core/document/boat-schema.ts';
import { fitSchema } from '../../core/document/fit-schema.ts';
import { measuringSchema } from '../../core/document/measuring-schema.ts';
import { stockPaddleSchema } from '../../core/document/stock-paddle-schema.ts';
import { trialSchema } from '../../core/trial/observation.ts';
import type { PageValue } from './record.ts';

type Check = (value: PageValue) => boolean;
interface Column {
  readonly name: string;
  readonly fits: Check;
  /** Rows of older versions end before it. */
  readonly later?: true;
}

/** A table described by the values of its rows, for files in which nothing else says which table a row belongs to. */
export interface TableShape {
  readonly name: string;
  readonly from: 'table' | 'index';
  readonly columns: readonly Column[];
  /** Of two rows of one key, the one in which this is later counts. */
  readonly newest: string | null;
}

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;
const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d/;
const DAY = /^\d{4}-\d\d-\d\d$/;
const HEX = /^[0-9a-f]{8,}$/;
const KINDS = ['athlete', 'boat', 'paddle', 'photo', 'fit', 'trial'];

const text: Check = (value) => typeof value === 'string';
const like =
  (pattern: RegExp): Check =>
  (value) =>
    typeof value === 'string' && pattern.test(value);
const orNull =
  (fits: Check): Check =>
  (value) =>
    value === null || fits(value);
const json =
  (fits: (read: unknown) => boolean): Check =>
  (value) => {
    try {
      return typeof value === 'string' && fits(JSON.parse(value));
    } catch {
      return false;
    }
  };
const by = (schema: { safeParse(value: unknown): { success: boolean } }) =>
  json((read) => schema.safeParse(read).success);
const [uuid, instant, list] = [like(UUID), like(INSTANT), json(Array.isArray)];

const column = (name: string, fits: Check): Column => ({ name, fits });
const later = (name: string, fits: Check): Column => ({ name, fits, later: true });
const DATES = [
  column('created_at', instant),
  column('changed_at', instant),
  column('archived_at', orNull(instant)),
];
const documents = (name: string, of: string, schema: Parameters<typeof by>[0]): TableShape => ({
  name,
  from: 'table',
  columns: [
    column('id', uuid),
    column('name', text),
    column('search', text),
    column(of, by(schema)),
    ...DATES,
  ],
  newest: 'changed_at',
});
const athletes = documents('athletes', 'athlete', athleteSchema);

/** Every table with a person's work in it. */
export const TABLE_SHAPES: readonly TableShape[] = [
  { ...athletes, columns: [...athletes.columns, later('joined_into', orNull(uuid))] },
  documents('boats', 'boat', boatSchema),
  documents('paddles', 'paddle', stockPaddleSchema),
  {
    name: 'fits',
    from: 'table',
    columns: [
      column('id', uuid),
      column('name', text),
      column('boat_name', text),
      column('athlete_names', list),
      column('search', text),
      ...DATES,
      later('athlete_ids', list),
      later('boat_id', orNull(uuid)),
    ],
    newest: 'changed_at',
  },
  {
    name: 'revisions',
    from: 'table',
    columns: [
      column('id', uuid),
      column('fit_id', uuid),
      column('number', (value) => Number(value) >= 1),
      column('name', text),
      column('reason', text),
      column('saved_at', instant),
      column('fit', by(fitSchema)),
    ],
    newest: null,
  },
  {
    name: 'revision_words',
    from: 'table',
    columns: [
      column('revision_id', uuid),
      column('answers', list),
      column('athlete_ids', list),
      column('search', text),
      later('saved_at', orNull(instant)),
    ],
    newest: null,
  },
  {
    name: 'drafts',
    from: 'table',
    columns: [column('fit_id', uuid), column('saved_at', instant), column('fit', by(fitSchema))],
    newest: 'saved_at',
  },
  {
    name: 'trials',
    from: 'table',
    columns: [
      column('id', uuid),
      column('fit_id', uuid),
      column('revision_id', uuid),
      column('athlete_id', orNull(uuid)),
      column('trial', by(trialSchema)),
      column('search', text),
      ...DATES,
    ],
    newest: 'changed_at',
  },
  {
    name: 'measurings',
    from: 'table',
    columns: [
      column('athlete_id', uuid),
      column('taken_on', like(DAY)),
      column('measuring', by(measuringSchema)),
      column('saved_at', instant),
    ],
    newest: 'saved_at',
  },
  {
    name: 'boat_photos',
    from: 'table',
    columns: [
      column('id', uuid),
      column('boat_id', uuid),
      column('caption', text),
      column('mime', like(/^image\/(jpeg|png|webp)$/)),
      column('bytes', (value) => value instanceof Uint8Array),
      column('added_at', instant),
      later('athlete_id', orNull(uuid)),
      later('fit_id', orNull(uuid)),
      later('study', orNull(json((read) => typeof read === 'object'))),
    ],
    newest: 'added_at',
  },
  {
    name: 'quarantine',
    from: 'table',
    columns: [
      column('table_name', text),
      column('row_id', text),
      column('problem', text),
      column('raw', text),
      column('found_at', instant),
    ],
    newest: 'found_at',
  },
  {
    name: 'erased_people',
    from: 'index',
    columns: [column('salt', like(HEX)), column('digest', like(HEX))],
    newest: null,
  },
  {
    name: 'field_versions',
    from: 'index',
    columns: [
      column('kind', (value) => KINDS.includes(String(value))),
      column('record_id', uuid),
      column('path', text),
      column(
        'seen',
        json(() => true),
      ),
      column(
        'writes',
        json(() => true),
      ),
      column('others', list),
    ],
    newest: null,
  },
];

/** The table that a row looks like; null if none. */
export function shapeOf(from: 'table' | 'index', values: readonly PageValue[]): TableShape | null {
  return TABLE_SHAPES.find((shape) => shape.from === from && isOfShape(shape, values)) ?? null;
}

/** Whether a row of no table above is the file's own and no person's work: SQLite's list of tables, the store's own name. */
export function isHousekeeping(values: readonly PageValue[]): boolean {
  const [first, second] = values;
  const listed = ['table', 'index', 'trigger', 'view'].includes(String(first)) && values.length === 5;
  const ofThisStore = values.length === 3 && like(HEX)(first ?? null) && typeof second === 'number';
  return listed || ofThisStore || values.length === 1;
}

function isOfShape({ columns }: TableShape, values: readonly PageValue[]): boolean {
  if (values.length > columns.length || values.length === 0) return false;
  return columns.every(({ fits, later }, i) =>
    i < values.length ? fits(values[i] ?? null) : later === true,
  );
}
