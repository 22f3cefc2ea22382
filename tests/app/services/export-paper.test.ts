import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { createLoopbackShell } from '../../../app/loopback/loopback-shell.ts';
import { dispatch } from '../../../app/services/dispatch.ts';
import type { Program } from '../../../app/services/program.ts';
import { atomicWrite } from '../../../app/shell/atomic-write.ts';
import type { Shell } from '../../../app/shell/shell.ts';
import { TEMPLATE_IDS } from '../../../core/setout/template-ids.ts';
import { readPdf, wordsOf } from '../export/read-pdf.ts';
import { inventedAthlete, inventedFit } from '../invented.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFolder } from '../temporary.ts';

/** What a revision is called on every computer. */
const MARK = 'K7P2M';
const REVISION = { number: 3, name: 'pad back', mark: MARK, keptAt: '2026-05-04T16:20:00Z' };
const WANTED = {
  sheet: { kind: 'set-out-sheet', seat: 0, paper: 'A4' },
  templates: { kind: 'templates', seat: 0, format: 'pdf', templates: [...TEMPLATE_IDS], paper: 'A4' },
  takeHome: { kind: 'take-home', seat: 0, paper: 'A4', before: null },
} as const;

/** A shell whose person always chooses the same place, as the desktop's does once the dialog is answered. */
function shellInto(place: (name: string) => string): Shell {
  return {
    ...createLoopbackShell(() => {}),
    async deliver(file) {
      const path = place(file.name);
      if ('bytes' in file) atomicWrite(path, file.bytes);
      return { kind: 'saved', path };
    },
  };
}

function opened(shell: Shell): { program: Program; close(): void } {
  const result = openedProgram(temporaryFolder(), { shell });
  return result;
}

const asked = (wanted: object, fit = inventedFit()) => ({ fit, revision: REVISION, wanted });

interface Exported {
  readonly delivery: { readonly kind: string; readonly path: string };
  readonly unprintable: string[];
}

async function exportedTo(folder: string, wanted: object, fit = inventedFit()) {
  const { program, close } = opened(shellInto((name) => join(folder, name)));
  const result = await dispatch(program, 'paper.export', asked(wanted, fit));
  close();
  if (!result.ok) throw new Error(result.error.message);
  const { delivery, unprintable } = result.value as Exported;
  return { path: delivery.path, bytes: readFileSync(delivery.path), unprintable };
}

describe('an export', () => {
  it.each([
    ['set-out sheet', WANTED.sheet, 'Workshop sheet, Žofie Łęcka, Grey Heron, revision 3 K7P2M.pdf'],
    ['templates', WANTED.templates, 'Templates, Žofie Łęcka, Grey Heron, revision 3 K7P2M.pdf'],
    ['take-home page', WANTED.takeHome, 'For the athlete, Žofie Łęcka, Grey Heron, revision 3 K7P2M.pdf'],
  ])(
    '%s is one whole file, named for whom and what, its revision by its mark on every page',
    async (_, wanted, name) => {
      const folder = temporaryFolder();
      const { bytes, path } = await exportedTo(folder, wanted);
      expect(path).toBe(join(folder, name));
      expect(readdirSync(folder)).toEqual([name]);
      const { pages } = readPdf(bytes);
      expect(pages.length).toBeGreaterThan(0);
      for (const page of pages) expect(wordsOf(page)).toContain(MARK);
    },
  );

  it('gives equal bytes for equal input, whenever it is made', async () => {
    for (const wanted of [WANTED.sheet, WANTED.takeHome, { ...WANTED.templates, format: 'svg' }]) {
      const [a, b] = [
        await exportedTo(temporaryFolder(), wanted),
        await exportedTo(temporaryFolder(), wanted),
      ];
      expect(Buffer.compare(a.bytes, b.bytes)).toBe(0);
    }
  });

  it.each(['svg', 'dxf'])(
    'hands several %s drawings over in one archive, one alone as itself',
    async (format) => {
      const all = await exportedTo(temporaryFolder(), { ...WANTED.templates, format });
      const names = Object.keys(unzipSync(new Uint8Array(all.bytes)));
      expect(all.path).toMatch(/\.zip$/);
      // All but the front wedge and the ends to scribe: this foot stands flat and these bases stay square.
      expect(names.length).toBe(TEMPLATE_IDS.length - 3);
      for (const name of names) expect(name).toMatch(new RegExp(`\\.${format}$`));
      const one = await exportedTo(temporaryFolder(), {
        ...WANTED.templates,
        format,
        templates: ['pad-recess'],
      });
      expect(one.path).toMatch(new RegExp(`Knee pad recess.*\\.${format}$`));
      expect(one.bytes.toString('utf8')).toContain(MARK);
    },
  );

  it.each(['3mf', 'stl'])('hands solids over as %s, one file a part', async (format) => {
    const { bytes, path } = await exportedTo(temporaryFolder(), { kind: 'solids', seat: 0, format });
    const files = unzipSync(new Uint8Array(bytes));
    expect(path).toMatch(/Solids, .*\.zip$/);
    expect(Object.keys(files).length).toBe(2);
    for (const [name, content] of Object.entries(files)) {
      expect(name).toMatch(new RegExp(`(Pad block|Rear rest), (left|right) knee.*\\.${format}$`));
      expect(content.length).toBeGreaterThan(500);
    }
  });

  it('names a script that it cannot print, and still makes the page', async () => {
    const fit = inventedFit({ athlete: inventedAthlete('अमृता Lee') });
    const { unprintable, bytes } = await exportedTo(temporaryFolder(), WANTED.takeHome, fit);
    expect(unprintable).toEqual(['Devanagari']);
    expect(wordsOf(readPdf(bytes).pages[0]!)).toContain('Lee');
  });
});

describe('a boat’s sections', () => {
  it.each(['pdf', 'svg', 'dxf'])(
    'come at full size as %s, and not for a boat that is gone',
    async (format) => {
      const folder = temporaryFolder();
      const { program, close } = opened(shellInto((name) => join(folder, name)));
      const saved = await dispatch(program, 'boats.save', { boat: inventedFit().boat });
      const { id } = (saved as { value: { id: string } }).value;
      const result = await dispatch(program, 'boats.sections', { id, format, paper: 'A4' });
      expect(result).toMatchObject({ ok: true, value: { kind: 'saved' } });
      expect(readdirSync(folder)[0]).toMatch(new RegExp(`^Sections, full size, .*\\.${format}$`));
      const gone = await dispatch(program, 'boats.sections', {
        id: crypto.randomUUID(),
        format,
        paper: 'A4',
      });
      expect(gone).toMatchObject({ ok: false, error: { code: 'not-found' } });
      close();
    },
  );
});

describe('an export that cannot be', () => {
  it.each([0, 3])('says that nobody kneels there (seat %i)', async (seat) => {
    const { program, close } = opened(shellInto(() => '/nowhere'));
    const fit = inventedFit({ athlete: null });
    const result = await dispatch(program, 'paper.export', asked({ ...WANTED.sheet, seat }, fit));
    expect(result).toMatchObject({ ok: false, error: { code: 'not-found' } });
    close();
  });

  /** Each sentence says that there is no file now. */
  const NO_FILE = /not written|could not be written|no file was made|choose another/i;

  const FAILURES = [
    ['the folder is gone', (folder: string) => join(folder, 'gone', 'x.pdf')],
    ['the place is a file', (folder: string) => join(folder, 'kept.txt', 'x.pdf')],
    ['the place is a folder that is not empty', (folder: string) => join(folder, 'full')],
    ['the name is too long', (folder: string) => join(folder, 'x'.repeat(400))],
  ] as const;

  it.each(FAILURES)('when %s leaves no half file and says why', async (_, place) => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'kept.txt'), 'kept');
    mkdirSync(join(folder, 'full'));
    writeFileSync(join(folder, 'full', 'inside.txt'), 'inside');
    const before = readdirSync(folder, { recursive: true }).sort();
    const { program, close } = opened(shellInto(() => place(folder)));
    const result = await dispatch(program, 'paper.export', asked(WANTED.sheet));
    close();
    expect(readdirSync(folder, { recursive: true }).sort()).toEqual(before);
    expect(readFileSync(join(folder, 'kept.txt'), 'utf8')).toBe('kept');
    if (result.ok) throw new Error('it must be refused');
    expect(result.error.message).toMatch(NO_FILE);
  });

  it.each([
    ['ENOSPC', 'disk-full'],
    ['EROFS', 'read-only'],
    ['EIO', 'internal'],
  ])('when the disk says %s is refused as %s with a sentence', async (code, refusal) => {
    const shell = {
      ...shellInto(() => ''),
      deliver: () => Promise.reject(Object.assign(new Error(code), { code })),
    };
    const { program, close } = opened(shell);
    const result = await dispatch(program, 'paper.export', asked(WANTED.takeHome));
    close();
    expect(result).toMatchObject({ ok: false, error: { code: refusal } });
    expect(JSON.stringify(result)).toMatch(NO_FILE);
  });
});

describe('a long export', () => {
  it('says how far it is, stops when asked, and has then written nothing', async () => {
    const folder = temporaryFolder();
    const { program, close } = opened(shellInto((name) => join(folder, name)));
    const going = dispatch(program, 'paper.export', asked(WANTED.templates));
    while (!program.work.progress()?.done) await new Promise((resolve) => setImmediate(resolve));
    const progress = program.work.progress()!;
    expect(progress.what).toBe('export');
    expect(progress.of).toBeGreaterThan(5);
    expect(progress.done).toBeLessThan(progress.of);
    expect(program.work.cancel()).toBe(true);
    expect(await going).toMatchObject({ ok: false, error: { code: 'cancelled' } });
    expect(readdirSync(folder)).toEqual([]);
    expect(program.work.progress()).toBeNull();
    const again = await dispatch(program, 'paper.export', asked(WANTED.sheet));
    expect(again.ok).toBe(true);
    expect(existsSync(join(folder, readdirSync(folder)[0]!))).toBe(true);
    close();
  });
});
