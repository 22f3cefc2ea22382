import type { BenchTab } from '../../bench-tab.ts';
import { StrokeTab } from './stroke-tab.tsx';

export const tab: BenchTab = { id: 'stroke', order: 4, title: 'stroke.title', Panel: StrokeTab };
