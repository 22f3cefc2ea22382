import { connect, createServer, type Server, type Socket } from 'node:net';

/** A way to a server that can be cut while something is said, or be slow. */
export interface ShakyNetwork {
  readonly port: number;
  /** Cuts every connection after so many more bytes from the server; null never. */
  cutAfter(bytes: number | null): void;
  /** Keeps back what is said to the server from these words on, on each connection; gives what lets it go on. */
  hold(words: string): () => void;
  /** How many connections came. */
  met(): number;
  /** What was said to the server. */
  said(): string;
  close(): Promise<void>;
}

/** Passes everything on to a port of this machine. */
export function shakyNetwork(to: number, at = '127.0.0.1'): Promise<ShakyNetwork> {
  let left: number | null = null;
  let met = 0;
  let held = { words: '', goOn: [] as (() => void)[] };
  const said: Buffer[] = [];
  const open = new Set<Socket>();
  const server: Server = createServer((near) => {
    met += 1;
    const far = connect(to, '127.0.0.1');
    const cut = () => {
      near.destroy();
      far.destroy();
    };
    for (const socket of [near, far]) {
      open.add(socket);
      socket.on('error', cut);
      socket.on('close', () => {
        open.delete(socket);
        cut();
      });
    }
    near.on('data', (chunk) => {
      if (said.length < 100) said.push(chunk);
      if (!held.words || !chunk.includes(held.words)) return far.write(chunk);
      near.pause();
      held.goOn.push(() => {
        far.write(chunk);
        near.resume();
      });
    });
    far.on('data', (chunk) => {
      if (left !== null) {
        left -= chunk.length;
        if (left <= 0) return cut();
      }
      near.write(chunk);
    });
  });
  return new Promise((resolve) => {
    server.listen(0, at, () => {
      resolve({
        port: (server.address() as { port: number }).port,
        cutAfter(bytes) {
          left = bytes;
        },
        hold(words) {
          held = { words, goOn: [] };
          return () => {
            for (const goOn of held.goOn) goOn();
            held = { words: '', goOn: [] };
          };
        },
        met: () => met,
        said: () => Buffer.concat(said).toString('latin1'),
        close: () =>
          new Promise((closed) => {
            for (const socket of open) socket.destroy();
            server.close(() => closed());
          }),
      });
    });
  });
}
