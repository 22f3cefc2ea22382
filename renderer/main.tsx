import { I18nProvider } from 'react-aria-components';
import { createRoot } from 'react-dom/client';
import { chosenLanguage } from '../app/language/languages.ts';
import './theme/theme.css';
import { displaySettings } from './display/display-settings.ts';
import { openDisplaySettings } from './display/open-display-settings.ts';
import { speak } from './language/messages.ts';
import { routeOf } from './route/addresses.ts';
import { fetchFirstPage, Sheet } from './shell/sheet.tsx';
import { showTheme } from './theme/show-theme.ts';
import { forgetErasedEntries } from './ui/form/erased-entries.ts';

showTheme();
const fetched = fetchFirstPage(routeOf(window.location.hash));
await openDisplaySettings();
const language = chosenLanguage(displaySettings.getState().language, navigator.languages);
await Promise.all([speak(language), fetched]);
document.documentElement.lang = language;
void forgetErasedEntries();
createRoot(document.getElementById('sheet')!).render(
  <I18nProvider locale={language}>
    <Sheet />
  </I18nProvider>,
);
