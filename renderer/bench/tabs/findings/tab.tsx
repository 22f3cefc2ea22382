import { useFit } from '../../bench-context.tsx';
import type { BenchTab } from '../../bench-tab.ts';
import { Notes } from './notes.tsx';

/** How many findings of this seat and of the boat want something done. */
function Count() {
  const toDo = useFit(
    ({ report, seat }) =>
      report.findings.filter((f) => f.severity !== 'good' && (f.seat === null || f.seat === seat)).length,
  );
  return toDo > 0 ? <span className="count">{toDo}</span> : null;
}

export const tab: BenchTab = { id: 'notes', order: 1, title: 'notes.title', Panel: Notes, Count };
