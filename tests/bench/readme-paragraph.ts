import type { BenchFile } from './bench-file.ts';
import { factText, timeText } from './print-table.ts';

const BEGIN = '<!-- measured -->';
const END = '<!-- /measured -->';

/** The README's short paragraph on speed, from one run: only what that run measured is told. */
export function paragraphOf(file: BenchFile): string {
  const median = (name: string) => {
    const row = file.rows.find((r) => r.name === name);
    return row ? timeText(row.medianUs) : null;
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
    told`One step of a drag (stance in three phases, loads, three equilibria, findings) takes ${median('drag step, single')} for a single and ${median('drag step, four')} for a four.`,
    told`A whole evaluation with every spread takes ${median('whole evaluation with spreads, single')}, a proposal ${median('proposal, single')}.`,
    told`A general least-squares library takes ${times('the same least by ml-levenberg-marquardt, as near')} as long for the same stance.`,
    told`A general solid-geometry library takes ${times('manifold-3d: the same, refined until both agree')} as long for the same immersed volume and centroid.`,
    told`Script of a pointer's move: ${median('script of a move, single, 1280 × 800')}.`,
    told`From the program's start to a bench that can be dragged: ${median('program start to a draggable bench, warm')}.`,
    told`The page's script is ${fact('page script, compressed')} compressed.`,
    `Medians on ${file.machine.cpu}, ${file.machine.cores} cores, Node ${file.versions.node}, ${file.measuredAt.slice(0, 10)}; figures of another machine: \`npm run bench\`.`,
  ]
    .filter((sentence) => sentence !== null)
    .join('\n');
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
