import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { CautionList } from '../../ui/caution-list.tsx';
import { Page } from '../../ui/page.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { TERMS } from '../../ui/term.tsx';

const STEPS = [
  'athlete',
  'boat',
  'bench',
  'notes',
  'proposal',
  'values',
  'stroke',
  'under-way',
  'revisions',
  'trials',
] as const;
const KEYS = ['arrows', 'shift', 'control', 'alt', 'escape', 'undo', 'save', 'reach', 'tab'] as const;

/** What a club's volunteer does for a library. */
const LIBRARY_STEPS = [1, 2, 3, 4, 5] as const;

/** How to use the bench, its keys, and the cautions. */
export function HelpPage() {
  return (
    <Page
      title={say('help.title')}
      tools={
        <a className="button" href={hrefOf({ page: 'home' })}>
          {say('help.back')}
        </a>
      }
    >
      <div className="entries">
        <section>
          <h2>{say('help.steps')}</h2>
          <ol className="help-steps">
            {STEPS.map((step) => (
              <li key={step}>{say(`help.step.${step}`)}</li>
            ))}
          </ol>
        </section>
        <section>
          <h2>{say('help.keys')}</h2>
          <DataTable
            hasHead={false}
            rows={KEYS}
            rowKey={(key) => key}
            columns={[
              { title: '', id: 'key', isName: true, cell: (key) => say(`help.key.${key}`) },
              { title: '', id: 'do', cell: (key) => say(`help.key.${key}.do`) },
            ]}
          />
        </section>
        <section>
          <h2>{say('term.title')}</h2>
          <DataTable
            hasHead={false}
            rows={TERMS}
            rowKey={(term) => term}
            columns={[
              { title: '', id: 'term', isName: true, cell: (term) => say(`term.${term}`) },
              { title: '', id: 'about', cell: (term) => say(`term.${term}.about`) },
            ]}
          />
        </section>
        <section>
          <h2>{say('help.private')}</h2>
          <p>{say('help.private.folder')}</p>
          <p>{say('help.private.disk')}</p>
          <p>{say('help.private.file')}</p>
          <p>{say('help.private.age')}</p>
        </section>
        <section>
          <h2>{say('help.club-library')}</h2>
          <ol className="help-steps">
            {LIBRARY_STEPS.map((step) => (
              <li key={step}>{say(`help.club-library.${step}`)}</li>
            ))}
          </ol>
        </section>
        <section>
          <p>
            <a href={hrefOf({ page: 'help-files' })}>{say('help.files')}</a>
          </p>
        </section>
        <section>
          <h2>{say('start.cautions')}</h2>
          <CautionList />
        </section>
      </div>
    </Page>
  );
}
