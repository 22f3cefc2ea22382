import { speak } from '../renderer/language/messages.ts';

// Every test reads the page in English; a test of another language speaks it itself.
await speak('en');
