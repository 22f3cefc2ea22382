import { describe, expect, it } from 'vitest';
import { type ShownMass, takeHomeOf } from '../../../app/export/take-home-of-fit.ts';
import { type TakeHome, takeHomePdf } from '../../../app/export/take-home-pdf.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { PAPER_NAMES, PAPERS, type PaperName } from '../../../core/setout/paper.ts';
import { inventedFit } from '../../core/setout/invented-set-out.ts';
import { BARRED_WORDS } from '../../core/text/barred-words.ts';
import { english, englishMessages } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedJpeg } from '../invented.ts';
import { finished, inventedStamp } from './invented-stamp.ts';
import { readPdf } from './read-pdf.ts';

interface Asked {
  readonly said?: TakeHome['said'];
  readonly paper?: PaperName;
  readonly before?: Fit | null;
  readonly reason?: string;
  readonly mass?: ShownMass;
  readonly photographs?: readonly { data: string; caption: string }[];
}

/** The fit before: pad far forward and low, the strap missing, the rest hardly turned. */
function earlier(): Fit {
  const fit = inventedFit();
  const [seat] = fit.seats;
  return {
    ...fit,
    seats: [
      {
        ...seat!,
        kneePad: { ...seat!.kneePad, aftM: 0.1, heightM: 0.07 },
        rearRest: { ...seat!.rearRest, turnDeg: 2, strap: 'none' },
      },
    ],
  };
}

const NOTHING_SAID: TakeHome['said'] = { lines: [], open: false };

function printed({
  paper = 'A4',
  before = null,
  reason = '',
  said = NOTHING_SAID,
  mass = 'hidden',
  photographs = [],
}: Asked = {}) {
  const page = takeHomeOf(inventedFit(), {
    index: 0,
    before,
    reason,
    said,
    mass,
    units: 'mm',
    words: english,
    photographs,
  })!;
  const { made, steps } = finished(takeHomePdf(page, { paper, stamp: inventedStamp() }));
  const file = readPdf(made.bytes);
  const words = file.pages[0]!.texts.map(({ text }) => text).join('');
  return { page, file, words, steps, bytes: made.bytes };
}

const squeezed = (text: string) => text.replaceAll(/\s+/g, '');

describe.each(PAPER_NAMES)('the take-home page on %s', (paper) => {
  const { file, words } = printed({ paper, before: earlier(), reason: 'The bow dug in.' });

  it('is one page of that paper, standing', () => {
    expect(file.pages).toHaveLength(1);
    expect(file.pages[0]!.width).toBeCloseTo(PAPERS[paper].short, 3);
    expect(file.pages[0]!.height).toBeCloseTo(PAPERS[paper].long, 3);
  });

  it('says whose it is, what is good, what changes, why, and what to feel for', () => {
    expect(words).toContain('Žofie Łuczak');
    for (const heading of [
      english.say('athlete-page.good'),
      english.say('athlete-page.watch'),
      english.say('athlete-page.changes'),
      english.say('athlete-page.why'),
      english.say('athlete-page.feel'),
    ]) {
      expect(words).toContain(heading);
    }
    expect(squeezed(words)).toContain('Yourkneepadgoes7.5cmback.');
    expect(words).toContain('The bow dug in.');
  });

  it('keeps every word on the page', () => {
    const { texts, width, height } = file.pages[0]!;
    for (const { at } of notEmpty(texts)) {
      expect(at[0]).toBeGreaterThanOrEqual(14.9);
      expect(at[0]).toBeLessThan(width - 14.9);
      expect(at[1]).toBeGreaterThan(14.9);
      expect(at[1]).toBeLessThan(height - 14.9);
    }
  });

  it('carries the cautions', () => {
    for (const [, caution] of notEmpty(englishMessages('athlete-caution.')))
      expect(squeezed(words)).toContain(squeezed(caution));
  });
});

describe('a take-home page', () => {
  it('hides body mass unless it is turned on', () => {
    expect(printed().words).not.toMatch(/\bkg\b|\blb\b|mass|80/i);
    expect(printed({ mass: 'kg' }).words).toContain('80.0 kg');
    expect(printed({ mass: 'lb' }).words).toContain('176.4 lb');
  });

  it('has no word that an athlete may not be shown', () => {
    const words = printed({ before: earlier() }).words.toLowerCase();
    for (const word of BARRED_WORDS) expect(words).not.toMatch(new RegExp(`\\b${word}`));
  });

  it('stays one page, and says that there is more, when there is too much to say', () => {
    const long = 'A reason that goes on and on. '.repeat(66);
    const { file, words } = printed({ before: earlier(), reason: long });
    expect(file.pages).toHaveLength(1);
    for (const { at } of file.pages[0]!.texts) expect(at[1]).toBeGreaterThan(14.9);
    expect(words).toContain('A reason that goes on');
    expect(squeezed(words)).toContain(squeezed(english.say('athlete-page.more')));
    expect(squeezed(printed().words)).not.toContain(squeezed(english.say('athlete-page.more')));
  });

  it('shows before and after in one picture only when something changed', () => {
    expect(printed({ before: earlier() }).words).toContain(english.say('athlete-page.before'));
    expect(printed({ before: inventedFit() }).page.pictures.every(({ before }) => before === null)).toBe(
      true,
    );
  });

  it('begins with what was said after the last trial, and does not say that all is well while it is open', () => {
    const said = { lines: ['You said: rear toes numb', 'Not changed yet.'], open: true };
    const { words } = printed({ said });
    expect(words.indexOf(english.say('athlete-page.said'))).toBeGreaterThan(-1);
    expect(words.indexOf(english.say('athlete-page.said'))).toBeLessThan(
      words.indexOf(english.say('athlete-page.good')),
    );
    expect(squeezed(printed().words)).not.toContain(squeezed(english.say('athlete-page.said')));
  });

  it('leaves nothing out while the other column has room', () => {
    const [seat] = inventedFit().seats;
    const before = { ...inventedFit(), seats: [{ ...seat!, kneePad: { ...seat!.kneePad, aftM: 0.18 } }] };
    const lines = ['Rear toes: numb', 'Not changed yet.', 'Bow digs in', 'It was changed.'];
    const said = { lines: ['After the water you said', ...lines], open: true };
    const whole = squeezed(printed({ said, before }).words);
    for (const line of said.lines) expect(whole).toContain(squeezed(line));
    expect(whole).not.toContain(squeezed(english.say('athlete-page.more')));
  });

  it('breaks what is longer than any word: nothing lies over the other column', () => {
    const { file } = printed({ said: { lines: ['y'.repeat(300)], open: true }, before: earlier() });
    const [page] = file.pages;
    for (const { text } of page!.texts) expect(text.length).toBeLessThan(120);
    expect(
      page!.texts
        .map(({ text }) => text)
        .join('')
        .split('y').length,
    ).toBeGreaterThan(300);
  });

  it('is the same to the byte for equal input', () => {
    expect(Buffer.compare(printed({ before: earlier() }).bytes, printed({ before: earlier() }).bytes)).toBe(
      0,
    );
  });

  it('has photographs on a page of their own, in the very pixels that were sent, and only if some were', () => {
    const data = inventedJpeg().toString('base64');
    const photographs = [1, 2].map((day) => ({ data, caption: `Photograph: ready, ${day} May` }));
    const { bytes, file, words } = printed({ photographs });
    expect(file.pages).toHaveLength(2);
    expect(Buffer.from(bytes).includes(inventedJpeg())).toBe(true);
    const captions = file.pages[1]!.texts.map(({ text }) => text).join('');
    for (const { caption } of photographs) expect(squeezed(captions)).toContain(squeezed(caption));
    expect(squeezed(words)).not.toContain('Photograph');
    expect(Buffer.from(printed().bytes).includes(inventedJpeg().subarray(0, 100))).toBe(false);
  });
});
