/**
 * The least cost that any answer could have, from the report that HiGHS prints at its end ("Dual bound 2001.3"); null where it
 * says none. The package gives the answer itself but not this.
 */
export function dualBound(log: readonly string[]): number | null {
  const line = log.findLast((text) => /^\s*Dual bound\s/.test(text));
  const value = Number(line?.trim().split(/\s+/).at(-1));
  return line && Number.isFinite(value) ? value : null;
}
