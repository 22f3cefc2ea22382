import messages from '../../assets/messages/en/archive.json' with { type: 'json' };
import type { Fit } from '../../core/document/fit-schema.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { suggestionsFor } from '../../core/evaluation/suggestions.ts';
import { readFit } from './read-fit.ts';

/** Units, places and every field of a fit's file, as the Help page has them. */
function fieldsText(): string {
  const named = Object.entries(messages).filter(([key]) => key.startsWith('help.files.fields.'));
  const lines = named.map(([key, fields]) => {
    const part = key.replace('.fields.', '.part.') as keyof typeof messages;
    return `  ${messages[part]}: ${fields}`;
  });
  return [messages['help.files.units'], messages['help.files.frame'], '', ...lines].join('\n');
}

const HELP = `Evaluates one fit and prints the whole report as JSON.

  npm run -s evaluate -- FILE.json

FILE.json holds one fit. Exit 0 with the report on standard output, or exit 2 with one
line per problem on standard error, or exit 1 where the report could not be written.

${fieldsText()}`;

/** Runs the command; gives its exit code. */
function evaluate(args: readonly string[]): number {
  if (args.includes('--help') || args.includes('-h')) {
    console.log(HELP);
    return 0;
  }
  const [path, ...rest] = args;
  if (path === undefined) return refuse(['no file was named; needed is the path of one fit as JSON']);
  if (rest.length > 0) return refuse([`${rest.length + 1} arguments were given; needed is one file`]);
  if (path.startsWith('-')) return refuse([`${path}: is not known here; allowed is --help or one file`]);
  const read = readFit(path);
  if (read.kind === 'refused') return refuse(read.lines);
  try {
    process.stdout.write(`${JSON.stringify(wholeReport(read.fit), null, 2)}\n`);
    return 0;
  } catch (error) {
    const detail = error instanceof Error ? error.message : String(error);
    return refuse([
      `${path}: cannot be evaluated (${detail}); this is a fault of the program, please report it`,
    ]);
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
  console.error(
    `the report could not be written (${code ?? message}); free some space or choose another place`,
  );
  process.exit(1);
});
process.exitCode = evaluate(process.argv.slice(2));
