import type { BenchTab } from '../../bench/bench-tab.ts';

const found = import.meta.glob<BenchTab>('../../bench/tabs/*/tab.tsx', { eager: true, import: 'tab' });

/** Every tab of the margin, in order. A new folder in `bench/tabs` with a `tab.tsx` is one more. */
export const BENCH_TABS: readonly BenchTab[] = Object.values(found).toSorted((a, b) => a.order - b.order);
