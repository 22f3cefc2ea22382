import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { launchTestBrowser } from '../test-browser.ts';
import { contactSheet, type SheetOptions } from './figure-sheet.ts';

const OUT = join(import.meta.dirname, '../../../assets/screens/figures');
const PER_METRE = 120;

/** Every sheet: three views in both themes, and the side in grey as a printer has it. */
const SHEETS: readonly (SheetOptions & { readonly name: string })[] = [
  ...(['light', 'dark'] as const).flatMap((theme) =>
    (['side', 'behind', 'above'] as const).map((view) => ({
      name: `${view}-${theme}`,
      view,
      theme,
      perMetre: PER_METRE,
    })),
  ),
  { name: 'side-grey', view: 'side', theme: 'light', perMetre: PER_METRE, grey: true },
];

/** Contact sheets of the figure: twelve bodies, five instants of the stroke, both sides. */
export async function takeFigures(): Promise<void> {
  mkdirSync(OUT, { recursive: true });
  const browser = await launchTestBrowser();
  try {
    for (const { name, ...options } of SHEETS) {
      const { svg, width, height } = contactSheet(options);
      const page = await browser.newPage({
        viewport: { width: Math.ceil(width), height: Math.ceil(height) },
      });
      await page.setContent(`<body style="margin:0">${svg}</body>`);
      await page.screenshot({ path: join(OUT, `${name}.png`) });
      await page.close();
      console.log(`figures/${name}.png`);
    }
  } finally {
    await browser.close();
  }
}
