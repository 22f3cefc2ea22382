import { type LibraryAddress, openLibrary } from '../../app/library/address.ts';
import { type Calling, contactLibrary, type LibraryContact } from '../../app/library/contact.ts';
import { type LocalState, openLocalState } from '../../app/library/local-state.ts';
import { eraseErased, eraseEverywhere } from '../../app/store/erase-everywhere.ts';
import type { Store } from '../../app/store/store.ts';

/** What a call needs of a program, where there is none around the store. */
export function callingOf(store: Store, state: LocalState, more: Partial<Calling> = {}): Calling {
  return {
    state,
    isHeld: () => false,
    write: async (work) => work(),
    took() {},
    eraseErased: async () => {
      eraseErased(store);
    },
    takeAway: async (athlete) => {
      eraseEverywhere(store, { ...athlete, takenAway: true }, 'none');
    },
    ...more,
  };
}

/** One call of a laptop. Throws where it is cut off. */
export async function callOnce(
  store: Store,
  address: LibraryAddress,
  more: Partial<Calling> = {},
): Promise<LibraryContact | null> {
  const sql = openLibrary(address);
  const state = openLocalState(store);
  try {
    return await contactLibrary(sql, store, callingOf(store, state, more));
  } finally {
    state.close();
    await sql.end({ timeout: 0 });
  }
}
