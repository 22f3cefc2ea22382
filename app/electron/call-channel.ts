import type { IpcMainInvokeEvent } from 'electron';
import type { CallResult } from '../contract/result.ts';
import { dispatch } from '../services/dispatch.ts';
import { type Program, refused } from '../services/program.ts';
import { SENTENCES } from '../services/sentences.ts';
import { CALL_CHANNEL, type ElectronApi, isOwnPage } from './electron-api.ts';

/** Answers the page's calls. Only the window's own page, in its top frame, is listened to. */
export function answerCalls({ ipcMain }: ElectronApi, program: Program): void {
  ipcMain.handle(CALL_CHANNEL, (event, name: unknown, input: unknown): Promise<CallResult<unknown>> => {
    if (comesFromOwnPage(event)) return dispatch(program, name, input);
    return Promise.resolve(refused('not-allowed', SENTENCES['own-page-only']));
  });
}

function comesFromOwnPage({ senderFrame }: IpcMainInvokeEvent): boolean {
  return senderFrame !== null && senderFrame.parent === null && isOwnPage(senderFrame.url);
}
