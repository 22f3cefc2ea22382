import { existsSync, readFileSync } from 'node:fs';

/**
 * The most memory that this process has had, bytes. On Linux what `getrusage` says includes the process that started this one,
 * before it became this one; the kernel's own `VmHWM` (proc(5)) does not.
 */
export function peakMemory(): number {
  const status = '/proc/self/status';
  const [, kilobytes] = existsSync(status)
    ? (/^VmHWM:\s+(\d+) kB$/m.exec(readFileSync(status, 'utf8')) ?? [])
    : [];
  return 1024 * Number(kilobytes ?? process.resourceUsage().maxRSS);
}
