import { afterEach, describe, expect, it } from 'vitest';
import { speak } from '../../../app/language/spoken.ts';
import { matchingActions } from '../../../renderer/find/matching.ts';
import { usualActions } from '../../../renderer/find/usual-actions.ts';

afterEach(() => speak('en'));

describe('the finder knows what things are called', () => {
  it.each([
    ['photo', 'boats'],
    ['delete', 'athletes'],
    ['delete', 'archive'],
    ['csv', 'athletes-table'],
    ['excel', 'athletes-table'],
    ['dark', 'paper-dark'],
    ['knee hurts', 'hurts'],
    ['restore', 'archive'],
  ])('%s leads to %s', (text, id) => {
    expect(matchingActions(usualActions(), text).map((action) => action.id)).toContain(id);
  });

  /** Photograph, delete, table, dark, a knee that hurts: as coaches say it. */
  it.each([
    ['en', ['photos', 'delete', 'csv', 'dark', 'my knee hurts']],
    ['de', ['Fotos', 'löschen', 'CSV', 'dunkel', 'Knie tut weh']],
    ['de', ['Bild', 'entfernen', 'Tabelle', 'Nacht', 'Knie schmerzt']],
    ['hu', ['fotó', 'törlés', 'csv', 'sötét', 'fáj a térdem']],
    ['es', ['fotos', 'borrar', 'csv', 'oscuro', 'me duele la rodilla']],
    ['pl', ['zdjęcie', 'usuń', 'csv', 'ciemny', 'boli mnie kolano']],
    ['zh', ['照片', '删除', 'csv', '深色', '膝盖 疼']],
  ] as const)('in %s: %s', async (language, [photo, erase, table, dark, hurts]) => {
    await speak(language);
    const found = (text: string) => matchingActions(usualActions(), text).map((action) => action.id);
    expect(found(photo)).toContain('boats');
    expect(found(erase)).toContain('athletes');
    expect(found(table)).toContain('athletes-table');
    expect(found(dark)).toContain('paper-dark');
    expect(found(hurts)).toContain('hurts');
  });

  it('what is called so comes before what is only looked for by it', () => {
    expect(matchingActions(usualActions(), 'athletes')[0]!.id).toMatch(/^athletes/);
  });
});
