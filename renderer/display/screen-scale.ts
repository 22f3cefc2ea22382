import type { DisplaySettings } from './display-settings.ts';

/** A bank card, driving licence or club card, millimetres: ISO/IEC 7810, size ID-1. */
export const CARD_MM = { width: 85.6, height: 53.98, corner: 3.18 } as const;

/** What a browser takes a millimetre to be, pixels: 96 to the inch (CSS Values, absolute lengths). True of few screens. */
export const ASSUMED_PIXELS_PER_MM = 96 / 25.4;

/** Scales that a screen may have, pixels to a millimetre: a projector to a pocket telephone. */
export const SCALE_LIMITS = { least: 1, most: 40 } as const;

/** The most screens that are kept; the one measured longest ago is dropped first. */
const MOST_SCREENS = 16;

/** Size and density of the screen that the page is on: what tells one of a computer's screens from another. */
export function screenName(): string {
  const { width, height } = window.screen;
  return `${width} × ${height} at ${Number(window.devicePixelRatio.toFixed(3))}`;
}

/** CSS pixels to a millimetre of a screen that was measured; null for one that was not. */
export function scaleOf({ screens }: Pick<DisplaySettings, 'screens'>, screen: string): number | null {
  return screens.find((known) => known.screen === screen)?.pixelsPerMm ?? null;
}

/** The screens with one of them measured (null: forgotten). */
export function withScale(
  screens: DisplaySettings['screens'],
  screen: string,
  pixelsPerMm: number | null,
): DisplaySettings['screens'] {
  const others = screens.filter((known) => known.screen !== screen);
  return pixelsPerMm === null ? others : [...others, { screen, pixelsPerMm }].slice(-MOST_SCREENS);
}

/** The scale at which a bar of so many pixels measures so many millimetres; null where that cannot be. */
export function scaleOfBar(pixels: number, mm: number): number | null {
  const scale = pixels / mm;
  return scale >= SCALE_LIMITS.least && scale <= SCALE_LIMITS.most ? scale : null;
}
