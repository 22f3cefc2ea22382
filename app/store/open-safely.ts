import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { listBackups } from './backup-list.ts';
import { type Healing, heal } from './heal.ts';
import { bringPutAwayBack, dropPutAway, readJournal } from './journal-file.ts';
import { keepManifest } from './keep-manifest.ts';
import { type Manifest, readManifest } from './manifest.ts';
import { closeStore, isChecked, openStore, STORE_FILE, type StoreRefusal } from './open-store.ts';
import { type DamageCause, type Rebuilding, rebuildStore, type StoreFacts } from './rebuild.ts';
import { positionOf } from './safeguard.ts';
import type { Store } from './store.ts';

/** What was found out about a store and what lies beside it, when it was opened. */
export interface Findings {
  /** The store could not be opened as it was, and was put together again. */
  readonly rebuilding: Rebuilding | null;
  /** The store opened, and something in it was put right. */
  readonly healing: Healing | null;
  /** The journal or the manifest was missing or damaged, and has been begun again. */
  readonly renewed: readonly ('journal' | 'manifest')[];
  /** Changes that were kept once and are nowhere to be found: at least so many. */
  readonly missing: number;
  /** Backups that the manifest names and that are gone or of another size. */
  readonly oddBackups: readonly string[];
}

export type SafeOpening =
  | {
      readonly kind: 'open';
      readonly store: Store;
      readonly copiedTo: string | null;
      readonly findings: Findings;
    }
  | { readonly kind: 'refused'; readonly refusal: StoreRefusal };

/**
 * Opens the store in `folder` and holds it against what is known of it beside it. Whatever damage shows is put right
 * as far as journal and backups reach, and told.
 */
export function openSafely(folder: string, clock: () => number = Date.now): SafeOpening {
  bringPutAwayBack(folder);
  const beside = lookBeside(folder);
  try {
    return openWith(folder, beside, clock);
  } finally {
    beside.known.journal?.close();
  }
}

/** Opens the store, given what was found beside it. */
function openWith(folder: string, beside: Beside, clock: () => number): SafeOpening {
  const gone = beside.expected ? missingOrEmpty(join(folder, STORE_FILE)) : null;
  if (gone) return rebuilt(folder, gone, { beside, clock });
  const check = isChecked(join(folder, STORE_FILE));
  const opening = openStore(folder, clock);
  if (opening.kind === 'refused') {
    const { code } = opening.refusal;
    const ours = code === 'damaged' || (code === 'foreign' && beside.expected);
    return ours ? rebuilt(folder, code, { beside, clock }) : opening;
  }
  const { store, copiedTo } = opening;
  const position = positionOf(store.db)!;
  const { journal, line } = beside.known;
  const swapped = line !== null && position.line !== line;
  const tooOld = !swapped && journal !== null && journal.from > position.n;
  // A file that had only been begun is not another store's: all that was kept was in the log that went with it.
  const cause =
    swapped && position.n > 0
      ? 'swapped'
      : swapped
        ? 'older'
        : tooOld || isBehind(beside, position.n)
          ? 'older'
          : null;
  if (cause) {
    closeStore(store);
    return rebuilt(folder, cause, { beside, clock });
  }
  const healing = heal(store, { journal, check });
  const upgraded = copiedTo !== null;
  const findings = {
    rebuilding: null,
    healing: healing.broughtBack + healing.restoredRows + healing.lostRows.length > 0 ? healing : null,
    renewed: upgraded || position.n === 0 ? [] : renewedOf(beside, position.n),
    missing: Math.max(0, beside.known.n - (positionOf(store.db)?.n ?? 0)),
    oddBackups: beside.oddBackups,
  };
  keepManifest(store);
  return { kind: 'open', store, copiedTo, findings };
}

interface Beside {
  readonly known: StoreFacts;
  readonly manifest: Manifest | 'damaged' | null;
  readonly journalState: 'sound' | 'damaged' | 'none';
  /** Whether a store belongs here. */
  readonly expected: boolean;
  readonly oddBackups: readonly string[];
}

function lookBeside(folder: string): Beside {
  const manifest = readManifest(folder);
  const read = readJournal(folder);
  const journal = read === 'headless' ? null : read;
  const sound = manifest === 'damaged' ? null : manifest;
  const line = journal?.line ?? sound?.line ?? null;
  const n = Math.max(journal?.changes.at(-1)?.n ?? journal?.from ?? 0, sound?.n ?? 0);
  const damaged = read === 'headless' || (journal !== null && journal.damagedLines > 0);
  const backups = listBackups(folder);
  return {
    known: { line, n, journal },
    manifest,
    journalState: damaged ? 'damaged' : journal ? 'sound' : 'none',
    expected: n > 0 || backups.length > 0,
    oddBackups: (sound?.backups ?? [])
      .filter(({ name, bytes }) => !backups.some((one) => one.name === name && one.bytes === bytes))
      .map(({ name }) => name),
  };
}

function missingOrEmpty(file: string): DamageCause | null {
  if (!existsSync(file)) return 'missing';
  return statSync(file).size === 0 ? 'empty' : null;
}

/** The file is older than it was known to be, and the journal does not bridge that. */
function isBehind({ known }: Beside, n: number): boolean {
  if (known.n <= n) return false;
  const { journal } = known;
  return journal === null || (journal.changes.at(-1)?.n ?? journal.from) < known.n;
}

function renewedOf({ manifest, journalState, known }: Beside, n: number): ('journal' | 'manifest')[] {
  const behind = known.journal !== null && (known.journal.changes.at(-1)?.n ?? known.journal.from) < n;
  return [
    ...(journalState !== 'sound' || behind ? (['journal'] as const) : []),
    ...(manifest === null || manifest === 'damaged' ? (['manifest'] as const) : []),
  ];
}

function rebuilt(
  folder: string,
  cause: DamageCause,
  { beside, clock }: { beside: Beside; clock: () => number },
): SafeOpening {
  const made = rebuildStore(folder, { cause, known: beside.known, clock });
  if (made.kind === 'refused') return made;
  const { store, rebuilding } = made;
  dropPutAway(folder);
  keepManifest(store);
  const missing = Math.max(0, beside.known.n - (positionOf(store.db)?.n ?? 0));
  const findings = { rebuilding, healing: null, renewed: [], missing, oddBackups: beside.oddBackups };
  return { kind: 'open', store, copiedTo: null, findings };
}
