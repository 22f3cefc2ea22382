import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { Page } from '../../ui/page.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';

/** The parts of a fit's file, the outermost first. */
const PARTS = [
  'fit',
  'boat',
  'usual',
  'tape',
  'offsets',
  'seat',
  'athlete',
  'kneePad',
  'rearRest',
  'frontFoot',
  'paddle',
  'stroke',
  'water',
] as const;

/** What files the program reads and writes, and every field of a fit. */
export function FilesPage() {
  return (
    <Page
      title={say('help.files')}
      tools={
        <a className="button" href={hrefOf({ page: 'help' })}>
          {say('help.files.back')}
        </a>
      }
    >
      <div className="entries">
        <section>
          <p>{say('help.files.bundle')}</p>
          <p>{say('help.files.athletes')}</p>
          <p>{say('help.files.offsets')}</p>
        </section>
        <section>
          <h2>{say('help.files.one-fit')}</h2>
          <p>{say('help.files.evaluate')}</p>
          <p>{say('help.files.units')}</p>
          <p>{say('help.files.frame')}</p>
          <DataTable
            rows={PARTS}
            rowKey={(part) => part}
            columns={[
              { title: say('help.files.part'), isName: true, cell: (part) => say(`help.files.part.${part}`) },
              { title: say('help.files.fields'), cell: (part) => say(`help.files.fields.${part}`) },
            ]}
          />
        </section>
      </div>
    </Page>
  );
}
