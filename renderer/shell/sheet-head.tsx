import { useRef, useState } from 'react';
import { Find } from '../find/find.tsx';
import { say } from '../language/messages.ts';
import { hrefOf, type Route } from '../route/route.ts';
import { Button } from '../ui/button.tsx';
import { MakerMark } from '../ui/maker-mark.tsx';
import { PAGE_STEPS_ID, PAGE_TOOLS_ID } from '../ui/page-tools.ts';
import { DisplayChoices } from './display-choices.tsx';
import { useNarrowHead } from './use-narrow-head.ts';
import './sheet-head.css';

const MENU_ID = 'sheet-menu';

const PAGES = [
  { to: { page: 'fits' }, name: 'archive.counts.fits' },
  { to: { page: 'athletes' }, name: 'archive.counts.athletes' },
  { to: { page: 'boats' }, name: 'archive.counts.boats' },
  { to: { page: 'paddles' }, name: 'archive.counts.paddles' },
  { to: { page: 'archive' }, name: 'archive.title' },
  { to: { page: 'help' }, name: 'menu.help' },
] as const satisfies readonly { to: Route; name: string }[];

/** The head of the page; in a narrow window its links and tools are in one menu. */
export function SheetHead({ route }: { route: Route }) {
  // On another page it is closed: tools that a page brings are no part of this one, and say nothing of a click in them.
  const [openOn, setOpenOn] = useState<string | null>(null);
  const address = hrefOf(route);
  const open = openOn === address;
  const head = useRef<HTMLElement>(null);
  useNarrowHead(head);
  const close = () => setOpenOn(null);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: leaving it, and Escape in it, close its menu
    <header
      ref={head}
      className="sheet-head"
      onBlur={({ relatedTarget }) => {
        if (relatedTarget && !head.current?.contains(relatedTarget)) close();
      }}
      onKeyDown={({ key }) => {
        if (key === 'Escape') close();
      }}
    >
      <a className="sheet-name" href={hrefOf({ page: 'home' })}>
        <MakerMark />
        {say('sheet.name')}
      </a>
      <Button
        look="bare"
        className="sheet-menu-button"
        aria-expanded={open}
        aria-controls={MENU_ID}
        onClick={() => setOpenOn(open ? null : address)}
      >
        {say('sheet.menu')}
      </Button>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: what is chosen in it closes it, by key or by click */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: a key that activates a link or a button clicks it */}
      <div
        className="sheet-menu"
        id={MENU_ID}
        data-open={open || undefined}
        onClick={({ target }) => {
          if ((target as Element).closest('a, button')) close();
        }}
      >
        <Pages route={route} />
        <div className="sheet-tools">
          <div className="sheet-tools" id={PAGE_TOOLS_ID} />
          <Find />
          <DisplayChoices />
        </div>
      </div>
      <div className="sheet-tools head-steps" id={PAGE_STEPS_ID} />
    </header>
  );
}

function Pages({ route }: { route: Route }) {
  return (
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
  );
}
