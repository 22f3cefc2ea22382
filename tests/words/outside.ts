import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync } from 'oxc-parser';
import { ALLOWED } from './allowed.ts';

/** A text that looks as if a person read it, in a source file. */
export interface Outside {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

type Tree = { readonly type?: string; readonly start: number; readonly end: number } & Record<
  string,
  unknown
>;

/** Properties and attributes whose text a person reads, even one word. */
const READ = new Set([
  'label',
  'title',
  'aria-label',
  'aria-description',
  'placeholder',
  'alt',
  'hint',
  'about',
  'message',
]);
/** Attributes that never hold words. */
const TECHNICAL = new Set([
  'className',
  'style',
  'd',
  'id',
  'htmlFor',
  'type',
  'href',
  'src',
  'points',
  'transform',
]);
/** Calls whose texts are for the engineer: bugs, patterns, queries. */
const FOR_ENGINEERS =
  /^(?:\w*Error|RegExp|prepare|exec|pragma|querySelector\w*|closest|matches|describe|ref|regex)$/;

/** Two words of letters with a blank between them: how a sentence, a label or a name of several words begins. */
const SEVERAL_WORDS = /\p{L}{2,}[,;:.!?’]? \(?\p{L}{1,}/u;
const SQL =
  /\b(SELECT|INSERT|UPDATE|DELETE|CREATE|PRAGMA|DROP|ISOLATION LEVEL|SET LOCAL|CONFLICT|LIKE|AS|AND|isolation level|ALTER|WHERE|FROM|SAVEPOINT|ROLLBACK|BEGIN|COMMIT|VACUUM|ATTACH|DETACH|RELEASE|ORDER BY)\b/;
/** Texts of formats that no person reads: media types, policies, media queries, commands of a shell. */
const FOR_MACHINES =
  /^[a-z_]+, [a-z_]+$|^(text|application|image)\/|^[a-z-]+-src |^attachment;|^\([a-z-]+: [a-z0-9-]+\)( and \([a-z-]+: [a-z0-9-]+\))*$|^@(page|keyframes|media)|^color-mix\(|^\{…\} sudo /;
/** A key of the catalogue, as the text of a title says it. */
const KEY = /^[a-z][\w-]*(\.[\w-]+)+$/;
const CSS = /^[\w\s.#:>~+*[\]="()-]*[.#[:][\w-]+|\bvar\(--|\bpx\b|sans-serif/;

/** Every text outside the catalogue in these folders that a person would read. */
export function textsOutside(root: string, folders: readonly string[]): Outside[] {
  return folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter(
        (name) =>
          /\.tsx?$/.test(name) &&
          !/(^|\/)(dist|node_modules)\//.test(name) &&
          !/vite\.config|\.d\.ts$/.test(name),
      )
      .sort()
      .flatMap((name) => textsOfFile(root, join(folder, name))),
  );
}

function textsOfFile(root: string, file: string): Outside[] {
  const source = readFileSync(join(root, file), 'utf8');
  const found: Outside[] = [];
  const note = (node: Tree, text: string, read: boolean) => {
    const words = text.replace(/\s+/g, ' ').trim();
    if (!isWords(words, read) || ALLOWED.some((allowed) => allowed.matches(file, words))) return;
    found.push({ file, line: source.slice(0, node.start).split('\n').length, text: words });
  };
  walk(parseSync(file, source).program as unknown as Tree, { read: false, note });
  return found;
}

function isWords(markup: string, read: boolean): boolean {
  const text = markup.replaceAll(/<[^>]*>/g, ' ').trim();
  if (SQL.test(text) || FOR_MACHINES.test(text) || KEY.test(text) || text === 'Kneelwright') return false;
  if (read) return /\p{L}{2,}/u.test(text);
  return SEVERAL_WORDS.test(text) && !CSS.test(text);
}

interface Walk {
  /** The text stands where a person reads it. */
  readonly read: boolean;
  readonly note: (node: Tree, text: string, read: boolean) => void;
}

function walk(node: Tree, at: Walk): void {
  switch (node.type) {
    case 'ImportDeclaration':
    case 'ExportAllDeclaration':
    case 'TSLiteralType':
    case 'TSTypeAliasDeclaration':
    case 'TSInterfaceDeclaration':
      return;
    case 'JSXText':
      at.note(node, node.value as string, true);
      return;
    case 'Literal':
      if (typeof node.value === 'string') at.note(node, node.value, at.read);
      return;
    case 'TemplateLiteral':
      template(node, at);
      return;
    case 'TaggedTemplateExpression':
      return;
    case 'CallExpression':
    case 'NewExpression':
      if (FOR_ENGINEERS.test(calleeName(node.callee as Tree)) || isLog(node.callee as Tree)) return;
      break;
    case 'ThrowStatement':
      return;
    // A text that something is compared with is a code.
    case 'BinaryExpression':
      if (/^[!=]==?$/.test(node.operator as string)) return;
      break;
    case 'MemberExpression':
      walk(node.object as Tree, at);
      return;
    case 'JSXAttribute': {
      const name = nameOf(node.name as Tree);
      if (TECHNICAL.has(name)) return;
      each(node, { ...at, read: READ.has(name) });
      return;
    }
    case 'Property': {
      const name = nameOf(node.key as Tree);
      if (TECHNICAL.has(name) && name !== 'id') return;
      walk(node.value as Tree, { ...at, read: READ.has(name) });
      return;
    }
  }
  each(node, { ...at, read: at.read && !/Call|Function/.test(node.type ?? '') });
}

function template(node: Tree, at: Walk): void {
  const text = (node.quasis as Tree[]).map((part) => (part.value as { cooked: string }).cooked).join('{…}');
  at.note(node, text, at.read && /\p{L}{3,}/u.test(text));
  for (const part of node.expressions as Tree[]) walk(part, at);
}

function each(node: Tree, at: Walk): void {
  for (const [name, value] of Object.entries(node)) {
    if (name === 'parent') continue;
    for (const child of Array.isArray(value) ? value : [value])
      if (child && typeof child === 'object' && 'type' in child) walk(child as Tree, at);
  }
}

/** `log.write(…)`: lines for whoever looks for a fault. */
function isLog(callee: Tree): boolean {
  return calleeName(callee) === 'write' && nameOf((callee.object ?? {}) as Tree) === 'log';
}

const nameOf = (node: Tree): string => String(node.name ?? node.value ?? '');
const calleeName = (node: Tree): string =>
  node.type === 'MemberExpression' ? nameOf(node.property as Tree) : nameOf(node);
