import { useMemo } from 'react';
import type { RevisionSummary } from '../../../../app/contract/records.ts';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { DataTable } from '../../../ui/table/data-table.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';
import { differencesOf, otherChanges } from './differences.ts';

/** The table of differences between a compared revision and what is drawn. */
export function DifferencesTable({ revision, older }: { revision: RevisionSummary; older: Fit }) {
  const { evaluator } = useDocument();
  const format = useFormat();
  const fit = useFit((state) => state.fit);
  const report = useFit((state) => state.report);
  const seat = useFit((state) => state.seat);
  const olderReport = useMemo(() => evaluator.evaluate(older), [evaluator, older]);
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
        <DataTable
          rows={differences}
          rowKey={({ what }) => what}
          columns={[
            { title: say('transfer.what'), isName: true, cell: ({ what }) => what },
            {
              title: say('revisions.number', { number }),
              numeric: true,
              cell: ({ older: was }) => was,
            },
            { title: say('revisions.differences.now'), numeric: true, cell: ({ now }) => now },
            { title: say('photograph.table.difference'), numeric: true, cell: ({ change }) => change },
          ]}
        />
      )}
    </div>
  );
}
