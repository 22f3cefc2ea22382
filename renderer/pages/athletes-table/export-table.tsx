import { athletesToTable } from '../../../core/roster/athletes-to-table.ts';
import type { AllAthletes } from '../../client/use-record.ts';
import { useTableExport } from '../../client/use-table-export.ts';
import { today } from '../../language/dates.ts';
import { say, words } from '../../language/messages.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';

/** Exports the athletes as a CSV file. */
export function ExportTable({ everybody }: { everybody: AllAthletes }) {
  const { inUse, aside, error } = everybody;
  const { exportTable, refusal, told } = useTableExport();
  const give = (records: typeof inUse) =>
    exportTable(
      say('table.out.file', { day: today() }),
      athletesToTable(
        records.map(({ id, athlete }) => ({ ...athlete, id })),
        words(),
      ),
    );
  return (
    <section>
      <h2>{say('archive.out')}</h2>
      <p className="soft">{say('table.out.about')}</p>
      {inUse.length + aside.length === 0 && <p>{say('table.out.none')}</p>}
      <p className="row">
        <button type="button" className="button" disabled={inUse.length === 0} onClick={() => give(inUse)}>
          {say('table.out.do')}
        </button>
        {aside.length > 0 && (
          <button type="button" className="button" onClick={() => give([...inUse, ...aside])}>
            {say('table.out.all')}
          </button>
        )}
      </p>
      {(refusal ?? error) && <ErrorMessage error={(refusal ?? error)!} />}
      <p role="status">{told}</p>
    </section>
  );
}
