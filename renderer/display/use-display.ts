import { useStore } from 'zustand';
import { type Format, formatFor } from '../../app/language/format.ts';
import type { Language } from '../../app/language/languages.ts';
import { words } from '../language/messages.ts';
import { type DisplaySettings, displaySettings } from './display-settings.ts';

/** How the person likes to see things; the component is drawn again when that changes. */
export function useDisplay(): DisplaySettings {
  return useStore(displaySettings);
}

/** How numbers are written now. */
export function useFormat(): Format {
  return formatFor(useDisplay(), words().language);
}

/** How numbers are written in a language: for what the athlete reads. */
export function useFormatIn(language: Language): Format {
  return formatFor(useDisplay(), language);
}

/** The same outside React, for the drawing. */
export function currentFormat(): Format {
  return formatFor(displaySettings.getState(), words().language);
}
