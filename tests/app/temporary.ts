import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import { openStore } from '../../app/store/open-store.ts';
import type { Store } from '../../app/store/store.ts';

const cleaning: (() => void)[] = [];

afterAll(() => {
  for (const clean of cleaning.splice(0).reverse()) clean();
});

/** A folder of its own for one test file; removed at its end. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'kneelwright-test-'));
  cleaning.push(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A clock that moves one second at each reading, so that every instant in a test is known. */
export function steppingClock(from = Date.UTC(2026, 2, 2, 9)): () => number {
  let at = from;
  return () => {
    at += 1000;
    return at;
  };
}

/** An open, empty store in a folder of its own; closed at the end. */
export function temporaryStore(folder = temporaryFolder(), clock = steppingClock()): Store {
  const opening = openStore(folder, clock);
  if (opening.kind === 'refused') throw new Error(`the store was refused: ${opening.refusal.code}`);
  cleaning.push(() => {
    opening.store.db.close();
    opening.store.lock.release();
  });
  return opening.store;
}

/** A private file with these bytes, as the server keeps what a page sends. */
export function temporaryFile(bytes: Uint8Array): string {
  const path = join(temporaryFolder(), 'file');
  writeFileSync(path, bytes);
  return path;
}
