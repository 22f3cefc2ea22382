import { fitSchema } from '../../../core/document/fit-schema.ts';
import { schemaParts } from '../../../core/document/schema-parts.ts';
import { say, words } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { Page } from '../../ui/page.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';

const PARTS = schemaParts(fitSchema);

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
          <p>{say('table.in.about')}</p>
          <p>{say('boat.offsets.about')}</p>
        </section>
        <section>
          <h2>{say('help.files.one-fit')}</h2>
          <p>{say('help.files.evaluate')}</p>
          <p>{say('help.files.units')}</p>
          <p>{say('help.files.frame')}</p>
          <DataTable
            rows={PARTS}
            rowKey={(part) => part.path + part.fields.join()}
            columns={[
              { title: say('help.files.part'), isName: true, cell: ({ path }) => path || '{ }' },
              { title: say('help.files.fields'), cell: ({ fields }) => words().row(fields) },
            ]}
          />
        </section>
      </div>
    </Page>
  );
}
