import type { LibraryAddress } from '../../app/library/address.ts';
import { closeStore, openStore } from '../../app/store/open-store.ts';
import { callOnce } from './library-laptop.ts';

/** One call of a laptop in a process of its own: `library-child.ts FOLDER ADDRESS`. */
const [folder, address] = process.argv.slice(2) as [string, string];
const opening = openStore(folder);
if (opening.kind === 'refused') throw new Error(opening.refusal.code);
console.log('open');
await callOnce(opening.store, JSON.parse(address) as LibraryAddress);
closeStore(opening.store);
