import type { BenchFile } from './bench-file.ts';
import { factText } from './print-table.ts';

const BEGIN = '<!-- measured -->';
const END = '<!-- /measured -->';

/** The README's short paragraph on speed, from one run: only what that run measured is told. */
export function paragraphOf(file: BenchFile): string {
  const median = (name: string) => {
    const row = file.rows.find((r) => r.name === name);
    return row ? roundTime(row.ownUs ?? row.medianUs) : null;
  };
  const times = (name: string) => {
    const ratio = file.rows.find((r) => r.name === name)?.ratio;
    return ratio ? `${Number(ratio.times.toPrecision(2))} times` : null;
  };
  const fact = (name: string) => {
    const found = file.facts.find((f) => f.name === name);
    return found ? factText(found) : null;
  };
  return [
    told`One step of a drag (stance in three phases, loads, three equilibria, findings) takes ${median('drag step, single')} for a single and ${median('drag step, four')} for a four; a whole evaluation with every spread ${median('whole evaluation with spreads, single')} and ${median('whole evaluation with spreads, four')}, a proposal ${median('proposal, single')} and ${median('proposal, four')}.`,
    told`At equal accuracy a general solid-geometry library takes ${times('manifold-3d: the same, refined until both agree')} as long for an immersed volume and centroid, differential evolution ${times('the same by differential evolution, as good')} for a proposal, a general least-squares library ${times('the same least by ml-levenberg-marquardt, as near')} for a stance.`,
    told`Script of a pointer's move: ${median('script of a move, single, 1280 × 800')} in a single, ${median('script of a move, four, 1280 × 800')} in a four, drawn by software.`,
    told`From the program's start to a bench that can be dragged: ${median('program start to a draggable bench, warm')}; the page's script is ${fact('page script, compressed')} compressed.`,
    told`A store of 100,000 revisions lists fits in ${median('fits: first page, 100000 revisions')}, opens one in ${median('fit: open, 100000 revisions')} and keeps a draft in ${median('draft: save, 100000 revisions')}.`,
    told`Printing makes ${fact('templates as PDF, A4')} of templates.`,
    `Medians, or processor time where it takes milliseconds, on ${file.machine.cpu}, ${file.machine.cores} cores, Node ${file.versions.node}, ${file.measuredAt.slice(0, 10)}${busy(file)}; figures of another machine: \`npm run bench\`.`,
  ]
    .filter((sentence) => sentence !== null)
    .join('\n');
}

/** A time to two figures: 460 µs, 18 ms, 1.7 s. */
function roundTime(us: number): string {
  const two = (value: number) => String(Number(value.toPrecision(2)));
  if (us < 1000) return `${two(us)} µs`;
  return us < 1e6 ? `${two(us / 1000)} ms` : `${two(us / 1e6)} s`;
}

/** Says that other programs ran beside the bench, where they did: what the page and the store took is longer then. */
function busy({ machine: { load, cores } }: BenchFile): string {
  return load > cores / 2 ? `, while other programs kept it busy (load ${load.toFixed(0)})` : '';
}

/** A sentence with its figures in place, or null where one of them was not measured. */
function told(words: TemplateStringsArray, ...figures: readonly (string | null)[]): string | null {
  if (figures.includes(null)) return null;
  return words.map((word, i) => word + (figures[i] ?? '')).join('');
}

/** The README with what stands between its two marks replaced. Throws an Error where the marks are missing. */
export function withParagraph(readme: string, paragraph: string): string {
  const [from, to] = [readme.indexOf(BEGIN), readme.indexOf(END)];
  if (from < 0 || to < from) throw new Error(`README.md has no ${BEGIN} … ${END}; it was left as it was.`);
  return `${readme.slice(0, from)}${BEGIN}\n${paragraph}\n${readme.slice(to)}`;
}
