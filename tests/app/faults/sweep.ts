import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createFit } from '../../../app/store/fits.ts';
import { closeStore, openStore, STORE_FILE } from '../../../app/store/open-store.ts';
import { saveRevision } from '../../../app/store/revisions.ts';
import { athletes } from '../../../app/store/roster.ts';
import { inventedAthlete, inventedFit } from '../invented.ts';
import { type Saved, wrongsIn } from './saves.ts';

/** What came of one place at which writing was made to fail. */
export interface FaultPoint {
  readonly at: string;
  /** Null when the program refused to start. */
  readonly saved: readonly Saved[] | null;
  readonly refusal: string | null;
  readonly wrongs: readonly string[];
}

/** How writing is made to fail: wraps the command that saves, for a data folder. */
export type Fault = (command: readonly string[], folder: string) => readonly string[];

/**
 * No process may write a file beyond `blocks` × 512 bytes (`ulimit -f`): each write that would reach past it fails with
 * an I/O error, whichever file it is for.
 */
export const fileSizeLimit =
  (blocks: number): Fault =>
  (command) => ['sh', '-c', `ulimit -f ${blocks}; exec "$@"`, 'sh', ...command];

/**
 * The data folder lies on a disk of `bytes` (a tmpfs in a mount namespace of its own), on which the system itself says
 * that there is no space left. What is on it is copied back before the disk goes.
 */
export const smallDisk =
  (bytes: number): Fault =>
  (command, folder) => {
    const script = [
      'mkdir "$0.disk" && mount -t tmpfs -o size=$1 tmpfs "$0.disk" && cp "$0"/* "$0.disk"/ || exit 99',
      'mount --bind "$0.disk" "$0.run"',
      'shift; "$@"; code=$?',
      'cp "$0.disk"/* "$0"/; exit $code',
    ].join('\n');
    const onDisk = command.map((part) => (part === folder ? `${folder}.run` : part));
    mkdirSync(`${folder}.run`, { recursive: true });
    return ['unshare', '-rm', 'sh', '-c', script, folder, String(bytes), ...onDisk];
  };

/** Whether a small disk can be made here at all. */
export function canMakeDisk(): boolean {
  const place = mkdtempSync(join(tmpdir(), 'kneelwright-disk-'));
  const tried = spawnSync('unshare', ['-rm', 'mount', '-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', place]);
  rmSync(place, { recursive: true });
  return tried.status === 0;
}

/** A store to be copied for each fault: one fit with a revision and a draft, one athlete. */
export interface Prepared {
  readonly root: string;
  readonly fitId: string;
  readonly athleteId: string;
}

export function prepare(root: string): Prepared {
  const opening = openStore(join(root, 'prepared'));
  if (opening.kind === 'refused') throw new Error(opening.refusal.code);
  const { store } = opening;
  const { id: fitId } = createFit(store, inventedFit());
  saveRevision(store, { fitId, fit: inventedFit(), name: 'before', reason: '' });
  const { id: athleteId } = athletes.save(store, inventedAthlete('Before'));
  closeStore(store);
  return { root, fitId, athleteId };
}

/** Saves under a fault in a process of its own, then looks at what is left without it. */
export function saveUnder(fault: Fault, at: string, { root, fitId, athleteId }: Prepared): FaultPoint {
  const folder = mkdtempSync(join(root, 'fault-'));
  copyFileSync(join(root, 'prepared', STORE_FILE), join(folder, STORE_FILE));
  const child = join(import.meta.dirname, 'saving-child.ts');
  const [file, ...args] = fault([process.execPath, child, folder, fitId, athleteId], folder);
  const ran = spawnSync(file!, args, { encoding: 'utf8' });
  const wrongs: string[] = [];
  let said: { saved?: Saved[]; refused?: string } = {};
  try {
    said = JSON.parse(ran.stdout);
  } catch {
    wrongs.push(`the program fell over (${ran.status ?? ran.signal}): ${ran.stderr.slice(0, 400)}`);
  }
  const opening = openStore(folder);
  if (opening.kind === 'refused') wrongs.push(`the store is refused: ${opening.refusal.code}`);
  else {
    wrongs.push(...wrongsIn(opening.store, said.saved ?? []));
    closeStore(opening.store);
  }
  rmSync(folder, { recursive: true, force: true });
  return { at, saved: said.saved ?? null, refusal: said.refused ?? null, wrongs };
}
