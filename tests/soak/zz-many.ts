import { mergesAtRandom } from '/work/wt/merge/tests/soak/merges.ts';

const bad: unknown[] = [];
const tot = { edits: 0, exchanges: 0, lost: 0, shown: 0, unequal: 0 };
const t0 = performance.now();
for (let seed = 1; performance.now() - t0 < 150_000; seed++) {
  const r = mergesAtRandom({ stores: 2 + (seed % 6), edits: 240, seed });
  tot.edits += r.edits;
  tot.exchanges += r.exchanges;
  tot.lost += r.lostFields;
  tot.shown += r.conflictsShown;
  tot.unequal += r.unequalStores;
  if (r.lostFields || r.unequalStores) {
    bad.push([seed, r]);
    console.log(seed, JSON.stringify(r));
    if (bad.length > 3) break;
  }
}
console.log(JSON.stringify(tot), bad.length);
