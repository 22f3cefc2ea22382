import { useEffect } from 'react';
import type { MenuCommand } from '../../app/contract/bridge.ts';
import { go } from '../route/route.ts';

const COMMAND_EVENT = 'kneelwright-command';

/** Hears a command of the native menu or of a key, wherever it came from. Returns a function that stops it. */
export function onCommand(listener: (command: MenuCommand) => void): () => void {
  const heard = (event: Event) => listener((event as CustomEvent<MenuCommand>).detail);
  window.addEventListener(COMMAND_EVENT, heard);
  return () => window.removeEventListener(COMMAND_EVENT, heard);
}

/** Gives a command, as the native menu does. */
export function sendCommand(command: MenuCommand): void {
  window.dispatchEvent(new CustomEvent(COMMAND_EVENT, { detail: command }));
}

/** The command that a key press means; null for most. A text being typed keeps its own undo. */
export function commandOfKey(event: KeyboardEvent): MenuCommand | null {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return null;
  const key = event.key.toLowerCase();
  if (key === 's' && !event.shiftKey) return 'save-revision';
  if (isBeingTyped(event.target)) return null;
  if (key === 'z') return event.shiftKey ? 'redo' : 'undo';
  return key === 'y' && !event.shiftKey ? 'redo' : null;
}

/** Inputs that are no text. */
const NO_TEXT = ['checkbox', 'radio', 'range', 'file'];

/** Whether the key goes to a text with changes of its own. A measure that shows its value unchanged has none. */
function isBeingTyped(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement) return true;
  if (!(target instanceof HTMLInputElement) || NO_TEXT.includes(target.type)) return false;
  return target.getAttribute('aria-valuetext') !== target.value;
}

/** Turns keys and the native menu into commands, and carries out those that belong to no page. */
export function MenuCommands() {
  useEffect(() => {
    const stopMenu = window.kneelwright?.onMenu(sendCommand);
    const onKey = (event: KeyboardEvent) => {
      const command = commandOfKey(event);
      if (!command) return;
      event.preventDefault();
      sendCommand(command);
    };
    const stopCommands = onCommand((command) => {
      if (command === 'new-fit') go({ page: 'new-fit' });
      if (command === 'open-roster') go({ page: 'athletes' });
      if (command === 'export-everything' || command === 'import-bundle') go({ page: 'archive' });
      if (command === 'show-help') go({ page: 'help' });
      if (command === 'print') window.print();
    });
    window.addEventListener('keydown', onKey);
    return () => {
      stopMenu?.();
      stopCommands();
      window.removeEventListener('keydown', onKey);
    };
  }, []);
  return null;
}
