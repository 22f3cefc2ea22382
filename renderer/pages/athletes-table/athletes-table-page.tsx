import { useAllAthletes } from '../../client/use-record.ts';
import { say } from '../../language/messages.ts';
import { Page } from '../../ui/page.tsx';
import { ExportTable } from './export-table.tsx';
import { ImportTable } from './import-table.tsx';

/** Athletes as a table: exported as CSV, imported row by row. */
export function AthletesTablePage() {
  const everybody = useAllAthletes();
  return (
    <Page title={say('table.title')} wide>
      <div className="entries">
        <ExportTable everybody={everybody} />
        <ImportTable everybody={everybody} />
      </div>
    </Page>
  );
}
