import { say } from '../language/messages.ts';
import { Reach } from '../reach/reach.tsx';
import { hrefOf, type Route } from '../route/route.ts';
import { DisplayChoices } from './display-choices.tsx';
import { MakerMark } from './maker-mark.tsx';

/** Where page tools (undo, save) are put by the page that has them. */
export const SHEET_TOOLS_ID = 'sheet-tools';

const PAGES = [
  {
    route: { page: 'fits' },
    name: 'sheet.fits',
    within: ['fits', 'fit', 'crew-sheet', 'new-fit', 'set-out', 'show'],
  },
  {
    route: { page: 'athletes' },
    name: 'sheet.athletes',
    within: ['athletes', 'athlete', 'measure', 'athletes-table'],
  },
  { route: { page: 'boats' }, name: 'sheet.boats', within: ['boats', 'boat', 'hull'] },
  { route: { page: 'paddles' }, name: 'paddles.title', within: ['paddles'] },
  { route: { page: 'archive' }, name: 'archive.title', within: ['archive'] },
  { route: { page: 'help' }, name: 'sheet.help', within: ['help'] },
] as const satisfies readonly { route: Route; name: string; within: readonly Route['page'][] }[];

/** The strip along the head of the sheet. */
export function SheetHead({ route }: { route: Route }) {
  return (
    <header className="sheet-head">
      <a className="sheet-name" href={hrefOf({ page: 'home' })}>
        <MakerMark />
        {say('sheet.name')}
      </a>
      <nav className="sheet-pages" aria-label={say('sheet.pages')}>
        {PAGES.map(({ route: to, name, within }) => {
          const here = (within as readonly string[]).includes(route.page);
          const exact = route.page === to.page;
          return (
            <a key={name} href={hrefOf(to)} aria-current={exact ? 'page' : here ? 'true' : undefined}>
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
