import { describe, expect, it } from 'vitest';
import { scriptRuns } from '../../../app/language/script-runs.ts';

const marked = (text: string, reader: 'en' | 'zh' = 'en') =>
  scriptRuns(text, reader)
    .filter(({ lang }) => lang !== null)
    .map(({ text: run, lang }) => `${lang}:${run.trim()}`);

// Tags: BCP 47 (RFC 5646); scripts: ISO 15924 as Unicode names them.
describe('names in other scripts', () => {
  it('are marked by the language that their script is sure of, else by the script', () => {
    expect(marked('ანა Nagy 김민수 李娜 Анна Ελένη Անի')).toEqual([
      'ka:ანა',
      'ko:김민수',
      'und-Hani:李娜',
      'und-Cyrl:Анна',
      'el:Ελένη',
      'hy:Անի',
    ]);
  });

  it('with kana are Japanese; Han alone is a Chinese reader’s own', () => {
    expect(marked('山田ゆき')).toEqual(['ja:山田ゆき']);
    expect(marked('李娜', 'zh')).toEqual([]);
  });

  it('stay whole: runs together are the text', () => {
    for (const text of ['', 'Zoë Ágoston', 'C1 李娜, 2 m', '7 ანა'])
      expect(
        scriptRuns(text, 'en')
          .map(({ text: run }) => run)
          .join(''),
      ).toBe(text);
  });
});
