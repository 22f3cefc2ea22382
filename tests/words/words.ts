import { filesOf, flawsOf, languageFolders, wordCount } from './catalogue.ts';
import { joinsIn } from './joins.ts';
import { textsOutside } from './outside.ts';

/**
 * `npm run words`: what the catalogue holds, what a language lacks, sentences that stand elsewhere, and texts joined by hand.
 * `--language de` tells of one language, `--outside` lists what stands elsewhere, `--json` closes with one line of numbers. Ends
 * with 1 where something is wrong, missing, elsewhere or joined.
 */
const root = process.cwd();
const args = process.argv.slice(2);
const only = args.includes('--language') ? args[args.indexOf('--language') + 1] : undefined;
const languages = languageFolders().filter((language) => !only || language === only);

let missing = 0;
let wrong = 0;
for (const language of languages) {
  const flaws = flawsOf(language);
  missing += flaws.missing.length;
  wrong += flaws.wrong.length;
  const words = [...filesOf(language).values()].flatMap((file) => Object.values(file)).filter(Boolean);
  const count = words.reduce((sum, text) => sum + safely(text), 0);
  console.log(`${language}: ${words.length} messages, ${count} words, ${flaws.missing.length} missing`);
  for (const flaw of flaws.wrong) console.log(`  ${flaw}`);
  if (only) for (const key of flaws.missing) console.log(`  missing ${key}`);
}

const outside = only ? [] : textsOutside(root, ['core', 'app', 'renderer']);
const joined = only ? [] : joinsIn(root, ['core', 'app', 'renderer']);
for (const { file, line, code } of joined) console.log(`joined by hand: ${file}:${line}: ${code}`);
if (args.includes('--outside'))
  for (const { file, line, text } of outside) console.log(`${file}:${line}: ${text}`);
const english = [...filesOf('en').values()].flatMap((file) => Object.values(file));
const words = [...english, ...outside.map(({ text }) => text)].reduce((sum, text) => sum + safely(text), 0);
if (args.includes('--json'))
  console.log(JSON.stringify({ languages: languages.length, words, missing, outside: outside.length }));
if (wrong > 0 || missing > 0 || outside.length > 0 || joined.length > 0) process.exitCode = 1;

function safely(text: string): number {
  try {
    return wordCount(text);
  } catch {
    return text.split(/\s+/).length;
  }
}
