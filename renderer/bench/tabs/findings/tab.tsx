import { useFit } from '../../bench-context.tsx';
import type { BenchTab } from '../../bench-tab.ts';
import { findingGroups } from './finding-groups.ts';
import { Notes } from './notes.tsx';

/** How many findings of this seat and of the boat are to be acted on. Its room stays when there are none: tabs keep their places. */
function Count() {
  const toAct = useFit(({ report, seat }) => findingGroups(report.findings, seat).act.length);
  return <span className="count">{toAct > 0 && toAct}</span>;
}

export const tab: BenchTab = { id: 'notes', order: 1, title: 'notes.title', Panel: Notes, Count };
