import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { packedBytes } from '../../app/bundle/packed.ts';
import { bundleItems } from '../../app/bundle/read-bundle.ts';
import { bundleSteps } from '../../app/bundle/write-bundle.ts';
import { mergeIn } from '../../app/store/merge.ts';
import { closeStore, openStore } from '../../app/store/open-store.ts';
import type { Store } from '../../app/store/store.ts';
import { timesOf } from './measure.ts';
import { type Fact, type Found, rowOf } from './row.ts';

const ROUNDS = 3;
const MB = 1e6;

/** A whole store written into a bundle and taken into a new, empty store: per MB of the JSON within. */
export function bundleBench(store: Store): Found {
  const writing: number[] = [];
  const reading: number[] = [];
  let packed = new Uint8Array();
  for (let round = 0; round < ROUNDS; round++) {
    writing.push(timeOf(() => (packed = written(store))));
    reading.push(takenIn(packed));
  }
  const within = Object.values(unzipSync(packed)).reduce((sum, { length }) => sum + length, 0) / MB;
  const per = (ms: readonly number[]) => timesOf(ms.map((each) => each / within));
  const fact = (name: string, value: number): Fact => ({ group: 'store', name, value, unit: 'MB' });
  return {
    rows: [
      rowOf('store', 'bundle: export, per MB', { times: per(writing) }),
      rowOf('store', 'bundle: import into an empty store, per MB', { times: per(reading) }),
    ],
    facts: [fact('the bundle’s JSON', within), fact('the bundle, packed', packed.length / MB)],
  };
}

function written(store: Store): Uint8Array<ArrayBuffer> {
  const steps = bundleSteps(store, '0.0.0');
  for (;;) {
    const step = steps.next();
    if (step.done) return new Uint8Array(step.value);
  }
}

/** Milliseconds that a new store takes to take a bundle in, to the disk. */
function takenIn(packed: Uint8Array): number {
  const folder = mkdtempSync(join(tmpdir(), 'kneelwright-bench-'));
  try {
    const opened = openStore(folder);
    if (opened.kind !== 'open') throw new Error(`the new store did not open: ${opened.kind}`);
    const took = timeOf(() => mergeIn(opened.store, bundleItems(packedBytes(packed))));
    closeStore(opened.store);
    return took;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function timeOf(run: () => unknown): number {
  const began = performance.now();
  run();
  return performance.now() - began;
}
