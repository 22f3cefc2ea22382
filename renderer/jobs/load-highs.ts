import load from 'highs';

/** What the solver found: words for how it ended, the goal's value, and each variable's. */
interface Answer {
  readonly Status: string;
  readonly ObjectiveValue: number;
  readonly Columns: Readonly<Record<string, { readonly Primal?: number }>>;
}

/** The solver of integer programmes, as far as it is used. */
export interface Highs {
  solve(text: string, options: object): Answer;
}

type Load = (options: { locateFile?: () => string; print: (line: string) => void }) => Promise<Highs>;

/**
 * Loads the solver. The package's types are those of a script, whose loader is a property; what it exports as a module is the loader
 * itself. This is the house's only cast through unknown.
 */
export const loadHighs = load as unknown as Load;
