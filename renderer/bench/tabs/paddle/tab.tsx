import type { BenchTab } from '../../bench-tab.ts';
import { PaddleTab } from './paddle-tab.tsx';

export const tab: BenchTab = { id: 'paddle', order: 3, title: 'kind.paddle', Panel: PaddleTab };
