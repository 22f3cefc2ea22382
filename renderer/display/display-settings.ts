import { createStore } from 'zustand/vanilla';

export type ThemeChoice = 'system' | 'light' | 'dark';
export type LengthChoice = 'cm' | 'mm' | 'in';
export type MassChoice = 'kg' | 'lb';
/** How numbers are written: as the computer's own language does, or with this decimal mark. */
export type DecimalChoice = 'system' | 'point' | 'comma';

/** How one person likes to see things. Kept in the page's own storage; it changes no fit. */
export interface DisplaySettings {
  readonly theme: ThemeChoice;
  readonly length: LengthChoice;
  readonly mass: MassChoice;
  readonly decimal: DecimalChoice;
}

const CHOICES: { readonly [K in keyof DisplaySettings]: readonly DisplaySettings[K][] } = {
  theme: ['system', 'light', 'dark'],
  length: ['cm', 'mm', 'in'],
  mass: ['kg', 'lb'],
  decimal: ['system', 'point', 'comma'],
};

const DEFAULTS: DisplaySettings = { theme: 'system', length: 'cm', mass: 'kg', decimal: 'system' };
const STORED_AS = 'kneelwright.display';

/** Reads what was stored, taking only what is still a choice; anything else falls back to the default. */
export function readSettings(stored: string | null): DisplaySettings {
  let found: Record<string, unknown> = {};
  try {
    found = (JSON.parse(stored ?? '{}') ?? {}) as Record<string, unknown>;
  } catch {
    return DEFAULTS;
  }
  const pick = <K extends keyof DisplaySettings>(key: K): DisplaySettings[K] =>
    CHOICES[key].find((choice) => choice === found[key]) ?? DEFAULTS[key];
  return { theme: pick('theme'), length: pick('length'), mass: pick('mass'), decimal: pick('decimal') };
}

/** A page whose storage is shut still works; it only forgets. */
function stored(): string | null {
  try {
    return globalThis.localStorage?.getItem(STORED_AS) ?? null;
  } catch {
    return null;
  }
}

export const displaySettings = createStore<DisplaySettings>(() => readSettings(stored()));

displaySettings.subscribe((settings) => {
  try {
    globalThis.localStorage?.setItem(STORED_AS, JSON.stringify(settings));
  } catch {
    // Forgetting the choice is all that happens.
  }
});
