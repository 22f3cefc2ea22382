import type { BenchTab } from '../../bench-tab.ts';
import { Revisions } from './revisions.tsx';

export const tab: BenchTab = {
  id: 'revisions',
  order: 8,
  title: 'archive.counts.revisions',
  Panel: Revisions,
};
