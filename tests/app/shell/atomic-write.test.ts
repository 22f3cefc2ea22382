import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { atomicWrite } from '../../../app/shell/atomic-write.ts';
import { temporaryFolder } from '../temporary.ts';

describe('writing a file whole', () => {
  it('puts it in the place of what was there', () => {
    const path = join(temporaryFolder(), 'file');
    writeFileSync(path, 'before');
    atomicWrite(path, Buffer.from('after'));
    expect(readFileSync(path, 'utf8')).toBe('after');
    expect(existsSync(`${path}.part`)).toBe(false);
  });

  it('that fails leaves what was there, and nothing beside it', () => {
    const path = join(temporaryFolder(), 'place');
    mkdirSync(join(path, 'inside'), { recursive: true });
    expect(() => atomicWrite(path, Buffer.from('x'))).toThrow();
    expect(existsSync(join(path, 'inside'))).toBe(true);
    expect(existsSync(`${path}.part`)).toBe(false);
  });
});
