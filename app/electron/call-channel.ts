import type { IpcMainInvokeEvent } from 'electron';
import type { CallResult } from '../contract/result.ts';
import { dispatch } from '../services/dispatch.ts';
import { type Program, refused } from '../services/program.ts';
import { SENTENCES } from '../services/sentences.ts';
import { CALL_CHANNEL, type ElectronApi, isOwnPage } from './electron-api.ts';

/**
 * Answers the page's calls. Only the window's own page, in its top frame, is listened to. `answered` is called once,
 * after the first answer: the page runs then, and the program behind it too.
 */
export function answerCalls({ ipcMain }: ElectronApi, program: Program, answered: () => void): void {
  let first = true;
  ipcMain.handle(CALL_CHANNEL, async (event, name: unknown, input: unknown): Promise<CallResult<unknown>> => {
    if (!comesFromOwnPage(event)) return refused('not-allowed', SENTENCES['own-page-only']);
    const answer = await dispatch(program, name, input);
    if (first) answered();
    first = false;
    return answer;
  });
}

function comesFromOwnPage({ senderFrame }: IpcMainInvokeEvent): boolean {
  return senderFrame !== null && senderFrame.parent === null && isOwnPage(senderFrame.url);
}
