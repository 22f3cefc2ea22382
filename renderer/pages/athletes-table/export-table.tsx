import { athletesToTable } from '../../../core/roster/athletes-to-table.ts';
import type { AllAthletes } from '../../client/use-record.ts';
import { useTableExport } from '../../client/use-table-export.ts';
import { today } from '../../language/dates.ts';
import { say, words } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';

/** Exports the athletes as a CSV file. */
export function ExportTable({ everybody }: { everybody: AllAthletes }) {
  const { inUse, aside, ready, error } = everybody;
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
      {ready && inUse.length + aside.length === 0 && <p>{say('table.out.none')}</p>}
      <p className="row">
        <Button disabled={inUse.length === 0} onClick={() => give(inUse)}>
          {say('table.out.do')}
        </Button>
        {aside.length > 0 && (
          <Button onClick={() => give([...inUse, ...aside])}>{say('table.out.all')}</Button>
        )}
      </p>
      {(refusal ?? error) && <ErrorMessage error={(refusal ?? error)!} />}
      <p role="status">{told}</p>
    </section>
  );
}
