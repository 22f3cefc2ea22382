import type { BenchFile } from './bench-file.ts';
import { factText } from './print-table.ts';

const BEGIN = '<!-- measured -->';
const END = '<!-- /measured -->';

/** The README's small table on speed, from one run: only what that run measured is told. */
export function paragraphOf(file: BenchFile): string {
  const median = (name: string) => {
    const row = file.rows.find((r) => r.name === name);
    return row ? roundTime(row.ownUs ?? row.medianUs) : null;
  };
  const fact = (name: string) => {
    const found = file.facts.find((f) => f.name === name);
    return found ? factText(found) : null;
  };
  const rows: readonly (readonly [what: string, figure: string | null])[] = [
    ['A pad dragged by hand: everything computed anew, single', median('drag step, single')],
    ['The same in a four', median('drag step, four')],
    [
      'A move of the pointer with all of its drawing, single: script',
      median('script of a move, single, 1280 × 800'),
    ],
    ['The same in a four', median('script of a move, four, 1280 × 800')],
    ['Every number of a fit with how sure it is, single', median('whole evaluation with spreads, single')],
    ['The same in a four', median('whole evaluation with spreads, four')],
    ['A proposal for a single', median('proposal, single')],
    ['A proposal for a four', median('proposal, four')],
    [
      'From the start of the program to a bench that can be dragged',
      median('program start to a draggable bench, warm'),
    ],
    ['A fit opened among 100,000 saved revisions', median('fit: open, 100000 revisions')],
    ['An edit written to the disk among as many', median('draft: save, 100000 revisions')],
    ['Templates printed at full size', fact('templates as PDF, A4')],
    ['Size of the page’s program, compressed', fact('page script, compressed')],
  ];
  return [
    '| what | takes |',
    '|---|---|',
    ...rows.flatMap(([what, figure]) => (figure === null ? [] : [`| ${what} | ${figure} |`])),
    '',
    `Medians, on ${file.machine.cpu}, ${file.machine.cores} cores, Node ${file.versions.node}, ${file.measuredAt.slice(0, 10)}${busy(file)}. Your machine: \`npm run bench\`.`,
  ].join('\n');
}

/** A time to two figures: 460 µs, 18 ms, 1.7 s. */
function roundTime(us: number): string {
  const two = (value: number) => String(Number(value.toPrecision(2)));
  if (us < 1000) return `${two(us)} µs`;
  return us < 1e6 ? `${two(us / 1000)} ms` : `${two(us / 1e6)} s`;
}

/** Says that other programs ran beside the bench, where they did: what the page and the store took is longer then. */
function busy({ machine: { load, cores } }: BenchFile): string {
  return load > 0.75 * cores ? `, while other programs kept it busy (load ${load.toFixed(0)})` : '';
}

/** The README with what stands between its two marks replaced. Throws an Error where the marks are missing. */
export function withParagraph(readme: string, paragraph: string): string {
  const [from, to] = [readme.indexOf(BEGIN), readme.indexOf(END)];
  if (from < 0 || to < from) throw new Error(`README.md has no ${BEGIN} … ${END}; it was left as it was.`);
  return `${readme.slice(0, from)}${BEGIN}\n${paragraph}\n${readme.slice(to)}`;
}
