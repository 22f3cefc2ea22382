import { pageAnswer, sentenceAnswer } from '../shell/answer.ts';
import type { BuiltFile } from '../shell/page-files.ts';
import { say } from '../shell/say.ts';
import { type ElectronApi, isOwnPage, PAGE_SCHEME } from './electron-api.ts';

/** Announces the page's scheme; must happen before Electron is ready. */
export function announceScheme({ protocol }: ElectronApi): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: PAGE_SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

/** Serves the built page, and nothing else, under the page's scheme. */
export function servePage({ protocol }: ElectronApi, page: ReadonlyMap<string, BuiltFile>): void {
  protocol.handle(PAGE_SCHEME, (request) => {
    const own = request.method === 'GET' && isOwnPage(request.url);
    const { status, headers, body } = own
      ? pageAnswer(page.get(new URL(request.url).pathname))
      : sentenceAnswer(403, say('page.nothing'));
    return new Response(typeof body === 'string' ? body : new Uint8Array(body), { status, headers });
  });
}
