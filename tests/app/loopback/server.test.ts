import { type IncomingMessage, request } from 'node:http';
import { type AddressInfo, connect, createServer } from 'node:net';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { runInNewContext } from 'node:vm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { saveBody } from '../../../app/loopback/read-body.ts';
import { CALL_LIMIT } from '../../../app/loopback/server.ts';
import hungarian from '../../../assets/messages/hu/program.json' with { type: 'json' };
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { enter, tabOf } from '../shells/enter.ts';
import { type ThroughLoopback, throughLoopback } from '../shells/through-loopback.ts';
import { temporaryFolder } from '../temporary.ts';

interface Got {
  readonly status: number;
  readonly headers: Record<string, string | string[] | undefined>;
  readonly body: string;
}

let way: ThroughLoopback;
beforeAll(async () => {
  way = await throughLoopback(temporaryFolder());
});
afterAll(() => way.close());

/** A request with exactly these headers, as no browser would let a page send it. */
function ask(
  path: string,
  more: { method?: string; headers?: Record<string, string>; body?: string } = {},
): Promise<Got> {
  const { method = 'GET', headers = {}, body } = more;
  return new Promise((resolve, reject) => {
    const asked = request(
      {
        host: '127.0.0.1',
        port: way.server.port,
        path,
        method,
        headers: { host: new URL(way.origin).host, ...headers },
      },
      (response) => {
        let text = '';
        response.on('data', (chunk) => {
          text += chunk;
        });
        response.on('end', () =>
          resolve({ status: response.statusCode!, headers: response.headers, body: text }),
        );
      },
    );
    asked.on('error', reject);
    asked.end(body);
  });
}

const call = (headers: Record<string, string>, body = '{"name":"program.state","input":{}}') =>
  ask('/call', { method: 'POST', body, headers: { 'content-type': 'application/json', ...headers } });

describe('the loopback server', () => {
  it('does not call a file too large, or its sender gone, where the disk takes no more of it', async () => {
    const sent = Object.assign(Readable.from([Buffer.alloc(10)]), { headers: {}, complete: false });
    const path = join(temporaryFolder(), 'none', 'upload');
    const saving = saveBody(sent as unknown as IncomingMessage, { path, maxBytes: 100 });
    await expect(saving).rejects.toThrow('ENOENT');
  });

  it('listens on 127.0.0.1 and on no other address of this machine', async () => {
    const others = Object.values(networkInterfaces())
      .flat()
      .map((face) => face!.address)
      .filter((address) => address !== '127.0.0.1' && !address.startsWith('fe80'));
    const answers = ['127.0.0.1', '127.0.0.2', ...others].map(
      (host) =>
        new Promise<string | null>((resolve) => {
          const socket = connect({ host, port: way.server.port, timeout: 10_000 }, () => {
            socket.destroy();
            resolve(host);
          });
          socket.on('error', () => resolve(null)).on('timeout', () => resolve(null));
        }),
    );
    expect((await Promise.all(answers)).filter(Boolean)).toEqual(['127.0.0.1']);
  });

  it('exchanges a token once, for a secret that stays in the tab; no cookie is ever set', async () => {
    const { pathname, search } = new URL(way.server.address());
    const first = await ask(pathname + search);
    expect(first.status).toBe(200);
    expect(first.headers['set-cookie']).toBe(undefined);
    expect(first.headers['content-security-policy']).toMatch(
      /^default-src 'none'; script-src 'nonce-[\w-]+';/,
    );
    expect(await call({ ...tabOf(first.body), origin: way.origin })).toMatchObject({ status: 200 });
    const again = await ask(pathname + search);
    expect(again.status).toBe(403);
    expect(again.body).toContain('Press Enter');
  });

  it('takes a token that a private file posts, from whatever origin a file has', async () => {
    const { action, token } = way.server.entrance();
    const post = (body: string) =>
      ask(new URL(action).pathname, {
        method: 'POST',
        body,
        headers: { origin: 'null', 'content-type': 'application/x-www-form-urlencoded' },
      });
    const entered = await post(`token=${token}`);
    expect(await call({ ...tabOf(entered.body), origin: way.origin })).toMatchObject({ status: 200 });
    for (const body of [`token=${token}`, 'token=', '', 'x'.repeat(5000)]) {
      expect((await post(body).catch(() => ({ status: 403 }))).status, body).toBe(403);
    }
  });

  it('answers in the language of the browser that entered, while none is chosen', async () => {
    const refusal = async (accepted: string) => {
      const { pathname, search } = new URL(way.server.address());
      const entered = await ask(pathname + search, { headers: { 'accept-language': accepted } });
      const { body } = await call({ ...tabOf(entered.body), origin: way.origin }, '{"name":"no","input":{}}');
      return JSON.parse(body).error.message;
    };
    expect(await refusal('fi, hu-HU;q=0.9, en;q=0.8')).toContain(hungarian['problem.unknown-call']);
    expect(await refusal('en-GB,en;q=0.9')).toContain(english.say('problem.unknown-call'));
  });

  it('goes on to the place that the address names after its token', async () => {
    const { pathname, search } = new URL(way.server.address());
    const { body } = await ask(pathname + search);
    const [, script] = /<script[^>]*>(.*)<\/script>/.exec(body)!;
    const places: string[] = [];
    const location = { hash: '#/fits/7', replace: (to: string) => places.push(to) };
    runInNewContext(script!, { location, sessionStorage: { setItem() {} } });
    expect(places).toEqual(['/#/fits/7']);
  });

  it('gives each tab a secret of its own', async () => {
    const tabs = await Promise.all([1, 2].map(() => enter(way.server.address())));
    expect(tabs[0]).not.toEqual(tabs[1]);
    for (const tab of tabs) expect(await call({ ...tab, origin: way.origin })).toMatchObject({ status: 200 });
  });

  it('answers no call without the secret, with a wrong one, or with it in a cookie', async () => {
    const [name, secret] = Object.entries(way.tab)[0]!;
    const attempts: Record<string, string>[] = [
      {},
      { [name]: '' },
      { [name]: 'A'.repeat(43) },
      { [name]: `${secret}0` },
      { cookie: `${name}=${secret}` },
      { cookie: `kneelwright-${way.server.port}=${secret}` },
    ];
    for (const headers of notEmpty(attempts)) {
      const sent = { ...headers, origin: way.origin };
      expect(await call(sent), JSON.stringify(headers)).toMatchObject({ status: 403 });
      expect(await ask('/upload', { method: 'POST', headers: sent }), 'upload').toMatchObject({
        status: 403,
      });
    }
  });

  it('refuses every Host but its own address, secret or not: no name can be made to point here', async () => {
    const { port } = way.server;
    for (const host of [
      `localhost:${port}`,
      `evil.example:${port}`,
      '127.0.0.1',
      `127.0.0.1.evil.example:${port}`,
    ]) {
      const got = await ask('/', { headers: { host, ...way.tab } });
      expect(got, host).toMatchObject({ status: 403, body: 'Only for the program’s own page.\n' });
    }
  });

  it('refuses a call from any other origin, or from none', async () => {
    const { tab } = way;
    for (const origin of [
      'http://evil.example',
      'null',
      `http://localhost:${way.server.port}`,
      `${way.origin}0`,
    ]) {
      expect(await call({ ...tab, origin }), origin).toMatchObject({ status: 403 });
    }
    expect(await call(tab)).toMatchObject({ status: 403 });
    expect(await call({ ...tab, origin: way.origin, 'sec-fetch-site': 'cross-site' })).toMatchObject({
      status: 403,
    });
    expect(await call({ ...tab, origin: way.origin, 'sec-fetch-site': 'same-origin' })).toMatchObject({
      status: 200,
    });
  });

  it('sends every answer with a policy that allows nothing but its own files', async () => {
    const page = await ask('/', { headers: way.tab });
    const policy = String(page.headers['content-security-policy']);
    expect(policy).toMatch(/^default-src 'none'; script-src 'self' 'wasm-unsafe-eval';/);
    // WebAssembly for the pose model, and nothing else that is called unsafe.
    expect(policy.replace("'wasm-unsafe-eval'", '')).not.toMatch(/unsafe|\*|https?:/);
    const nonce = /nonce="([\w-]+)"/.exec(page.body)![1];
    expect(policy).toContain(`style-src 'self' 'nonce-${nonce}'`);
    const second = await ask('/', { headers: way.tab });
    expect(second.body).not.toContain(nonce);
    for (const path of ['/assets/page.js', '/nothing', '/?token=wrong']) {
      const { headers } = await ask(path, { headers: way.tab });
      expect(headers, path).toMatchObject({
        'content-security-policy': expect.stringContaining("default-src 'none'"),
        'x-content-type-options': 'nosniff',
        'x-frame-options': 'DENY',
        'referrer-policy': 'no-referrer',
        'cache-control': 'no-store',
      });
      expect(headers['access-control-allow-origin']).toBe(undefined);
    }
  });

  it.each([
    '/../package.json',
    '/..%2f..%2fpackage.json',
    '/%2e%2e/data/kneelwright.db',
    '/assets/../../data/kneelwright.db',
    '/assets%5c..%5c..%5cdata%5ckneelwright.db',
    '/notes.secret',
    '/assets',
    '//etc/passwd',
    '/%00',
    '/__proto__',
    '/constructor',
  ])('serves nothing under %s', async (path) => {
    const got = await ask(path, { headers: way.tab });
    expect([400, 403, 404]).toContain(got.status);
    expect(got.body).not.toContain('SQLite');
  });

  it('answers whatever is sent as a call, and stays up', async () => {
    const headers = { ...way.tab, origin: way.origin };
    for (const body of ['', 'null', '[]', '7', '{', '{"name":', '"x"', '\u0000', '{"name":{},"input":[]}']) {
      const got = await call(headers, body);
      expect([200, 400], body).toContain(got.status);
      expect(JSON.parse(got.body)).toMatchObject({ ok: false });
    }
    expect(await call({ ...headers, 'content-type': 'text/plain' })).toMatchObject({ status: 415 });
    expect(await ask('/call', { headers: way.tab })).toMatchObject({ status: 404 });
    expect(await ask('/call', { method: 'DELETE', headers })).toMatchObject({ status: 405 });
    expect(await ask('http://[', { headers })).toMatchObject({ status: 400 });
    expect((await call(headers)).status).toBe(200);
  });

  it('stops reading a body at the limit, whatever length it claims', async () => {
    const headers = { ...way.tab, origin: way.origin, 'content-type': 'application/json' };
    const claimed = await ask('/call', {
      method: 'POST',
      headers: { ...headers, 'content-length': String(CALL_LIMIT + 1) },
    }).catch((error: Error) => error);
    if (!(claimed instanceof Error)) expect(claimed).toMatchObject({ status: 413 });
    const sent = await ask('/call', { method: 'POST', headers, body: 'x'.repeat(CALL_LIMIT + 1) }).catch(
      (error: Error) => error,
    );
    if (!(sent instanceof Error)) expect(sent).toMatchObject({ status: 413 });
    expect((await call(headers)).status).toBe(200);
  });

  it('delivers a file once', async () => {
    const delivery = await way.call('bundle.export', {});
    if (!delivery.ok || delivery.value.kind !== 'download') throw new Error('no download');
    const { href } = delivery.value;
    const got = await ask(href);
    expect(got.status).toBe(200);
    expect(got.headers['content-disposition']).toMatch(
      /^attachment; filename\*=UTF-8''everything-[\d-]+\.kneelwright$/,
    );
    expect(await ask(href)).toMatchObject({ status: 404 });
  });
});

describe('the limits on requests', () => {
  it('hold for strangers after a few, and for the page only far beyond what a hand can do', async () => {
    // Time stands still, so that the limits do not depend on how fast this computer is.
    const limited = await throughLoopback(temporaryFolder(), undefined, () => 0);
    const strange = await Promise.all(
      Array.from({ length: 40 }, () => fetch(`${limited.origin}/?token=wrong`).then(({ status }) => status)),
    );
    expect(strange.filter((status) => status === 429).length).toBeGreaterThan(10);
    const own = await Promise.all(
      Array.from({ length: 200 }, () => limited.call('work.progress', {}).then(({ ok }) => ok)),
    );
    expect(own).not.toContain(false);
    const flood = await Promise.all(
      Array.from({ length: 300 }, () => limited.call('work.progress', {}).then(({ ok }) => ok)),
    );
    expect(flood).toContain(false);
    await limited.close();
  });

  it('leave the owner alone while a stranger floods: wrong tokens, idle connections, unfinished requests', async () => {
    const limited = await throughLoopback(temporaryFolder(), undefined, () => 0);
    const sockets = Array.from({ length: 400 }, (_, i) => {
      const socket = connect({ host: '127.0.0.1', port: limited.server.port });
      socket.on('error', () => {});
      if (i % 2 === 0) socket.write(`POST /call HTTP/1.1\r\nHost: ${new URL(limited.origin).host}\r\n`);
      return socket;
    });
    const flood = Array.from({ length: 300 }, (_, i) =>
      fetch(`${limited.origin}/?token=wrong${i}`).then(
        ({ status }) => status,
        () => 0,
      ),
    );
    const own = await Promise.all(Array.from({ length: 30 }, () => limited.call('work.progress', {})));
    expect(own.filter(({ ok }) => !ok)).toEqual([]);
    expect((await Promise.all(flood)).filter((status) => status === 429).length).toBeGreaterThan(100);
    // A fresh tab of the owner's still gets in.
    const tab = await enter(limited.server.address());
    expect(Object.values(tab)[0]).toMatch(/^[\w-]{43}$/);
    for (const socket of sockets) socket.destroy();
    await limited.close();
  });
});

describe('a port that is taken', () => {
  it('is an error that names itself, not a crash', async () => {
    const taken = createServer();
    await new Promise<void>((resolve) => taken.listen(0, '127.0.0.1', resolve));
    const { port } = taken.address() as AddressInfo;
    const { serveLoopback } = await import('../../../app/loopback/server.ts');
    const served = { program: {} as never, shell: {} as never, page: new Map(), port };
    await expect(serveLoopback(served)).rejects.toMatchObject({ code: 'EADDRINUSE' });
    taken.close();
  });
});
