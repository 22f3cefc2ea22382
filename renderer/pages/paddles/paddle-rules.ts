import { type StockPaddleDocument, stockPaddleSchema } from '../../../core/document/stock-paddle-schema.ts';
import { say } from '../../language/messages.ts';
import type { FormRules } from '../../ui/form/form-rules.ts';

/** Values of a paddle's form. Metres, degrees, kilograms; null while a length has not been entered. */
export interface PaddleValues extends Omit<StockPaddleDocument, 'lengthM' | 'bladeLengthM'> {
  readonly lengthM: number | null;
  readonly bladeLengthM: number | null;
}

export const BLANK_PADDLE: PaddleValues = {
  name: '',
  lengthM: null,
  bladeLengthM: null,
  bladeAngleDeg: 0,
  massKg: 0.75,
  note: '',
};

/** What a paddle's form asks: the document's schema, and a blade shorter than its paddle. */
export const PADDLE_RULES: FormRules<PaddleValues, StockPaddleDocument> = {
  schema: stockPaddleSchema,
  check: ({ lengthM, bladeLengthM }) => {
    const tooLong = lengthM !== null && bladeLengthM !== null && bladeLengthM >= lengthM;
    return { bladeLengthM: tooLong ? say('paddles.entry.blade-too-long') : null };
  },
};
