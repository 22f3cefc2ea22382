import * as electron from 'electron';
import { startDesktop } from './desktop.ts';
import { reportToLauncher } from './launcher-report.ts';

// Not awaited at the top level: Electron becomes ready only after this module has been run to its end. Never rejects.
void startDesktop(electron, process.argv, reportToLauncher);
