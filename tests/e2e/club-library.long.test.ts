import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import { type Library, openLibrary } from '../../app/library/address.ts';
import { initLibrary, invite } from '../../app/library/club.ts';
import { type LocalServer, startLocalServer } from '../../app/library/local-server.ts';
import { putNewServer } from '../app/library/new-server.ts';
import { exampleAthlete, exampleFit } from '../core/example/example-fit.ts';
import { english } from '../english.ts';
import { handlePlace, nextFrame } from './hand.ts';
import { type RunningProgram, startProgram } from './harness.ts';
import { PAD_AFT } from './open-bench.ts';
import { callFromPage, goTo, measure, shown, soon } from './screens.ts';
import { storyOf } from './story.ts';

let folder: string;
let server: LocalServer;
let owner: Library;
let programs: RunningProgram[];
let head: Page;
let coach: Page;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'kneelwright-club-'));
  chmodSync(folder, 0o711);
  await putNewServer(join(folder, 'data'));
  server = await startLocalServer(join(folder, 'data'), { safe: false });
  owner = openLibrary(server.address);
  await initLibrary(owner, 'Invented Canoe Club');
  programs = [await startProgram(), await startProgram()];
  [head, coach] = (await Promise.all(programs.map((program) => program.openBrowser({ clock: true })))) as [
    Page,
    Page,
  ];
});
afterAll(async () => {
  for (const program of programs) await program.dispose();
  await owner.end({ timeout: 0 });
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** Joins by hand: the invitation is tested, what would be shared is read, and only then anything is sent. */
async function joinAs(page: Page, guest: Parameters<typeof invite>[2]): Promise<string> {
  const { code } = await invite(owner, server.address, guest);
  await goTo(page, '#/archive');
  await page.getByLabel('Invitation').fill(code);
  await page.getByRole('button', { name: 'Test the invitation' }).click();
  const preview = page.getByRole('status').filter({ hasText: 'Joining sends:' });
  const shares = (await preview.textContent()) ?? '';
  await page.getByRole('button', { name: 'Join and share' }).click();
  await page.getByText(`Invented Canoe Club: ${guest.name}`).waitFor();
  return shares;
}

const share = async (page: Page) => callFromPage(page, 'library.call', {});

storyOf('a head coach and a coach who share a library', ({ step }) => {
  let athleteId: string;
  let fitId: string;

  step('join by invitation, having read what is sent', async () => {
    const saved = await callFromPage(head, 'athletes.save', {
      athlete: exampleAthlete({ name: 'Shared Invented' }),
    });
    athleteId = saved.id;
    const fit = exampleFit();
    const seats = fit.seats.map((seat) => ({ ...seat, athlete: saved.athlete }));
    fitId = (await callFromPage(head, 'fits.create', { fit: { ...fit, name: 'Shared fit', seats } })).id;
    expect(await joinAs(head, { name: 'Ann', role: 'head-coach' })).toMatch(/1 athlete.*1 fit/);
    expect(await joinAs(coach, { name: 'Cal', role: 'coach', groups: ['Sprinters'] })).toContain('nothing');
    expect(await callFromPage(coach, 'athletes.list', {})).toEqual([]);
  });

  step('put an athlete into a group by hand: its coach has her', async () => {
    await goTo(head, '#/athletes');
    await goTo(head, '#/archive');
    const groups = head.getByRole('region', { name: 'Groups' });
    await groups.getByLabel('New group').fill('Masters');
    await groups.getByRole('button', { name: 'Add group' }).click();
    await groups.getByText('Masters: 0 athletes').waitFor();
    await groups.getByText('Sprinters: 0 athletes').click();
    await groups.locator('details').filter({ hasText: 'Sprinters' }).getByText('Shared Invented').click();
    await groups.getByText('Sprinters: 1 athlete').waitFor();
    await soon(async () => (await callFromPage(coach, 'athletes.list', {})).length).toBe(1);
    // The coach has no groups to set.
    expect(await coach.getByRole('region', { name: 'Groups' }).count()).toBe(0);
  });

  step(
    'see who else has the fit open; what the other changes does not disturb a drag and comes after it',
    async () => {
      await goTo(coach, `#/fits/${fitId}`);
      await measure(coach, PAD_AFT).waitFor();
      await goTo(head, `#/fits/${fitId}`);
      await measure(head, PAD_AFT).waitFor();
      await head.getByText('Cal has this fit open').waitFor();
      const { x, y } = await handlePlace(coach, 'kneePad/plan');
      await coach.mouse.move(x, y);
      await coach.mouse.down();
      for (let k = 1; k <= 5; k++) await coach.mouse.move(x - 8 * k, y);
      // All moves are drawn and told before the measure is read: it must not move by itself after that.
      await nextFrame(coach);
      const held = await shown(coach, PAD_AFT);
      expect(held).not.toBe(17.5);
      const { fit } = await callFromPage(head, 'fits.open', { id: fitId });
      await callFromPage(head, 'drafts.save', { id: fitId, fit: { ...fit, notes: 'from the head coach' } });
      await share(head);
      await share(coach);
      await soon(async () => (await callFromPage(coach, 'library.state', {})).held).toEqual([fitId]);
      expect(await shown(coach, PAD_AFT)).toBe(held);
      await coach.mouse.move(x - 80, y);
      await nextFrame(coach);
      const dropped = await shown(coach, PAD_AFT);
      expect(dropped).not.toBe(held);
      await coach.mouse.up();
      await coach.getByText('Others changed this fit.').waitFor();
      await goTo(coach, '#/fits');
      await soon(async () => (await callFromPage(coach, 'fits.open', { id: fitId })).fit.notes).toBe(
        'from the head coach',
      );
      const kept = (await callFromPage(coach, 'fits.open', { id: fitId })).fit.seats[0]!.kneePad.aftM;
      expect(Math.abs(kept * 100 - dropped)).toBeLessThan(0.06);
    },
  );

  step('find what both changed in one list', async () => {
    await goTo(head, '#/fits');
    const { athlete } = await callFromPage(head, 'athletes.open', { id: athleteId });
    await callFromPage(head, 'athletes.save', { athlete: { ...athlete, massKg: 61 } });
    await callFromPage(coach, 'athletes.save', { athlete: { ...athlete, massKg: 63 } });
    await share(head);
    await share(coach);
    await goTo(coach, '#/archive');
    const list = coach.getByRole('region', { name: 'To decide' });
    await list.getByText('Shared Invented: mass').waitFor();
    await list.getByRole('button', { name: /61/ }).click();
    await list.getByText('Nothing to decide.').waitFor();
  });

  step('leave a group: the athlete leaves the coach’s computer', async () => {
    await share(coach);
    await goTo(head, '#/archive');
    const groups = head.getByRole('region', { name: 'Groups' });
    await groups.getByText('Sprinters: 1 athlete').click();
    await groups.locator('details').filter({ hasText: 'Sprinters' }).getByText('Shared Invented').click();
    await groups.getByText('Sprinters: 0 athletes').waitFor();
    await share(coach);
    await soon(async () => (await callFromPage(coach, 'athletes.list', {})).length).toBe(0);
  });

  step('read that the server is away where the groups were, and have them back with it', async () => {
    await server.stop();
    await goTo(head, '#/athletes');
    await goTo(head, '#/archive');
    const groups = head.getByRole('region', { name: 'Groups' });
    await groups.getByText('The library cannot be reached.').waitFor();
    expect(await groups.getByLabel('New group').count()).toBe(0);
    server = await startLocalServer(join(folder, 'data'), { safe: false, port: server.address.port });
    await groups.getByRole('button', { name: english.say('error.retry') }).click();
    await groups.getByLabel('New group').waitFor();
    await groups.getByText('Sprinters: 0 athletes').click();
  });

  step('leave the library and remove what came; what is one’s own stays', async () => {
    await callFromPage(coach, 'athletes.save', { athlete: exampleAthlete({ name: 'Own Invented' }) });
    const groups = head.getByRole('region', { name: 'Groups' });
    await groups.locator('details').filter({ hasText: 'Sprinters' }).getByText('Shared Invented').click();
    await groups.getByText('Sprinters: 1 athlete').waitFor();
    await share(coach);
    for (const page of [coach, head])
      await soon(async () => (await callFromPage(page, 'athletes.list', {})).length).toBe(2);
    await coach.getByRole('button', { name: 'Leave the library' }).click();
    await coach.getByRole('button', { name: 'Leave, remove others’ entries' }).click();
    await coach.getByLabel('Invitation').waitFor();
    expect((await callFromPage(coach, 'athletes.list', {})).map(({ athlete }) => athlete.name)).toEqual([
      'Own Invented',
    ]);
  });

  step('leave the library and keep what is there', async () => {
    await head.getByRole('button', { name: 'Leave the library' }).click();
    await head.getByRole('button', { name: 'Leave, keep everything' }).click();
    await head.getByLabel('Invitation').waitFor();
    expect(await callFromPage(head, 'athletes.list', {})).toHaveLength(2);
  });
});
