import { request } from 'node:http';
import { type AddressInfo, connect, createServer } from 'node:net';
import { networkInterfaces } from 'node:os';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CALL_LIMIT } from '../../../app/loopback/server.ts';
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
  it('listens on 127.0.0.1 and on no other address of this machine', async () => {
    const others = Object.values(networkInterfaces())
      .flat()
      .map((face) => face!.address)
      .filter((address) => address !== '127.0.0.1' && !address.startsWith('fe80'));
    const answers = ['127.0.0.1', '127.0.0.2', ...others].map(
      (host) =>
        new Promise<string | null>((resolve) => {
          const socket = connect({ host, port: way.server.port, timeout: 500 }, () => {
            socket.destroy();
            resolve(host);
          });
          socket.on('error', () => resolve(null)).on('timeout', () => resolve(null));
        }),
    );
    expect((await Promise.all(answers)).filter(Boolean)).toEqual(['127.0.0.1']);
  });

  it('exchanges a token once, for a cookie that scripts and other sites never see', async () => {
    const { pathname, search } = new URL(way.server.address());
    const first = await ask(pathname + search);
    expect(first.status).toBe(303);
    expect(first.headers.location).toBe('/');
    expect(String(first.headers['set-cookie'])).toMatch(
      /^kneelwright-\d+=[\w-]{43}; Path=\/; HttpOnly; SameSite=Strict$/,
    );
    const again = await ask(pathname + search);
    expect(again.status).toBe(403);
    expect(again.body).toContain('press Enter');
  });

  it('tells nothing to whoever has no cookie, a wrong one, or one of another port', async () => {
    const [name, secret] = way.cookie.split('=');
    for (const cookie of [
      '',
      `${name}=`,
      `${name}=${'A'.repeat(43)}`,
      `kneelwright-1=${secret}`,
      `x${way.cookie}`,
    ]) {
      expect(await ask('/', { headers: { cookie } }), cookie).toMatchObject({ status: 403 });
      expect(await call({ cookie, origin: way.origin }), cookie).toMatchObject({ status: 403 });
    }
  });

  it('refuses every Host but its own address, cookie or not: no name can be made to point here', async () => {
    const { port } = way.server;
    for (const host of [
      `localhost:${port}`,
      `evil.example:${port}`,
      '127.0.0.1',
      `127.0.0.1.evil.example:${port}`,
    ]) {
      const got = await ask('/', { headers: { host, cookie: way.cookie } });
      expect(got, host).toMatchObject({ status: 403, body: 'This address is for its own page only.\n' });
    }
  });

  it('refuses a call from any other origin, or from none', async () => {
    const { cookie } = way;
    for (const origin of [
      'http://evil.example',
      'null',
      `http://localhost:${way.server.port}`,
      `${way.origin}0`,
    ]) {
      expect(await call({ cookie, origin }), origin).toMatchObject({ status: 403 });
    }
    expect(await call({ cookie })).toMatchObject({ status: 403 });
    expect(await call({ cookie, origin: way.origin, 'sec-fetch-site': 'cross-site' })).toMatchObject({
      status: 403,
    });
    expect(await call({ cookie, origin: way.origin, 'sec-fetch-site': 'same-origin' })).toMatchObject({
      status: 200,
    });
  });

  it('sends every answer with a policy that allows nothing but its own files', async () => {
    const page = await ask('/', { headers: { cookie: way.cookie } });
    const policy = String(page.headers['content-security-policy']);
    expect(policy).toMatch(/^default-src 'none'; script-src 'self';/);
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    const nonce = /nonce="([\w-]+)"/.exec(page.body)![1];
    expect(policy).toContain(`style-src 'self' 'nonce-${nonce}'`);
    const second = await ask('/', { headers: { cookie: way.cookie } });
    expect(second.body).not.toContain(nonce);
    for (const path of ['/assets/page.js', '/nothing', '/?token=wrong']) {
      const { headers } = await ask(path, { headers: { cookie: way.cookie } });
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
    const got = await ask(path, { headers: { cookie: way.cookie } });
    expect([400, 403, 404]).toContain(got.status);
    expect(got.body).not.toContain('SQLite');
  });

  it('answers whatever is sent as a call, and stays up', async () => {
    const headers = { cookie: way.cookie, origin: way.origin };
    for (const body of ['', 'null', '[]', '7', '{', '{"name":', '"x"', '\u0000', '{"name":{},"input":[]}']) {
      const got = await call(headers, body);
      expect([200, 400], body).toContain(got.status);
      expect(JSON.parse(got.body)).toMatchObject({ ok: false });
    }
    expect(await call({ ...headers, 'content-type': 'text/plain' })).toMatchObject({ status: 415 });
    expect(await ask('/call', { headers: { cookie: way.cookie } })).toMatchObject({ status: 404 });
    expect(await ask('/call', { method: 'DELETE', headers })).toMatchObject({ status: 405 });
    expect(await ask('http://[', { headers })).toMatchObject({ status: 400 });
    expect((await call(headers)).status).toBe(200);
  });

  it('stops reading a body at the limit, whatever length it claims', async () => {
    const headers = { cookie: way.cookie, origin: way.origin, 'content-type': 'application/json' };
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
    expect(await ask(href)).toMatchObject({ status: 403 });
    const got = await ask(href, { headers: { cookie: way.cookie } });
    expect(got.status).toBe(200);
    expect(got.headers['content-disposition']).toMatch(
      /^attachment; filename\*=UTF-8''everything-[\d-]+\.kneelwright$/,
    );
    expect(await ask(href, { headers: { cookie: way.cookie } })).toMatchObject({ status: 404 });
  });
});

describe('the limits on requests', () => {
  it('hold for strangers after a few, and for the page only far beyond what a hand can do', async () => {
    const limited = await throughLoopback(temporaryFolder());
    const strange = await Promise.all(
      Array.from({ length: 40 }, () => fetch(limited.origin).then(({ status }) => status)),
    );
    expect(strange.filter((status) => status === 429).length).toBeGreaterThan(10);
    const own = await Promise.all(
      Array.from({ length: 200 }, () => limited.call('work.progress', {}).then(({ ok }) => ok)),
    );
    expect(own).not.toContain(false);
    const flood = await Promise.all(
      Array.from({ length: 900 }, () => limited.call('work.progress', {}).then(({ ok }) => ok)),
    );
    expect(flood).toContain(false);
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
