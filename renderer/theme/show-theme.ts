import { displaySettings } from '../display/display-settings.ts';

const DARK = '(prefers-color-scheme: dark)';
const PRINT = 'print';

/**
 * Writes the current theme onto the page, and updates it when the choice or the computer's own theme changes.
 * Paper out of the printer is always light.
 */
export function showTheme(): void {
  const system = matchMedia(DARK);
  const print = matchMedia(PRINT);
  const show = () => {
    const { theme } = displaySettings.getState();
    const dark = theme === 'system' ? system.matches : theme === 'dark';
    document.documentElement.dataset.theme = dark && !print.matches ? 'dark' : 'light';
  };
  displaySettings.subscribe(show);
  system.addEventListener('change', show);
  print.addEventListener('change', show);
  show();
}
