import { loadSolidModeller, modelled, stepFile } from '../export/solids/step.ts';
import type { JobHooks, Jobs } from './job.ts';

/** Writes blocks as STEP files, one after another; the solid modeller is loaded for it. Gives their texts. */
export async function modelBlocks(
  { parts, when }: Jobs['model-blocks']['input'],
  hooks: JobHooks,
): Promise<Jobs['model-blocks']['output']> {
  const modeller = await loadSolidModeller();
  const texts: string[] = [];
  for (const { form, name } of parts) {
    hooks.goOn();
    texts.push(await stepFile(modelled(modeller, form), name, new Date(when)));
    hooks.progress(texts.length, parts.length);
  }
  return texts;
}
