import type { BenchTab } from '../../bench-tab.ts';
import { UnderWayTab } from './under-way-tab.tsx';

export const tab: BenchTab = { id: 'under-way', order: 5, title: 'under-way.title', Panel: UnderWayTab };
