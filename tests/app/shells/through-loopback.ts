import { join } from 'node:path';
import { createLoopbackShell } from '../../../app/loopback/loopback-shell.ts';
import { type LoopbackServer, serveLoopback } from '../../../app/loopback/server.ts';
import { listPageFiles } from '../../../app/shell/page-files.ts';
import { openedProgram } from '../opened-program.ts';
import { enter } from './enter.ts';
import { writePage } from './page-folder.ts';
import type { WayIn } from './way-in.ts';

/** A loopback server in this process, and what a browser needs to speak to it. */
export interface ThroughLoopback extends WayIn {
  readonly server: LoopbackServer;
  readonly origin: string;
  /** The headers by which the server knows a tab that has entered. */
  readonly tab: Record<string, string>;
}

/** Serves a program from `folder` and enters it with its one-time token. */
export async function throughLoopback(
  folder: string,
  clock?: () => number,
  requestClock?: () => number,
): Promise<ThroughLoopback> {
  let quit = false;
  const shell = createLoopbackShell(() => {
    quit = true;
  });
  const opened = openedProgram(join(folder, 'data'), { shell, clock });
  const page = listPageFiles(writePage(join(folder, 'page')));
  const server = await serveLoopback({ program: opened.program, shell, page, port: 0, clock: requestClock });
  const origin = `http://127.0.0.1:${server.port}`;
  const tab = await enter(server.address());

  async function post(path: string, type: string, body: string | Uint8Array) {
    const headers = { ...tab, origin, 'content-type': type };
    const response = await fetch(origin + path, { method: 'POST', headers, body: body as BodyInit });
    return response.json();
  }
  const send = async (name: unknown, input: unknown) =>
    (await post('/call', 'application/json', JSON.stringify({ name, input }))) as never;
  return {
    server,
    origin,
    tab,
    quitAsked: () => quit,
    send,
    call: send,
    async fetchDelivery(delivery) {
      if (delivery.kind !== 'download') throw new Error(`delivered as ${delivery.kind}`);
      const response = await fetch(origin + delivery.href);
      return new Uint8Array(await response.arrayBuffer());
    },
    async offer(bytes) {
      const sent = (await post('/upload', 'application/octet-stream', bytes)) as {
        value: { upload: string };
      };
      return sent.value.upload;
    },
    async close() {
      await server.close();
      opened.close();
    },
  };
}
