import type { MergeCountsRecord } from '../../../app/contract/safekeeping.ts';
import { say, sayCount } from '../../language/messages.ts';

const KINDS = ['athletes', 'boats', 'paddles', 'fits', 'revisions', 'trials', 'photos'] as const;

/** What would become of everything that a file brings. */
export function MergeCounts({ counts }: { counts: MergeCountsRecord }) {
  return (
    <div className="stack">
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
            </tr>
          ))}
        </tbody>
      </table>
      {counts.draftsKeptAsRevisions > 0 && (
        <p>{sayCount('archive.counts.drafts', counts.draftsKeptAsRevisions)}</p>
      )}
    </div>
  );
}
