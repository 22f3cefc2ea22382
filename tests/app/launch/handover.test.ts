import { existsSync, mkdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { handoverPlace, snapPlace, writeHandover } from '../../../app/launch/handover.ts';
import { temporaryFolder } from '../temporary.ts';

const entrance = { action: 'http://127.0.0.1:1234/enter', token: 'a-token' };

describe('the file that lets the browser in', () => {
  it('posts the token, is for its owner alone, and goes with its folder', () => {
    const place = temporaryFolder();
    const { path, remove } = writeHandover(entrance, place);
    const page = readFileSync(path, 'utf8');
    expect(page).toContain('<form method="post" action="http://127.0.0.1:1234/enter">');
    expect(page).toContain('value="a-token"');
    expect(path).not.toContain('token');
    if (process.platform !== 'win32') {
      expect(statSync(path).mode & 0o777).toBe(0o600);
      expect(statSync(join(path, '..')).mode & 0o777).toBe(0o700);
    }
    remove();
    expect(existsSync(join(path, '..'))).toBe(false);
  });

  it.runIf(process.platform === 'linux')('lies where a browser from a snap can read it', () => {
    const home = temporaryFolder();
    mkdirSync(join(home, 'snap/firefox/common'), { recursive: true });
    expect(snapPlace('firefox_firefox.desktop\n', home)).toBe(join(home, 'snap/firefox/common'));
    expect(snapPlace('chromium_chromium.desktop', home)).toBe(null);
    expect(snapPlace('firefox.desktop', home)).toBe(null);
    expect(snapPlace('../../etc_x.desktop', home)).toBe(null);
    expect(snapPlace('', home)).toBe(null);
  });

  it.runIf(process.platform === 'linux')("lies in the user's own folder of this session otherwise", () => {
    const runtime = temporaryFolder();
    expect(handoverPlace({ XDG_RUNTIME_DIR: runtime }, () => 'firefox.desktop')).toBe(runtime);
    expect(handoverPlace({ XDG_RUNTIME_DIR: '/no/such' }, () => '')).not.toBe('/no/such');
  });
});
