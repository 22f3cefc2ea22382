import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { notEmpty } from '../not-empty.ts';
import { filesOf, flawsOf, languageFolders, placesOf, wordCount } from './catalogue.ts';
import { joinsIn, joinsOf } from './joins.ts';
import { textsOutside } from './outside.ts';

describe('the catalogue of messages', () => {
  it('is sound ICU in every language, with the places and choices of English', () => {
    for (const language of notEmpty(languageFolders())) expect(flawsOf(language).wrong, language).toEqual([]);
  });

  it('has each key once', () => {
    const keys = [...filesOf('en').values()].flatMap((messages) => Object.keys(messages));
    expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
  });

  it('counts words as they are read: one case of a choice, no names of places', () => {
    expect(wordCount('{count, plural, one {# fit} other {# fits of {name}}}')).toBe(2);
    expect(placesOf('{side, select, left {a {by}} other {b}}')).toEqual(['by', 'side: left other']);
  });
});

describe('a measure in Hungarian', () => {
  // The reader chooses cm, mm or in, kg or lb; "3/4 in-rel" is no Hungarian. Degrees, percent and metres of a course are always the same.
  it('has no ending that would have to follow its unit', () => {
    const messages = [...filesOf('hu').values()].flatMap((one) => Object.entries(one));
    const ended = notEmpty(messages).filter(([, text]) => /\}-(?!kal|en)\p{L}/u.test(text));
    expect(ended).toEqual([]);
  });
});

describe('talk of the makers among themselves', () => {
  // A figure has a source, or it is our estimate, or common practice: nobody reads who read or remembered what.
  const INNER = /\brecalled\b|this project[’']s|low confidence|\bproject\b|we believe|as far as I/i;

  it('is in no message', () => {
    const messages = [...filesOf('en').values()].flatMap((file) => Object.entries(file));
    expect(notEmpty(messages).filter(([, text]) => INNER.test(text))).toEqual([]);
  });

  it('is found where it stands', () => {
    expect(INNER.test('50–65 (this project’s reading, low confidence)')).toBe(true);
    expect(INNER.test('50–65 (our estimate)')).toBe(false);
  });

  it('is in no comment of what is computed', () => {
    const sources = notEmpty(readdirSync('core', { recursive: true, encoding: 'utf8' })).filter((name) =>
      name.endsWith('.ts'),
    );
    const told = /\brecalled\b|this project[’']s reading|low confidence/i;
    expect(sources.filter((name) => told.test(readFileSync(`core/${name}`, 'utf8')))).toEqual([]);
  });
});

describe('sentences outside the catalogue', () => {
  it('are found: labels, sentences and joined texts, and not what is for the machine', () => {
    const root = `${import.meta.dirname}/samples`;
    expect(textsOutside(root, ['.']).map(({ text }) => text)).toEqual([
      'Knee pad',
      'The boat floats.',
      '{…} is too long',
    ]);
  });
});

describe('texts joined by hand', () => {
  it.each([
    "say('boat.name') + name",
    `\`\${say('boat.name')}: \${name}\``,
    "names.join(', ')",
    "[say('a'), say('b')].join('')",
    '<p>{name}: {value}</p>',
    "<p>{say('a')} {say('b')}</p>",
  ])('are found: %s', (code) => {
    expect(joinsOf('sample.tsx', code)).toHaveLength(1);
  });

  it.each([
    "say('sheet.labelled', { label, text })",
    'words().row(names)',
    "[say('a'), say('b')].join('\\n')",
    `\`\${id}-hint\``,
    "<p>{say('a')} <b>{name}</b></p>",
  ])('are not: %s', (code) => {
    expect(joinsOf('sample.tsx', code)).toEqual([]);
  });

  it('stand nowhere in the program', () => {
    expect(joinsIn(process.cwd(), ['core', 'app', 'renderer'])).toEqual([]);
  });
});
