import { Name } from '../language/name.tsx';
import { usePageTitle } from './use-page-title.ts';

/** A page of text or entries: its title, what can be done with it, and its body. The drawing's page has its own. */
export function Page(props: {
  title: string;
  tools?: React.ReactNode;
  wide?: boolean;
  children: React.ReactNode;
}) {
  usePageTitle(props.title);
  return (
    <main className="sheet-body" id="content" tabIndex={-1}>
      <div className={props.wide ? 'page wide' : 'page'}>
        <div className="page-head">
          <h1>
            <Name text={props.title} />
          </h1>
          <div className="row">{props.tools}</div>
        </div>
        {props.children}
      </div>
    </main>
  );
}
