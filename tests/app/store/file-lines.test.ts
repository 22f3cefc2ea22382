import { closeSync, openSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { fileLines } from '../../../app/store/file-lines.ts';
import { temporaryFolder } from '../temporary.ts';

it('reads a file line by line, whether lines are shorter or longer than what is read at once', () => {
  const path = join(temporaryFolder(), 'lines');
  const lengths = [0, 5, 262_143, 1, 262_144, 900_000, 0, 262_145, 30];
  const lines = lengths.map((length, i) => String(i).repeat(length));
  writeFileSync(path, `${lines.join('\n')}\nnot ended`);
  const handle = openSync(path, 'r');
  let at = 0;
  const read = [...fileLines(handle)].map((line) => line.at);
  const texts: string[] = [];
  for (const { bytes, isEnded } of fileLines(handle)) texts.push(`${bytes}${isEnded ? '' : '…'}`);
  closeSync(handle);
  expect(texts).toEqual([...lines, 'not ended…']);
  const begins = [...lines, ''].map((line) => {
    const begin = at;
    at += line.length + 1;
    return begin;
  });
  expect(read).toEqual(begins);
});
