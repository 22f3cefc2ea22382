import { readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { say, words } from '../shell/say.ts';

/** What of the system decides whether Chromium's sandbox can be set up. */
export interface SandboxFacts {
  /** A kernel setting as text, null where there is none. */
  setting(path: string): string | null;
  /** Whether the helper beside Electron belongs to root and runs as root. */
  helperIsSetUid: boolean;
}

/** Settings that forbid an ordinary program to make a user namespace, and the value that forbids it. */
const FORBIDDING: readonly (readonly [string, string])[] = [
  // Ubuntu 23.10 and later: only programs with an AppArmor profile may.
  ['/proc/sys/kernel/apparmor_restrict_unprivileged_userns', '1'],
  // Debian's own switch.
  ['/proc/sys/kernel/unprivileged_userns_clone', '0'],
  ['/proc/sys/user/max_user_namespaces', '0'],
];

/**
 * Says in plain words that this system forbids what Chromium's sandbox needs, and what an administrator can do; null if
 * nothing speaks for that. The sandbox is never switched off. Source: Chromium, docs/security/apparmor-userns-restrictions.md.
 */
export function sandboxLimit(facts: SandboxFacts, binary: string): string | null {
  if (facts.helperIsSetUid) return null;
  const forbids = FORBIDDING.some(([path, value]) => facts.setting(path)?.trim() === value);
  if (!forbids) return null;
  const helper = join(dirname(binary), 'chrome-sandbox');
  const command = `sudo chown root:root "${helper}" && sudo chmod 4755 "${helper}"`;
  return words().sentences([say('launch.sandbox'), command]);
}

/** The facts of this machine. */
export function sandboxFacts(binary: string): SandboxFacts {
  return {
    setting(path) {
      try {
        return readFileSync(path, 'utf8');
      } catch {
        return null;
      }
    },
    helperIsSetUid: isSetUid(join(dirname(binary), 'chrome-sandbox')),
  };
}

function isSetUid(path: string): boolean {
  try {
    const { uid, mode } = statSync(path);
    return uid === 0 && (mode & 0o4000) !== 0;
  } catch {
    return false;
  }
}
