import type { BenchTab } from '../../bench-tab.ts';
import { TrialsTab } from './trials-tab.tsx';

export const tab: BenchTab = { id: 'trials', order: 7, title: 'trials.title', Panel: TrialsTab };
