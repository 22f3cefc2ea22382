import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { programFolder } from '../shell/installed.ts';
import { isProgramBuilt } from './build-parts.ts';

// The built program begins here. It loads from a few files in half the time that its sources take. Where those are newer they are
// run instead, and build it anew.
const root = programFolder(import.meta.dirname);
if (isProgramBuilt(root)) await import('./open-workbench.ts');
else await import(/* @vite-ignore */ pathToFileURL(join(root, 'app/launch/open-workbench.ts')).href);
