import type { Format } from '../../../../app/language/format.ts';
import { SIGMAS_95 } from '../../../../core/evaluation/probability.ts';
import { withUnit } from '../../../../core/text/with-unit.ts';
import { BOW_DOUBTS } from '../../../../core/under-way/bow-motion.ts';
import {
  AIR_DENSITY,
  AIR_DRAG_AREA,
  FORM_FACTOR,
  WAVE_DOUBT,
} from '../../../../core/under-way/resistance.ts';
import { USUAL_STROKE } from '../../../../core/under-way/stroke-forcing.ts';
import {
  CHANGES,
  HANDLING_SHARE,
  type UnderWay,
  WAVE_DIFFERENCE_DOUBT,
} from '../../../../core/under-way/under-way-of-fit.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { quantityName } from '../../../language/sentences.ts';

/** How one figure of the tab is found. Formulas and authors are the same in every language. */
export interface Derivation {
  readonly name: string;
  /** Formulas, then the values that they take. */
  readonly formulas: readonly string[];
  readonly source: string;
  /** At 95 %; null where the figure stands with its own doubt. */
  readonly doubt: string | null;
}

/** The figures of the tab with formula, source and doubt, behind a click. */
export function Calculation({ found, course }: { found: UnderWay; course: string }) {
  const format = useFormat();
  return (
    <details className="under-way-how">
      <summary>{say('values.how')}</summary>
      <dl>
        {[...resistanceRows(found, format), ...costRows(course, format), ...bowRows(format)].map((row) => (
          <div key={row.name}>
            <dt>{row.name}</dt>
            <dd>
              {row.formulas.map((formula) => (
                <div key={formula}>{formula}</div>
              ))}
              <div className="soft">
                {row.source}
                {row.doubt && ` · ${row.doubt}`}
              </div>
            </dd>
          </div>
        ))}
      </dl>
    </details>
  );
}

/** Half of a 95 % interval of one standard deviation, as a share of the figure: ± 29 %. */
const percent = (sd: number, format: Format) =>
  `±\u{a0}${withUnit(format.number(100 * SIGMAS_95 * sd, { decimals: 0, half: 0 }), '%')}`;

/** How resistance and its parts are found, with the values of this boat at this speed. */
export function resistanceRows({ at, given, speed }: UnderWay, format: Format): Derivation[] {
  const n = (value: number, decimals: number) => format.number(value, { decimals });
  const guess = (of: string) => say('under-way.how.estimate', { of });
  const name = (part: 'friction' | 'wave' | 'air' | 'total') => say(`under-way.part.${part}`);
  return [
    {
      name: name('friction'),
      formulas: [
        `½ρU²S·(1 + k)·${n(0.075, 3)}/(log₁₀Re − 2)²`,
        `ρ = ${withUnit(n(given.waterDensity, 0), 'kg/m³')}, U = ${withUnit(n(speed, 1), 'm/s')}, ` +
          `S = ${withUnit(n(at.wettedSurface, 2), 'm²')}, k = ${n(FORM_FACTOR.value, 2)}, Re = ${tenPower(given.reynolds, n)}`,
      ],
      source: `ITTC 1957; ${guess('k')}`,
      doubt: percent(FORM_FACTOR.sd / (1 + FORM_FACTOR.value), format),
    },
    {
      name: name('wave'),
      formulas: ['(4ρU²/π)·∫|H|²·k²·cosθ·dθ', 'H = ∫∫(∂y/∂x)·e^(kz + ikx·cosθ)·dx·dz', 'k = g/(U·cosθ)²'],
      source: 'Michell 1898; Wehausen & Laitone 1960',
      doubt: percent(WAVE_DOUBT, format),
    },
    {
      name: name('air'),
      formulas: [
        '½ρU²·Cd·A',
        `ρ = ${withUnit(n(AIR_DENSITY, 3), 'kg/m³')}, Cd·A = ${withUnit(n(given.airDragArea, 1), 'm²')}`,
      ],
      source: `ISO 2533; ${guess('Cd·A')}`,
      doubt: percent(AIR_DRAG_AREA.sd / AIR_DRAG_AREA.value, format),
    },
    { name: name('total'), formulas: ['R = R₁ + R₂ + R₃'], source: '± = √(±₁² + ±₂² + ±₃²)', doubt: null },
  ];
}

/** How what a change costs is found, and when trim is called a matter of handling. */
export function costRows(course: string, format: Format): Derivation[] {
  const n = (value: number, decimals: number) => format.number(value, { decimals });
  const friction = n((SIGMAS_95 * FORM_FACTOR.sd) / (1 + FORM_FACTOR.value), 2);
  const wave = n(SIGMAS_95 * WAVE_DIFFERENCE_DOUBT, 2);
  return [
    {
      name: say('under-way.costs.what'),
      formulas: ['ΔR = R′ − R'],
      source: `± = √((${friction}·ΔR₁)² + (${wave}·ΔR₂)²)`,
      doubt: null,
    },
    {
      name: say('under-way.costs.seconds', { course }),
      formulas: ['D/U′ − D/U, R′(U′)·U′ = R(U)·U'],
      source: '±Δt = ±ΔR·Δt/ΔR',
      doubt: null,
    },
    {
      name: say('term.trim'),
      formulas: [
        `|ΔR|/R < ${withUnit(n(100 * HANDLING_SHARE, 1), '%')} (±\u{a0}${format.length(CHANGES.bow, { fine: true })})`,
      ],
      source: say('source.estimate'),
      doubt: null,
    },
  ];
}

/** How the bow's motion and the boat's own periods are found. */
export function bowRows(format: Format): Derivation[] {
  const doubts = {
    share: format.number(USUAL_STROKE.driveShare, { decimals: 2 }),
    drive: format.number(SIGMAS_95 * BOW_DOUBTS.driveShare, { decimals: 2 }),
    lift: percent(BOW_DOUBTS.lift, format),
    force: percent(BOW_DOUBTS.strength, format),
    added: percent(BOW_DOUBTS.added, format),
    damping: percent(BOW_DOUBTS.damping, format),
  };
  return [
    {
      name: say('crew.bow'),
      formulas: ['(−ω²(M + A) + iωB + C)·q = F', 'F = P·sin(πt/τ) − Σm·a'],
      source: 'Salvesen/Tuck/Faltinsen 1970',
      doubt: say('under-way.how.bow', doubts),
    },
    {
      name: say('under-way.how.periods'),
      formulas: ['2π·√((M + A)/C)'],
      source: 'A, B: Frank 1967',
      doubt: `A ${doubts.added}`,
    },
    {
      name: quantityName('trimRest'),
      formulas: [say('quantity.trimRest.how')],
      source: say('source.hydrostatics'),
      doubt: null,
    },
  ];
}

const RAISED = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];

/** A large number as 2.1·10⁷. */
function tenPower(value: number, n: (value: number, decimals: number) => string): string {
  const power = Math.floor(Math.log10(value));
  return `${n(value / 10 ** power, 2)}·10${[...String(power)].map((digit) => RAISED[Number(digit)]).join('')}`;
}
