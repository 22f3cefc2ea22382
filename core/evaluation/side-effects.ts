import { SEVERITIES, type SideEffect } from './finding.ts';
import { quantityDefinition } from './quantities.ts';
import type { Report } from './report.ts';

/**
 * Findings that a change moves: those whose severity is another, or whose value moved by a step worth showing; SI. The
 * finding `except` (the one that was to be moved) is left out. In the order of `after`: the most severe first.
 */
export function sideEffectsOf(before: Report, after: Report, except: string | null = null): SideEffect[] {
  const old = new Map(before.findings.map((f) => [f.id, f]));
  const effects: SideEffect[] = [];
  for (const now of after.findings) {
    const was = old.get(now.id);
    if (!was || now.id === except) continue;
    const step = quantityDefinition(now.quantity)?.step ?? 0;
    if (was.severity === now.severity && Math.abs(now.value - was.value) < step) continue;
    const { quantity: id, seat, unit } = now;
    effects.push({
      id,
      seat,
      unit,
      from: was.value,
      to: now.value,
      severityFrom: was.severity,
      severityTo: now.severity,
    });
  }
  return effects;
}

/** How much worse a finding becomes: steps of severity, negative for better. */
export function worsening({ severityFrom, severityTo }: SideEffect): number {
  return SEVERITIES.indexOf(severityTo) - SEVERITIES.indexOf(severityFrom);
}
