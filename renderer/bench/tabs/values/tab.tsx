import type { BenchTab } from '../../bench-tab.ts';
import { Values } from './values.tsx';

export const tab: BenchTab = { id: 'values', order: 2, title: 'values.title', Panel: Values };
