import { Find } from '../find/find.tsx';
import { say } from '../language/messages.ts';
import { hrefOf, type Route } from '../route/route.ts';
import { MakerMark } from '../ui/maker-mark.tsx';
import { PAGE_TOOLS_ID } from '../ui/page-tools.ts';
import { DisplayChoices } from './display-choices.tsx';

const PAGES = [
  { to: { page: 'fits' }, name: 'sheet.fits' },
  { to: { page: 'athletes' }, name: 'sheet.athletes' },
  { to: { page: 'boats' }, name: 'sheet.boats' },
  { to: { page: 'paddles' }, name: 'paddles.title' },
  { to: { page: 'archive' }, name: 'archive.title' },
  { to: { page: 'help' }, name: 'sheet.help' },
] as const satisfies readonly { to: Route; name: string }[];

/** The strip along the head of the sheet. */
export function SheetHead({ route }: { route: Route }) {
  return (
    <header className="sheet-head">
      <a className="sheet-name" href={hrefOf({ page: 'home' })}>
        <MakerMark />
        {say('sheet.name')}
      </a>
      <nav className="sheet-pages" aria-label={say('sheet.pages')}>
        {PAGES.map(({ to, name }) => {
          const address = hrefOf(to);
          const within = `${hrefOf(route)}/`.startsWith(`${address}/`);
          return (
            <a
              key={name}
              href={address}
              aria-current={route.page === to.page ? 'page' : within ? 'true' : undefined}
            >
              {say(name)}
            </a>
          );
        })}
      </nav>
      <div className="sheet-tools">
        <div className="sheet-tools" id={PAGE_TOOLS_ID} />
        <Find />
        <DisplayChoices />
      </div>
    </header>
  );
}
