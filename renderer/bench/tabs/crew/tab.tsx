import type { BenchTab } from '../../bench-tab.ts';
import { CrewTab } from './crew-tab.tsx';

export const tab: BenchTab = {
  id: 'crew',
  order: 5,
  title: 'crew.title',
  Panel: CrewTab,
  isOffered: ({ fit }) => fit.seats.length > 1,
};
