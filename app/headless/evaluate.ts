import { type Fit, fitSchema } from '../../core/document/fit-schema.ts';
import { schemaParts } from '../../core/document/schema-parts.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { suggestionsFor } from '../../core/evaluation/suggestions.ts';
import { commandTable } from '../shell/command-table.ts';
import { say, speakAsTerminal, words } from '../shell/say.ts';
import { readFit } from './read-fit.ts';

/** Units, places and every field of a fit's file, as the Help page has them. */
function helpText(): string {
  const fields = schemaParts(fitSchema).map(
    ({ path, fields: names }) => `  ${path || '{ }'}: ${words().row(names)}`,
  );
  const command = commandTable([['npm run evaluate -- FILE', say('evaluate.help')]]);
  return [command, '', say('help.files.units'), say('help.files.frame'), '', ...fields].join('\n');
}

/** Runs the command; gives its exit code. */
function evaluate(args: readonly string[]): number {
  if (args.includes('--help') || args.includes('-h')) {
    console.log(helpText());
    return 0;
  }
  const [path, ...rest] = args;
  if (path === undefined) return refuse([say('evaluate.no-file')]);
  if (rest.length > 0) return refuse([say('evaluate.many', { count: rest.length + 1 })]);
  if (path.startsWith('-')) return refuse([say('evaluate.unknown', { option: path })]);
  const read = readFit(path);
  if (read.kind === 'refused') return refuse(read.lines);
  try {
    process.stdout.write(`${JSON.stringify(wholeReport(read.fit), null, 2)}\n`);
    return 0;
  } catch (error) {
    const detail = error instanceof Error ? error.message : String(error);
    return refuse([say('evaluate.fault', { file: path, detail })]);
  }
}

/** The report with the smallest single change for every finding that is not good. */
function wholeReport(fit: Fit) {
  const evaluator = createEvaluator();
  const report = evaluator.evaluate(fit);
  return { ...report, suggestions: suggestionsFor(evaluator, fit, report) };
}

function refuse(lines: readonly string[]): number {
  console.error(lines.join('\n'));
  return 2;
}

process.stdout.on('error', ({ code, message }: NodeJS.ErrnoException) => {
  // A reader that closes early (`| head`) is no fault of ours; a report that could not be written is one.
  if (code === 'EPIPE') process.exit(0);
  console.error(say('evaluate.not-written', { detail: code ?? message }));
  process.exit(1);
});
await speakAsTerminal();
process.exitCode = evaluate(process.argv.slice(2));
