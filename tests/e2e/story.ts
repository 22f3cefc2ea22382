import { it } from 'vitest';

/** What is done, one after another, in one test. */
export interface Story {
  /** One part of it, by what it shows. */
  readonly step: (name: string, run: () => Promise<void>) => void;
}

/**
 * One test of many steps, each building on those before: a story that starts from nothing. What goes wrong names its step.
 */
export function storyOf(name: string, tell: (story: Story) => void): void {
  const steps: { name: string; run: () => Promise<void> }[] = [];
  tell({ step: (what, run) => steps.push({ name: what, run }) });
  it(name, async () => {
    for (const { name: what, run } of steps) {
      try {
        await run();
      } catch (error) {
        if (error instanceof Error) error.message = `${what}: ${error.message}`;
        throw error;
      }
    }
  });
}
