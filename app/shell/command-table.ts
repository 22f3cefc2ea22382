/** A line of a command's help: what is typed, and what it does. */
export type CommandLine = readonly [typed: string, does: string];

/** Lines of help, the second column aligned. Both columns are texts; nothing is translated here. */
export function commandTable(lines: readonly CommandLine[]): string {
  const wide = Math.max(...lines.map(([typed]) => typed.length)) + 2;
  return lines.map(([typed, does]) => `${typed.padEnd(wide)}${does}`.trimEnd()).join('\n');
}
