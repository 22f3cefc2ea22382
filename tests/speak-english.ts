import { speak } from '../app/language/spoken.ts';

// Every test reads the page in English; a test of another language speaks it itself.
await speak('en');
