import { connect, createServer, type Server, type Socket } from 'node:net';

/** A way to a server that can be cut while something is said. */
export interface ShakyNetwork {
  readonly port: number;
  /** Cuts every connection after so many more bytes from the server; null never. */
  cutAfter(bytes: number | null): void;
  close(): Promise<void>;
}

/** Passes everything on to a port of this machine. */
export function shakyNetwork(to: number): Promise<ShakyNetwork> {
  let left: number | null = null;
  const open = new Set<Socket>();
  const server: Server = createServer((near) => {
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
    near.on('data', (chunk) => far.write(chunk));
    far.on('data', (chunk) => {
      if (left !== null) {
        left -= chunk.length;
        if (left <= 0) return cut();
      }
      near.write(chunk);
    });
  });
  return new Promise((resolve) => {
    server.listen(0, '127.0.0.1', () => {
      resolve({
        port: (server.address() as { port: number }).port,
        cutAfter(bytes) {
          left = bytes;
        },
        close: () =>
          new Promise((closed) => {
            for (const socket of open) socket.destroy();
            server.close(() => closed());
          }),
      });
    });
  });
}
