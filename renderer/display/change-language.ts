import { call } from '../client/client.ts';
import { type DisplaySettings, displaySettings } from './display-settings.ts';

/** Keeps the chosen language and loads the page again: every text is then said in it. */
export async function changeLanguage(language: DisplaySettings['language']): Promise<void> {
  if (language === displaySettings.getState().language) return;
  displaySettings.setState({ language });
  await call('display.keep', displaySettings.getState());
  window.location.reload();
}
