import type { BenchTab } from '../../bench-tab.ts';
import { GrowthTab } from './growth-tab.tsx';

export const tab: BenchTab = {
  id: 'growth',
  order: 6,
  title: 'growth.title',
  Panel: GrowthTab,
  isOffered: ({ grown }) => grown.length > 0,
};
