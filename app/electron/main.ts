import * as electron from 'electron';
import { runDesktop } from './desktop.ts';

// Not awaited at the top level: Electron becomes ready only after this module has been run to its end.
void runDesktop(electron, process.argv);
