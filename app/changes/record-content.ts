import { documentOf, leavesOf } from './leaves.ts';
import { RECORD_SHAPES, type RecordKind } from './record-shapes.ts';
import type { Leaves } from './record-state.ts';

/** The measurements of one day; lengths in metres, mass in kilograms. */
interface DayMeasured {
  readonly takenOn: string;
  readonly statureM: number | null;
  readonly massKg: number | null;
  readonly tape: object;
}

/** A record as it is known: its document, and what is kept beside it. Null as the document: it was removed. */
export interface RecordContent {
  readonly document: object | null;
  readonly archived?: boolean;
  /** Of an entry of a person that was joined to another one: that one's identifier. */
  readonly joinedInto?: string | null;
  readonly measured?: readonly DayMeasured[];
  /** Of a trial: the revision that was tried, and who knelt. */
  readonly revisionId?: string;
  readonly athleteId?: string | null;
}

/** Begins the path of everything that is kept beside a document; no field of a document begins so. */
const BESIDE = '@';
/** Begins the path of every field of a day's measuring. */
export const MEASURED_PATH = `${BESIDE}measured/`;
/** The path of the revision that was tried in a trial. */
export const TRIED_PATH = `${BESIDE}revision`;
const DAY_SHAPE = { within: ['tape'], lists: {}, together: [] };

/** Takes a record apart into fields. The identifier is no field: it never changes. */
export function leavesOfContent(kind: RecordKind, content: RecordContent): Map<string, string> {
  const leaves = content.document === null ? new Map() : leavesOf(content.document, RECORD_SHAPES[kind]);
  leaves.delete('id');
  const beside = (name: string, value: unknown) => leaves.set(BESIDE + name, JSON.stringify(value));
  if (content.archived) beside('archived', true);
  if (content.joinedInto) beside('joined', content.joinedInto);
  if (content.revisionId !== undefined) leaves.set(TRIED_PATH, JSON.stringify(content.revisionId));
  if (content.athleteId !== undefined) beside('athlete', content.athleteId);
  for (const { takenOn, ...taken } of content.measured ?? []) {
    for (const [path, value] of leavesOf(taken, DAY_SHAPE)) {
      if (value !== 'null') leaves.set(`${MEASURED_PATH}${takenOn}/${path}`, value);
    }
  }
  return leaves;
}

/** The record that fields make; its document still has to be checked against its schema. */
export function contentOfLeaves(
  kind: RecordKind,
  leaves: Leaves,
): RecordContent & { document: object | null } {
  const own = new Map([...leaves].filter(([path]) => !path.startsWith(BESIDE)));
  const beside = (name: string): unknown => {
    const text = leaves.get(BESIDE + name);
    return text === undefined ? undefined : JSON.parse(text);
  };
  const revisionId = beside('revision');
  const athleteId = beside('athlete');
  return {
    document: own.size === 0 ? null : documentOf(own, RECORD_SHAPES[kind]),
    archived: beside('archived') === true,
    joinedInto: (beside('joined') as string | undefined) ?? null,
    measured: measuredOf(leaves),
    ...(revisionId === undefined ? {} : { revisionId: String(revisionId) }),
    ...(athleteId === undefined ? {} : { athleteId: athleteId as string | null }),
  };
}

function measuredOf(leaves: Leaves): DayMeasured[] {
  const days = new Map<string, Map<string, string>>();
  for (const [path, value] of leaves) {
    if (!path.startsWith(MEASURED_PATH)) continue;
    const [, day = '', ...rest] = path.split('/');
    days.set(day, (days.get(day) ?? new Map()).set(rest.join('/'), value));
  }
  return [...days]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([takenOn, taken]) => ({
      takenOn,
      statureM: null,
      massKg: null,
      tape: {},
      ...documentOf(taken, DAY_SHAPE),
    }));
}
