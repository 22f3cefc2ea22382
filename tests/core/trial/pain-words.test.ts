import { describe, expect, it } from 'vitest';
import { saidOfPain, speaksOfPain } from '../../../core/trial/pain-words.ts';

describe('pain in free text', () => {
  it.each([
    'Her knee hurts on the pad',
    'Painful after twenty minutes',
    'rear foot ASLEEP',
    'pins and needles in the toes',
    'lower back aches',
    'a swollen ankle',
    'Toes went numb. Bow fine.',
    'No wind. Tingling in the left foot.',
    'Not much wind, but sharp stabs in the hip',
  ])('is heard: %s', (text) => {
    expect(speaksOfPain(text)).toBe(true);
  });

  it.each([
    '',
    'Bow digs in at pace',
    'No pain at all',
    'without any pain',
    'not numb any more',
    'He never hurt himself',
    'She reached the bank',
    'a teacher watched from the beach',
  ])('is not heard: %s', (text) => {
    expect(speaksOfPain(text)).toBe(false);
  });

  it.each([
    'no pain or numbness',
    'no pain and no tingling either',
    'The pain is gone',
    'pain-free all session',
    'I did not feel any pain',
    'Keine Schmerzen, alles gut',
    'Das Knie tut nicht weh',
    'schmerzfrei bis zum Ende',
    'weder taub noch geschwollen? nein, nichts taub',
    'Nem fáj semmi',
    'fájdalom nélkül',
    'nincs zsibbadás',
    'Sin dolor',
    'No me duele nada',
    'ningún hormigueo',
    'Nie boli',
    'bez bólu i drętwienia',
    'brak bólu',
    '不疼',
    '没有任何疼痛',
    '膝盖不麻',
    '有点麻烦',
  ])('is not heard where it is denied: %s', (text) => {
    expect(speaksOfPain(text)).toBe(false);
  });

  it.each([
    'not only pain but tingling too',
    'It did not stop hurting',
    'Kein Wind. Zehen taub.',
    'Das Knie tut weh',
    'Der Fuß ist eingeschlafen',
    'Kribbeln im Fuß',
    'Fáj a térdem',
    'elzsibbadt a lábfejem',
    'Görcsöt kaptam',
    'Me duele la rodilla',
    'hormigueo en los dedos',
    'El pie se adormece',
    'Boli mnie kolano',
    'stopa mi zdrętwiała',
    'skurcz w udzie',
    '膝盖疼',
    '脚趾发麻',
    '没有风，脚趾发麻',
    '脚没有知觉',
  ])('is heard in every language: %s', (text) => {
    expect(speaksOfPain(text)).toBe(true);
  });

  it.each([
    'Der Bug ist zu tief',
    'el barco va bien',
    'dobre tempo',
    'gyors volt a hajó',
    '船头太低',
    'bolted down well',
  ])('is not heard in what speaks of something else: %s', (text) => {
    expect(saidOfPain(text)).toBeNull();
  });

  it.each([
    'a bit stiff',
    'etwas steif',
    'kicsit kényelmetlen',
    'algo incómodo',
    'trochę niewygodnie',
    '有点不舒服',
  ])('may be meant: %s', (text) => {
    expect(saidOfPain(text)).toBe('perhaps');
  });
});
