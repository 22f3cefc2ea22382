import { createRoot } from 'react-dom/client';
import './theme/fonts.css';
import './theme/ink-and-paper.css';
import './theme/sheet.css';
import './theme/controls.css';
import './theme/pages.css';
import './theme/bench.css';
import './theme/drawing.css';
import './theme/crew.css';
import './theme/crew-sheet.css';
import './theme/hull.css';
import './theme/stroke.css';
import { openDisplaySettings } from './display/open-display-settings.ts';
import { Sheet } from './page-parts/sheet.tsx';
import { showTheme } from './theme/show-theme.ts';

showTheme();
await openDisplaySettings();
createRoot(document.getElementById('sheet')!).render(<Sheet />);
