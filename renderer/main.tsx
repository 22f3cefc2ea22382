import { I18nProvider } from 'react-aria-components';
import { createRoot } from 'react-dom/client';
import { chosenLanguage } from '../app/language/languages.ts';
import './theme/theme.css';
import { displaySettings } from './display/display-settings.ts';
import { openDisplaySettings } from './display/open-display-settings.ts';
import { speak } from './language/messages.ts';
import { Sheet } from './shell/sheet.tsx';
import { showTheme } from './theme/show-theme.ts';

showTheme();
await openDisplaySettings();
const language = chosenLanguage(displaySettings.getState().language, navigator.languages);
await speak(language);
document.documentElement.lang = language;
createRoot(document.getElementById('sheet')!).render(
  <I18nProvider locale={language}>
    <Sheet />
  </I18nProvider>,
);
