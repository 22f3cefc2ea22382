import type { Server } from 'node:http';
import type { Socket } from 'node:net';

/** Connections that have not shown a tab's secret: a browser opens six at a time. */
const MOST_STRANGERS = 64;

/** Limits strangers' connections, so that they cannot use up all that the system gives this program. */
export interface ConnectionKeeper {
  /** This connection has shown a tab's secret: it is never closed to make room. */
  trust(socket: Socket): void;
}

/** Watches a server's connections. When there are too many strangers, the one that came first and asks nothing goes. */
export function keepConnections(server: Server, most = MOST_STRANGERS): ConnectionKeeper {
  const strangers = new Set<Socket>();
  const asking = new Set<Socket>();
  server.on('connection', (socket) => {
    strangers.add(socket);
    socket.once('close', () => strangers.delete(socket));
    if (strangers.size > most) oldest(strangers, asking)?.destroy();
  });
  server.on('request', ({ socket }, response) => {
    asking.add(socket);
    response.once('close', () => asking.delete(socket));
  });
  return {
    trust: (socket) => strangers.delete(socket),
  };
}

function oldest(strangers: ReadonlySet<Socket>, asking: ReadonlySet<Socket>): Socket | undefined {
  const [first] = strangers;
  return [...strangers].find((socket) => !asking.has(socket)) ?? first;
}
