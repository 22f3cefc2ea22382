import type { BenchTab } from '../../bench-tab.ts';
import { TrialsTab } from './trials-tab.tsx';

export const tab: BenchTab = { id: 'trials', order: 7, title: 'archive.counts.trials', Panel: TrialsTab };
