import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type MessageFormatElement, parse, TYPE } from '@formatjs/icu-messageformat-parser';

const ROOT = join(import.meta.dirname, '../../assets/messages');

/** One language's messages by file and key, as they stand on the disk. */
export type Files = ReadonlyMap<string, Readonly<Record<string, string>>>;

/** The languages that have a folder. */
export function languageFolders(): string[] {
  return readdirSync(ROOT).sort();
}

/** Reads a language's files. */
export function filesOf(language: string): Files {
  const names = readdirSync(join(ROOT, language)).filter((name) => name.endsWith('.json'));
  return new Map(names.map((name) => [name, JSON.parse(readFileSync(join(ROOT, language, name), 'utf8'))]));
}

/** Words of a message as it is read: runs of letters, of one case where it chooses; names of places are none, nor `@key`. */
export function wordCount(text: string): number {
  if (text.startsWith('@')) return 0;
  return (spokenPart(text, true).match(/\p{L}[\p{L}\p{M}’'-]*/gu) ?? []).length;
}

/** A message's text without the names of its places: every case of a choice, or the last alone. */
export function spokenPart(text: string, oneCase = false): string {
  const parts: string[] = [];
  const see = (element: MessageFormatElement) => {
    if (element.type === TYPE.literal) parts.push(element.value);
  };
  walk(parse(text, { ignoreTag: true }), see, oneCase);
  return parts.join(' ');
}

/** The places of a message with how each is used, and for a choice its cases: what every language must agree on. */
export function placesOf(text: string): string[] {
  const places = new Set<string>();
  walk(parse(text, { ignoreTag: true }), (element) => {
    if (element.type === TYPE.argument || element.type === TYPE.number) places.add(element.value);
    if (element.type === TYPE.plural) places.add(`${element.value}`);
    if (element.type === TYPE.select)
      places.add(`${element.value}: ${Object.keys(element.options).sort().join(' ')}`);
  });
  return [...places].sort();
}

function walk(
  elements: readonly MessageFormatElement[],
  see: (element: MessageFormatElement) => void,
  oneCase = false,
): void {
  for (const element of elements) {
    see(element);
    if (element.type !== TYPE.plural && element.type !== TYPE.select) continue;
    const options = Object.values(element.options);
    for (const { value } of oneCase ? options.slice(-1) : options) walk(value, see, oneCase);
  }
}

/** A text, or the text of the message that `@key` names; null where there is none, or it is itself another's. */
function ownText(text: string, files: Files): string | null {
  if (!text.startsWith('@')) return text;
  const found = [...files.values()].find((messages) => text.slice(1) in messages)?.[text.slice(1)];
  return found === undefined || found.startsWith('@') ? null : found;
}

/** What is wrong with a language against English: syntax, places, keys that English has not. */
export function flawsOf(language: string): { missing: string[]; wrong: string[] } {
  const english = filesOf('en');
  const files = filesOf(language);
  const missing: string[] = [];
  const wrong: string[] = [];
  for (const [name, messages] of english) {
    const own = files.get(name) ?? {};
    for (const [key, text] of Object.entries(messages)) {
      const translated = own[key];
      if (translated === undefined || translated.trim() === '') missing.push(`${name}: ${key}`);
      else {
        const flaws = flawsOfMessage(ownText(text, english), ownText(translated, files));
        wrong.push(...flaws.map((flaw) => `${name}: ${key}: ${flaw}`));
      }
    }
    for (const key of Object.keys(own)) if (!(key in messages)) wrong.push(`${name}: ${key}: not in English`);
  }
  for (const name of files.keys()) if (!english.has(name)) wrong.push(`${name}: no such file in English`);
  return { missing, wrong };
}

function flawsOfMessage(english: string | null, text: string | null): string[] {
  if (english === null || text === null) return ['names no text of the catalogue'];
  try {
    const [want, have] = [placesOf(english), placesOf(text)];
    return want.join() === have.join()
      ? []
      : [`has {${have.join('}, {')}}; English has {${want.join('}, {')}}`];
  } catch (error) {
    return [`not an ICU message: ${error instanceof Error ? error.message : error}`];
  }
}
