import { displaySettings } from '../display/display-settings.ts';
import { type MessageKey, say } from '../language/messages.ts';
import { go, type Route } from '../route/route.ts';
import { sendCommand } from '../ui/menu-commands.tsx';
import type { FindAction } from './offered-actions.ts';

const pageAction = (id: string, name: MessageKey, route: Route): FindAction => ({
  id,
  name: say(name),
  run: () => go(route),
});

/** Actions that are always there. */
export const usualActions = (): readonly FindAction[] => [
  pageAction('new-fit', 'fits.new', { page: 'new-fit' }),
  pageAction('new-athlete', 'athletes.new', { page: 'athlete', id: 'new' }),
  pageAction('new-boat', 'boats.new', { page: 'boat', id: 'new' }),
  pageAction('recent', 'recent.title', { page: 'home' }),
  pageAction('fits', 'archive.counts.fits', { page: 'fits' }),
  {
    ...pageAction('athletes', 'archive.counts.athletes', { page: 'athletes' }),
    words: say('do.athletes.words'),
  },
  {
    ...pageAction('athletes-table', 'do.athletes-table', { page: 'athletes-table' }),
    words: say('do.athletes-table.words'),
  },
  { ...pageAction('boats', 'archive.counts.boats', { page: 'boats' }), words: say('do.boats.words') },
  pageAction('paddles', 'archive.counts.paddles', { page: 'paddles' }),
  { ...pageAction('archive', 'archive.title', { page: 'archive' }), words: say('do.archive.words') },
  { ...pageAction('help', 'help.title', { page: 'help' }), words: say('do.help.words') },
  { ...pageAction('hurts', 'do.hurts', { page: 'help' }), words: say('do.hurts.words') },
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
