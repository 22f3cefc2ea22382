import type { CallResult } from '../../app/contract/result.ts';
import { say } from '../language/messages.ts';
import { sessionHeader } from './session-header.ts';

/** Sends a file that the person picked to the program over the loopback address; gives back its handle. */
export async function upload(file: File): Promise<CallResult<{ upload: string }>> {
  try {
    const response = await fetch('/upload', {
      method: 'POST',
      headers: { 'content-type': 'application/octet-stream', ...sessionHeader() },
      body: file,
    });
    return (await response.json()) as CallResult<{ upload: string }>;
  } catch {
    return {
      ok: false,
      error: {
        code: 'internal',
        message: say('error.gone', { saved: say('error.saved') }),
        problems: [],
      },
    };
  }
}

/** Downloads a waiting file, so that the browser saves it under its own name. */
export function fetchDelivery(href: string): void {
  const link = document.createElement('a');
  link.href = href;
  link.download = '';
  link.click();
}
