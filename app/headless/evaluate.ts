import { evaluateFit } from '../../core/fit/evaluator.ts';
import { readFit } from './read-fit.ts';

const HELP = `Evaluates one fit and prints the whole report as JSON.

  npm run -s evaluate -- FILE.json

FILE.json holds one fit; README.md says how it is written. Exit 0 with the report on standard output, or exit 2 with one
line per problem on standard error.`;

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
  process.stdout.write(`${JSON.stringify(evaluateFit(read.fit), null, 2)}\n`);
  return 0;
}

function refuse(lines: readonly string[]): number {
  console.error(lines.join('\n'));
  return 2;
}

process.exitCode = evaluate(process.argv.slice(2));
