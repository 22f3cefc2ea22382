import { errorCode } from '../shell/error-code.ts';
import { addErased, erasedButHere, listErased } from '../store/erased-people.ts';
import { forgetRecords } from '../store/forget-records.ts';
import { atomically, type Store } from '../store/store.ts';
import { storeId } from '../store/store-identity.ts';
import type { Library } from './address.ts';
import { pull, pullHeld, pullPhotos, type Taking } from './pull.ts';
import { push } from './push.ts';
import { findTakenAway, fitsWith } from './taken-away.ts';
import { transaction } from './transaction.ts';

/** Who calls, as the library knows them. */
export interface Caller {
  readonly club: string;
  readonly person: string;
  readonly role: string;
  /** Kinds of records that they may send. */
  readonly writes: readonly string[];
  /** Which library this is: one that was restored from a backup is another. An older library does not say it. */
  readonly library?: string;
}

/** What one call brought and took. */
export interface LibraryContact extends Caller {
  readonly fetched: number;
  readonly sent: number;
  /** Athletes whom this person may no longer see, and who are here yet: changes of theirs could not be sent. */
  readonly kept: readonly string[];
}

/** What a call needs of the program around it. */
export interface Calling extends Taking {
  /** Erases whoever was erased elsewhere and is here, with every copy. */
  eraseErased(): Promise<void>;
  /** Takes an athlete out of this computer, copies and journal too; no tombstone, and nothing of it travels. */
  takeAway(athlete: { id: string; name: string }): Promise<void>;
}

/** The library refused a person who was erased meanwhile. */
const ERASED = 'KW002';
/** The caller may not erase that person. */
const MAY_NOT_ERASE = 'KW003';
const MOST_ROUNDS = 4;

/** Says who calls, and that they have called. Null: this login belongs to nobody any more. */
export async function callIn(sql: Library, store: Store): Promise<Caller | null> {
  const [caller] = await sql<Caller[]>`SELECT * FROM call_in(${storeId(store)})`;
  return caller ?? null;
}

/**
 * One call: whoever was erased goes first, then everything new is fetched, then sent, then what sending brought together is
 * fetched. Cut off anywhere, the next call goes on where this one ended.
 */
export async function contactLibrary(
  sql: Library,
  store: Store,
  calling: Calling,
): Promise<LibraryContact | null> {
  const caller = await callIn(sql, store);
  if (!caller) return null;
  const { library } = caller;
  if (library) calling.state.belongTo(library);
  let [fetched, sent] = [0, 0];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    await takeTombstones(sql, store, calling);
    fetched += await pull(sql, store, calling);
    await sendTombstones(sql, store);
    try {
      const { refs } = await findTakenAway(sql, store, { ...calling, writes: caller.writes });
      const went = await push(sql, store, { state: calling.state, writes: caller.writes, not: refs });
      sent += went;
      if (went === 0) break;
    } catch (error) {
      if (errorCode(error) !== ERASED) throw error;
    }
  }
  const kept = await giveBack(sql, store, { calling, writes: caller.writes });
  await pullHeld(sql, store, calling);
  fetched += await pullPhotos(sql, store, calling);
  return { ...caller, fetched, sent, kept };
}

/**
 * Removes athletes whom this person may no longer see; crews in which they knelt are fetched again, with an empty seat. Gives
 * those who stay.
 */
async function giveBack(
  sql: Library,
  store: Store,
  { calling, writes }: { calling: Calling; writes: readonly string[] },
): Promise<readonly string[]> {
  const { state } = calling;
  const { go, stay, refs } = await findTakenAway(sql, store, { ...calling, writes });
  const unseen = new Set(refs.map(({ id }) => id));
  for (const athlete of go) {
    const crews = fitsWith(store, athlete.id).filter((id) => !unseen.has(id));
    await calling.takeAway(athlete);
    const sent = crews.filter((id) => !state.waiting(writes).refs.has(`fit ${id}`));
    const records = sent.map((id) => ({ kind: 'fit', id }) as const);
    await calling.write(() => {
      for (const _ of forgetRecords(store, records));
    });
    for (const ref of records) {
      state.went(ref);
      state.want(ref);
    }
  }
  // What went with them, of this person's or in their fits.
  for (const ref of refs) if (!state.shared(ref.kind).includes(ref.id)) state.went(ref);
  return stay;
}

/** Erases here whoever was erased elsewhere, then reports that to the library. */
async function takeTombstones(sql: Library, store: Store, calling: Calling): Promise<void> {
  const stones = await sql<{ salt: string; digest: string }[]>`SELECT salt, digest FROM tombstones`;
  if (stones.length === 0) return;
  const known = new Set(listErased(store.db).map(({ digest }) => digest));
  const news = stones.filter(({ digest }) => !known.has(digest));
  if (news.length > 0) {
    await calling.write(() =>
      atomically(store, () => {
        for (const stone of news) addErased(store.db, stone);
      }),
    );
  }
  if (erasedButHere(store.db).length > 0) await calling.eraseErased();
  await sql`INSERT INTO tombstones_seen (login, salt, digest)
    SELECT session_user, salt, digest FROM tombstones ON CONFLICT DO NOTHING`;
}

async function sendTombstones(sql: Library, store: Store): Promise<void> {
  const here = listErased(store.db);
  if (here.length === 0) return;
  const there = await sql<{ digest: string }[]>`SELECT digest FROM tombstones`;
  const known = new Set(there.map(({ digest }) => digest));
  for (const { salt, digest } of here.filter((one) => !known.has(one.digest))) {
    try {
      await transaction(sql, async (tx) => {
        await tx`SELECT pg_advisory_xact_lock(hashtext('kneelwright changes'))`;
        await tx`SELECT erase(${salt}, ${digest})`;
        await tx`INSERT INTO tombstones_seen (login, salt, digest) VALUES (session_user, ${salt}, ${digest}) ON CONFLICT DO NOTHING`;
        await tx`SELECT pg_notify('kneelwright', 'changed')`;
      });
    } catch (error) {
      if (errorCode(error) !== MAY_NOT_ERASE) throw error;
    }
  }
}
