import { useMemo } from 'react';
import type { RevisionSummary } from '../../../../app/contract/records.ts';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import { evaluateFit } from '../../../../core/evaluation/evaluator.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { useFit } from '../../bench-context.tsx';
import { differencesOf, otherChanges } from './differences.ts';

/** The table of differences between a compared revision and what is drawn. */
export function DifferencesTable({ revision, older }: { revision: RevisionSummary; older: Fit }) {
  const format = useFormat();
  const fit = useFit((state) => state.fit);
  const report = useFit((state) => state.report);
  const seat = useFit((state) => state.seat);
  const olderReport = useMemo(() => evaluateFit(older), [older]);
  const differences = differencesOf({ fit: older, report: olderReport }, { fit, report }, { seat, format });
  const { number } = revision;
  return (
    <div className="differences">
      <h3 className="lettering">{say('revisions.differences', { number })}</h3>
      {otherChanges(older, fit).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {differences.length === 0 ? (
        <p className="soft">{say('revisions.differences.none')}</p>
      ) : (
        <table className="ruled">
          <thead>
            <tr>
              <th scope="col">{say('revisions.differences.what')}</th>
              <th scope="col" className="numeric">
                {say('revisions.differences.then', { number })}
              </th>
              <th scope="col" className="numeric">
                {say('revisions.differences.now')}
              </th>
            </tr>
          </thead>
          <tbody>
            {differences.map(({ what, older: was, now }) => (
              <tr key={what}>
                <th scope="row">{what}</th>
                <td className="numeric">{was}</td>
                <td className="numeric">{now}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </div>
  );
}
