import { describe, expect, it } from 'vitest';
import { athletes } from '../../../app/store/roster.ts';
import { searchText } from '../../../app/store/search-text.ts';
import { inventedAthlete } from '../invented.ts';
import { temporaryStore } from '../temporary.ts';

const NAMES = [
  'Łukasz Žďár',
  'Øyvind Ångstrøm',
  'Ægir Þórsson',
  'Ştefan Ğüven',
  'Νεφέλη Ρεματάκη',
  'Мирослав Вербинчук',
];

describe('the form in which names are searched', () => {
  it.each([
    ['Łukasz Žďár', 'lukasz zdar'],
    ['Øyvind Ångstrøm', 'oyvind angstrom'],
    ['Ægir Þórsson', 'aegir thorsson'],
    ['Straßer', 'strasser'],
    ['İsmail Işık', 'ismail isik'],
    ['Νεφέλη', 'νεφελη'],
    ['ﬁnn', 'finn'],
  ])('of %s is %s', (name, plain) => {
    expect(searchText(name)).toBe(plain);
  });

  it('finds every name by itself, in any case, composed or not', () => {
    const store = temporaryStore();
    for (const name of NAMES) athletes.save(store, inventedAthlete(name));
    const find = (search: string) =>
      athletes
        .list(store, { archived: false, search, limit: 50, offset: 0 })
        .map(({ athlete }) => athlete.name);
    for (const name of NAMES) {
      for (const form of [name, name.toUpperCase(), name.normalize('NFD'), searchText(name)]) {
        expect(find(form), form).toEqual([name]);
      }
    }
  });

  it('pages through a list without leaving one out or naming one twice', () => {
    const store = temporaryStore();
    for (let i = 0; i < 25; i++) athletes.save(store, inventedAthlete(i % 2 ? 'Same Name' : `Name ${i}`));
    const pages = [0, 10, 20].flatMap((offset) =>
      athletes.list(store, { archived: false, search: '', limit: 10, offset }).map(({ id }) => id),
    );
    expect(new Set(pages).size).toBe(25);
  });
});
