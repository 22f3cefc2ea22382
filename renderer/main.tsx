import { createRoot } from 'react-dom/client';
import { languageFor } from '../language/languages.ts';
import './theme/theme.css';
import { openDisplaySettings } from './display/open-display-settings.ts';
import { speak } from './language/messages.ts';
import { Sheet } from './shell/sheet.tsx';
import { showTheme } from './theme/show-theme.ts';

showTheme();
await openDisplaySettings();
await speak(languageFor(navigator.languages));
createRoot(document.getElementById('sheet')!).render(<Sheet />);
