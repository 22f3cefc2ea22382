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
