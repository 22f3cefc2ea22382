import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { call } from '../../../renderer/client/client.ts';
import { prefetchCall, takePrefetched } from '../../../renderer/client/prefetch.ts';

const answered = { ok: true, value: { theme: 'dark' } };

describe('a call sent ahead', () => {
  const bridge = vi.fn(async () => answered);
  let leave: () => void = () => {};
  beforeEach(() => {
    bridge.mockClear();
    vi.stubGlobal('window', {
      kneelwright: { call: bridge },
      addEventListener: (_: string, listener: () => void) => {
        leave = listener;
      },
    });
  });
  afterEach(() => {
    leave();
    vi.unstubAllGlobals();
  });

  it('is answered to the one who asks the same first, and not sent again', async () => {
    prefetchCall('display.read', {});
    expect(await call('display.read', {})).toBe(answered);
    expect(bridge).toHaveBeenCalledTimes(1);
    await call('display.read', {});
    expect(bridge).toHaveBeenCalledTimes(2);
  });

  it('answers nothing else that is asked', async () => {
    prefetchCall('fits.open', { id: 'one' });
    expect(takePrefetched('fits.open', { id: 'two' })).toBeNull();
    expect(takePrefetched('fits.open', { id: 'one' })).not.toBeNull();
  });

  it('is forgotten when the person goes to another page: what comes later may be newer', () => {
    prefetchCall('fits.open', { id: 'one' });
    leave();
    expect(takePrefetched('fits.open', { id: 'one' })).toBeNull();
  });

  it('is a refusal like any other where the program is gone', async () => {
    bridge.mockRejectedValueOnce(new Error('gone'));
    prefetchCall('display.read', {});
    expect(await call('display.read', {})).toMatchObject({ ok: false, error: { code: 'internal' } });
  });
});
