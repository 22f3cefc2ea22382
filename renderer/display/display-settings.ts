import { createStore } from 'zustand/vanilla';
import { DISPLAY_DEFAULTS, type DisplayRecord } from '../../app/contract/display.ts';

/** How one person likes to see things. The program keeps it, beside the store; it changes no fit. */
export type DisplaySettings = DisplayRecord;

/** The settings that hold now: the defaults until what was kept has been read. */
export const displaySettings = createStore<DisplaySettings>(() => DISPLAY_DEFAULTS);
