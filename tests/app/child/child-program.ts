import { type ChildProcess, type SpawnOptions, spawn } from 'node:child_process';
import { join } from 'node:path';
import type { CallInput, CallName, CallOutput } from '../../../app/contract/contract.ts';
import type { CallResult } from '../../../app/contract/result.ts';
import { say } from '../../../app/shell/say.ts';
import { enter } from '../shells/enter.ts';
import { writePage } from '../shells/page-folder.ts';

const SERVE = join(import.meta.dirname, 'serve.ts');

/** What a child process said before it ended without serving. */
export class EndedEarly extends Error {
  readonly code: number | null;
  readonly said: string;
  constructor(code: number | null, said: string) {
    super(`the program ended with ${code}: ${said}`);
    this.code = code;
    this.said = said;
  }
}

/** The program in a process of its own, spoken to over its loopback address. */
export interface ChildProgram {
  readonly pid: number;
  readonly process: ChildProcess;
  /** Resolves with the exit code, null after a signal. */
  readonly ended: Promise<number | null>;
  /** Rejects when the process is gone. */
  call<N extends CallName>(name: N, input: CallInput<N>): Promise<CallResult<CallOutput<N>>>;
}

/** Starts the program on a data folder and enters it. Throws `EndedEarly` when it refuses to start. */
export async function startChild(
  folder: string,
  more: { spawn?: SpawnOptions; wrap?: (command: string[]) => string[] } = {},
): Promise<ChildProgram> {
  const page = writePage(join(folder, '..', 'page'));
  const command = [process.execPath, SERVE, folder, page];
  const [file, ...args] = more.wrap ? more.wrap(command) : command;
  const child = spawn(file!, args, { ...more.spawn, stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  const ended = new Promise<number | null>((resolve) => child.once('exit', (code) => resolve(code)));
  // `close` comes after `exit`, when all that was said has been heard.
  const silent = new Promise<number | null>((resolve) => child.once('close', (code) => resolve(code)));
  const address = await new Promise<string>((resolve, reject) => {
    const hear = (chunk: Buffer) => {
      said += chunk;
      const [found] = /http:\/\/\S+/.exec(said) ?? [];
      if (found && said.includes(say('launch.enter'))) resolve(found);
    };
    child.stdout!.on('data', hear);
    child.stderr!.on('data', hear);
    void silent.then((code) => reject(new EndedEarly(code, said.trim())));
  });
  const { origin } = new URL(address);
  const tab = await enter(address);
  return {
    pid: child.pid!,
    process: child,
    ended,
    async call(name, input) {
      const headers = { ...tab, origin, 'content-type': 'application/json' };
      const body = JSON.stringify({ name, input });
      for (;;) {
        const response = await fetch(`${origin}/call`, { method: 'POST', headers, body });
        if (response.status !== 429) return (await response.json()) as never;
        // A script is faster than any hand; it waits its turn as a page would.
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
    },
  };
}
