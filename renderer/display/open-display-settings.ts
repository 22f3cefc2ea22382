import { call } from '../client/client.ts';
import { displaySettings } from './display-settings.ts';

/**
 * Reads how things are shown, and from then on keeps every choice, one after another. A program that cannot tell or
 * keep it changes nothing else: the choice then holds until the page is closed.
 */
export async function openDisplaySettings(): Promise<void> {
  const kept = await call('display.read', {});
  if (kept.ok) displaySettings.setState(kept.value);
  let last: Promise<unknown> = Promise.resolve();
  displaySettings.subscribe((settings) => {
    last = last.then(() => call('display.keep', settings));
  });
}
