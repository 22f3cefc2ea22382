import { say } from '../language/messages.ts';
import { Reach } from '../reach/reach.tsx';
import { hrefOf, type Route } from '../route/route.ts';
import { DisplayChoices } from './display-choices.tsx';
import { MakerMark } from './maker-mark.tsx';

/** Where page tools (undo, save) are put by the page that has them. */
export const SHEET_TOOLS_ID = 'sheet-tools';

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
        <div className="sheet-tools" id={SHEET_TOOLS_ID} />
        <Reach />
        <DisplayChoices />
      </div>
    </header>
  );
}
