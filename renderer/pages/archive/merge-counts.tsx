import type { MergeCountsRecord } from '../../../app/contract/safekeeping.ts';
import { say, sayCount } from '../../language/messages.ts';

const KINDS = ['athletes', 'boats', 'paddles', 'fits', 'revisions', 'trials', 'photos'] as const;

/** A file that holds nothing but what is here already: one's own export. */
export function bringsNothing(counts: MergeCountsRecord): boolean {
  const { refusedErased, erasedHere } = counts;
  const news = KINDS.map((kind) => counts[kind].added + counts[kind].updated + counts[kind].conflicts);
  return refusedErased + erasedHere === 0 && news.every((count) => count === 0);
}

/** What would become of everything that a file brings. */
export function MergeCounts({ counts }: { counts: MergeCountsRecord }) {
  const conflicts = KINDS.reduce((sum, kind) => sum + counts[kind].conflicts, 0);
  return (
    <div className="stack">
      {bringsNothing(counts) && <p>{say('archive.counts.nothing')}</p>}
      <table className="ruled">
        <thead>
          <tr>
            <th scope="col">{say('archive.counts.what')}</th>
            <th scope="col" className="numeric">
              {say('archive.counts.added')}
            </th>
            <th scope="col" className="numeric">
              {say('archive.counts.updated')}
            </th>
            <th scope="col" className="numeric">
              {say('archive.counts.same')}
            </th>
            <th scope="col" className="numeric">
              {say('archive.counts.newer')}
            </th>
            <th scope="col" className="numeric">
              {say('archive.counts.conflicts')}
            </th>
          </tr>
        </thead>
        <tbody>
          {KINDS.map((kind) => (
            <tr key={kind}>
              <th scope="row">{say(`archive.counts.${kind}`)}</th>
              <td className="numeric">{counts[kind].added}</td>
              <td className="numeric">{counts[kind].updated}</td>
              <td className="numeric">{counts[kind].same}</td>
              <td className="numeric">{counts[kind].keptNewer}</td>
              <td className="numeric">{counts[kind].conflicts}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {conflicts > 0 && <p>{sayCount('archive.counts.to-decide', conflicts)}</p>}
      {counts.refusedErased > 0 && <p>{sayCount('archive.counts.refused', counts.refusedErased)}</p>}
      {counts.erasedHere > 0 && <p>{sayCount('archive.counts.erased', counts.erasedHere)}</p>}
    </div>
  );
}
