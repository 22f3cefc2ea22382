import { say } from '../../language/messages.ts';
import { TERMS } from '../../language/term.tsx';
import { hrefOf } from '../../route/route.ts';
import { CautionList } from '../../ui/caution-list.tsx';
import { Page } from '../../ui/page.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';

const STEPS = [
  'athlete',
  'boat',
  'bench',
  'notes',
  'proposal',
  'values',
  'paddle',
  'stroke',
  'under-way',
  'revisions',
  'trials',
] as const;
const KEYS = ['arrows', 'shift', 'control', 'alt', 'escape', 'undo', 'save', 'find', 'tab'] as const;

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
          <Steps texts={STEPS.map((step) => say(`help.step.${step}`))} />
        </section>
        <section>
          <h2>{say('help.keys')}</h2>
          <Explained
            rows={KEYS}
            name={(key) => say(`help.key.${key}`)}
            about={(key) => say(`help.key.${key}.do`)}
          />
        </section>
        <section>
          <h2>{say('term.title')}</h2>
          <Explained
            rows={TERMS}
            name={(term) => say(`term.${term}`)}
            about={(term) => say(`term.${term}.about`)}
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
          <Steps texts={LIBRARY_STEPS.map((step) => say(`help.club-library.${step}`))} />
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

/** What is done one after the other. */
function Steps({ texts }: { texts: readonly string[] }) {
  return (
    <ol className="help-steps">
      {texts.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ol>
  );
}

/** Names and what each of them means. */
function Explained<T extends string>(props: {
  rows: readonly T[];
  name: (of: T) => string;
  about: (of: T) => string;
}) {
  return (
    <DataTable
      hasHead={false}
      rows={props.rows}
      rowKey={(of) => of}
      columns={[
        { title: '', id: 'name', isName: true, cell: props.name },
        { title: '', id: 'about', cell: props.about },
      ]}
    />
  );
}
