import { describe, expect, it } from 'vitest';
import { sandboxLimit } from '../../../app/launch/sandbox-limits.ts';

/** Kernel settings by path; what is not named is not there. */
const system = (settings: Record<string, string>, helperIsSetUid = false) => ({
  setting: (path: string) => settings[path.split('/').at(-1)!] ?? null,
  helperIsSetUid,
});

describe('a system that forbids user namespaces', () => {
  it.each([
    ['Ubuntu 24.04', { apparmor_restrict_unprivileged_userns: '1\n' }],
    ['an older Debian', { unprivileged_userns_clone: '0\n' }],
    ['a system with none at all', { max_user_namespaces: '0\n' }],
  ])('%s is told what an administrator can do, never to give up the sandbox', (_name, settings) => {
    const said = sandboxLimit(system(settings), '/opt/e/electron');
    expect(said).toMatch(/user namespace.*sudo chown root:root "\/opt\/e\/chrome-sandbox".*chmod 4755/);
    expect(said).not.toContain('no-sandbox');
  });

  it('is no matter where the helper runs as root, and is not suspected elsewhere', () => {
    expect(sandboxLimit(system({ unprivileged_userns_clone: '0' }, true), '/opt/e/electron')).toBe(null);
    const open = { apparmor_restrict_unprivileged_userns: '0', max_user_namespaces: '63000' };
    expect(sandboxLimit(system(open), '/opt/e/electron')).toBe(null);
    expect(sandboxLimit(system({}), '/opt/e/electron')).toBe(null);
  });
});
