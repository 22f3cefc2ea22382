import { displaySettings } from '../display/display-settings.ts';
import { say } from '../language/messages.ts';
import { go, type Route } from '../route/route.ts';
import { sendCommand } from '../ui/menu-commands.tsx';
import type { FindAction } from './offered-actions.ts';

const way = (
  id: 'recent' | 'fits' | 'athletes' | 'athletes-table' | 'boats' | 'paddles' | 'archive' | 'help' | 'hurts',
  route: Route,
): FindAction => ({
  id,
  name: say(`do.${id}`),
  run: () => go(route),
});

const make = (id: 'new-fit' | 'new-athlete' | 'new-boat', route: Route): FindAction => ({
  id,
  name: say(`do.${id}`),
  run: () => go(route),
});

/** What can be done from everywhere. */
export const usualActions = (): readonly FindAction[] => [
  make('new-fit', { page: 'new-fit' }),
  make('new-athlete', { page: 'athlete', id: 'new' }),
  make('new-boat', { page: 'boat', id: 'new' }),
  way('recent', { page: 'home' }),
  way('fits', { page: 'fits' }),
  { ...way('athletes', { page: 'athletes' }), words: say('do.athletes.words') },
  { ...way('athletes-table', { page: 'athletes-table' }), words: say('do.athletes-table.words') },
  { ...way('boats', { page: 'boats' }), words: say('do.boats.words') },
  way('paddles', { page: 'paddles' }),
  { ...way('archive', { page: 'archive' }), words: say('do.archive.words') },
  { ...way('help', { page: 'help' }), words: say('do.help.words') },
  { ...way('hurts', { page: 'help' }), words: say('do.hurts.words') },
  ...(['light', 'dark', 'system'] as const).map((theme) => ({
    id: `paper-${theme}`,
    name: say(`do.paper-${theme}`),
    words: say(`do.paper-${theme}.words`),
    run: () => displaySettings.setState({ theme }),
  })),
  ...(['cm', 'mm', 'in'] as const).map((length) => ({
    id: `length-${length}`,
    name: say(`do.length-${length}`),
    run: () => displaySettings.setState({ length }),
  })),
  ...(['kg', 'lb'] as const).map((mass) => ({
    id: `mass-${mass}`,
    name: say(`do.mass-${mass}`),
    run: () => displaySettings.setState({ mass }),
  })),
  { id: 'print', name: say('do.print'), run: () => sendCommand('print') },
];
