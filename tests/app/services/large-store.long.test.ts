import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { closeStore } from '../../../app/store/open-store.ts';
import { fill } from '../../bench/filled-store.ts';
import { cases } from '../../cases.ts';
import { filesWith } from '../store/marked-person.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';

const CHILD = join(import.meta.dirname, 'memory-child.ts');
/** Revisions of one athlete in the filled store. */
const OF_ONE = 50;
const MB = 1024 * 1024;
const SMALL = 10_000;
const LARGE = cases(10_000, 100_000);
/** A store ten times as large takes hardly more memory: keys and checksums of its rows, never their texts. */
const MOST_RATIO = 2;
/**
 * Each thread has so much memory for what it computes, however large the store: with more it would clear away what it no longer needs
 * later, and its size would say nothing. The C library gives back what is freed.
 */
const TIGHT = {
  NODE_OPTIONS: '--max-old-space-size=128 --max-semi-space-size=4',
  MALLOC_MMAP_THRESHOLD_: '131072',
  MALLOC_ARENA_MAX: '2',
};

/** Exports, previews an erasure and erases in a process of its own; gives its memory at most, bytes. */
function memoryWith(revisions: number): number {
  const store = temporaryStore(temporaryFolder());
  fill(store, { from: 0, to: revisions });
  const { name } = store.db.prepare<[], { name: string }>('SELECT name FROM athletes ORDER BY rowid').get()!;
  const { folder } = store;
  closeStore(store);
  const said = execFileSync(process.execPath, [CHILD, folder], {
    encoding: 'utf8',
    env: { ...process.env, ...TIGHT },
  });
  const { bytes, left } = JSON.parse(said.trim().split('\n').at(-1)!) as { bytes: number; left: number };
  expect(left).toBe(revisions - OF_ONE);
  expect(filesWith(folder, `"${name}"`)).toEqual([]);
  return bytes;
}

describe('a store of 100,000 revisions', () => {
  it('is exported, and somebody in it is looked up and erased, and its memory does not grow in proportion', () => {
    const [small, large] = [memoryWith(SMALL), memoryWith(LARGE)];
    console.log(`${SMALL} revisions ${Math.round(small / MB)} MB, ${LARGE} ${Math.round(large / MB)} MB`);
    expect(large / small).toBeLessThan(MOST_RATIO);
  });
});
