import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync } from 'oxc-parser';

/** A place where a file puts said texts together by itself instead of by a message or the translator. */
export interface Join {
  readonly file: string;
  readonly line: number;
  readonly code: string;
}

type Tree = { readonly type?: string; readonly start: number; readonly end: number } & Record<
  string,
  unknown
>;

/** What gives a text that a person reads: `say`, the translator's own calls, functions named after what they write. */
const SAYS =
  /^(?:say|sayCount|unchanged|sentences|\w*(?:Text|Words|Sentence|Title)|(?:column|quantity|coordinate|fitting)Name|nameInSeat)$/;
/** Texts that are no words: a path in the document, points of a drawing, an address. */
const NO_WORDS = /^(?:points|path|svg|xml|class|css|colour|key|id|hash|plain)\w*Text$/;
/** Punctuation between two texts. */
const SEPARATOR = /^[,;:.·–—/|]\s+$|^\s+[·–—/|]\s+$|^[，、；：。·]$/u;

/** Joins that make no text of the catalogue, each with its reason. */
const ALLOWED: readonly { readonly file: RegExp; readonly why: string }[] = [
  { file: /^app\/store\/|^app\/library\/restore\.ts$/, why: 'SQL' },
  { file: /^app\/shell\/page-policy\.ts$/, why: 'a header of HTTP' },
  { file: /^app\/bundle\/write-bundle\.ts$/, why: 'JSON' },
  { file: /^app\/export\/file-name\.ts$/, why: 'parts of a file name' },
  { file: /^app\/language\/translator\.ts$/, why: 'the one helper itself' },
  { file: /^app\/library\/commands\.ts$/, why: 'a mark before a line of the terminal' },
  { file: /^core\/crew\/swap-seats\.ts$/, why: 'a message to engineers' },
  { file: /^core\/document\/schema-parts\.ts$/, why: 'names of kinds, as a schema writes them' },
];

/** What a file must hold at all for a join of texts: many files hold none of it and need not be parsed. */
const SUSPECT =
  /\.join\(\s*['"][^'"]*[,;:.·–—/|，、；：。]|(?:\bsay|sayCount|unchanged|sentences|Text|Words|Sentence|Title|Name|InSeat)\(/;

/** Every place in these folders where texts are joined by hand. */
export function joinsIn(root: string, folders: readonly string[]): Join[] {
  const all = folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name) && !/(^|\/)(dist|node_modules)\/|\.d\.ts$/.test(name))
      .sort()
      .flatMap((name) => joinsOf(join(folder, name), readFileSync(join(root, folder, name), 'utf8'))),
  );
  return all.filter(({ file }) => !ALLOWED.some((allowed) => allowed.file.test(file)));
}

/** The same for one source text. */
export function joinsOf(file: string, source: string): Join[] {
  if (!file.endsWith('x') && !SUSPECT.test(source)) return [];
  const found: Join[] = [];
  walk(parseSync(file, source).program as unknown as Tree, (node) => {
    if (!isJoin(node)) return;
    const line = source.slice(0, node.start).split('\n').length;
    found.push({ file, line, code: source.slice(node.start, node.end).replace(/\s+/g, ' ') });
  });
  return found;
}

function isJoin(node: Tree): boolean {
  switch (node.type) {
    case 'CallExpression':
      return isJoinOfTexts(node);
    case 'TemplateLiteral':
      return (
        (node.expressions as Tree[]).some(isSaid) &&
        ((node.expressions as Tree[]).length > 1 ||
          (node.quasis as Tree[]).some((part) => /\S/u.test((part.value as { cooked: string }).cooked)))
      );
    case 'BinaryExpression':
      return node.operator === '+' && [node.left, node.right].some((side) => isSaid(side as Tree));
    case 'JSXElement':
    case 'JSXFragment':
      return hasLooseMark(node.children as Tree[]);
    default:
      return false;
  }
}

/** `texts.join(', ')`: punctuation between whatever texts, or anything between texts that are said in the same call. */
function isJoinOfTexts(node: Tree): boolean {
  const callee = node.callee as Tree;
  if (callee.type !== 'MemberExpression' || nameOf(callee.property as Tree) !== 'join') return false;
  const [separator] = node.arguments as Tree[];
  if (typeof separator?.value !== 'string' || /^\n+$/.test(separator.value)) return false;
  return SEPARATOR.test(separator.value) || holds(callee.object as Tree, isSaid);
}

/** A mark or a space alone between two parts of an element: `{name}: {value}`, `{say('a')} {say('b')}`. */
function hasLooseMark(children: readonly Tree[]): boolean {
  const isPart = (child: Tree | undefined) => child?.type === 'JSXExpressionContainer';
  const isSaidPart = (child: Tree | undefined) => isPart(child) && isSaid(child!.expression as Tree);
  return children.some((child, i) => {
    const [before, after] = [children[i - 1], children[i + 1]];
    if (isSpace(child)) return isSaidPart(before) && isSaidPart(after);
    const mark = child.type === 'JSXText' && /[:;,.·–()]/u.test(child.value as string);
    return mark && (isPart(before) || isPart(after));
  });
}

/** ` ` or `{' '}` in an element. */
function isSpace(child: Tree): boolean {
  const value = child.type === 'JSXExpressionContainer' ? (child.expression as Tree).value : child.value;
  return typeof value === 'string' && /^ +$/.test(value);
}

function isSaid(node: Tree): boolean {
  if (node.type === 'ConditionalExpression')
    return isSaid(node.consequent as Tree) || isSaid(node.alternate as Tree);
  if (node.type === 'LogicalExpression') return isSaid(node.right as Tree);
  if (node.type !== 'CallExpression') return false;
  const callee = node.callee as Tree;
  const name = nameOf(callee.type === 'MemberExpression' ? (callee.property as Tree) : callee);
  return SAYS.test(name) && !NO_WORDS.test(name);
}

const holds = (node: Tree, is: (node: Tree) => boolean): boolean =>
  is(node) || childrenOf(node).some((child) => holds(child, is));

function walk(node: Tree, see: (node: Tree) => void): void {
  see(node);
  for (const child of childrenOf(node)) walk(child, see);
}

function childrenOf(node: Tree): Tree[] {
  return Object.entries(node)
    .filter(([name]) => name !== 'parent')
    .flatMap(([, value]) => (Array.isArray(value) ? value : [value]))
    .filter((child): child is Tree => child !== null && typeof child === 'object' && 'type' in child);
}

const nameOf = (node: Tree): string => String(node.name ?? node.value ?? '');
