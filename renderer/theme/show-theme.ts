import { displaySettings } from '../display/display-settings.ts';

const DARK = '(prefers-color-scheme: dark)';

/** Writes the theme that holds now onto the page, and keeps it so when the choice or the computer's own theme changes. */
export function showTheme(): void {
  const system = matchMedia(DARK);
  const show = () => {
    const { theme } = displaySettings.getState();
    const dark = theme === 'system' ? system.matches : theme === 'dark';
    document.documentElement.dataset.theme = dark ? 'dark' : 'light';
  };
  displaySettings.subscribe(show);
  system.addEventListener('change', show);
  show();
}
