import type { MenuCommand } from '../contract/bridge.ts';

/** Passes menu commands on to the page, and holds back those that come before the page listens. */
export interface MenuRelay {
  heard(command: MenuCommand): void;
  /** Gives the listener what has been held back, then all that comes; gives back a function that stops it. */
  listen(listener: (command: MenuCommand) => void): () => void;
}

export function createMenuRelay(): MenuRelay {
  const listeners = new Set<(command: MenuCommand) => void>();
  let waiting: MenuCommand[] = [];
  return {
    heard(command) {
      if (listeners.size === 0) waiting.push(command);
      for (const listener of listeners) listener(command);
    },
    listen(listener) {
      listeners.add(listener);
      const held = waiting;
      waiting = [];
      for (const command of held) listener(command);
      return () => listeners.delete(listener);
    },
  };
}
