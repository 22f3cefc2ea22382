import { useEverybody } from '../../client/use-record.ts';
import { say } from '../../language/messages.ts';
import { Page } from '../../ui/page.tsx';
import { HandOut } from './hand-out.tsx';
import { TakeIn } from './take-in.tsx';

/** Athletes as a table: handed out as CSV, taken in row by row. */
export function AthletesTablePage() {
  const everybody = useEverybody();
  return (
    <Page title={say('table.title')} wide>
      <div className="entries">
        <HandOut everybody={everybody} />
        <TakeIn everybody={everybody} />
      </div>
    </Page>
  );
}
