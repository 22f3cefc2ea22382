import { USUAL_CLASSES } from '../../../core/document/usual-classes.ts';
import { say } from '../../language/messages.ts';

/** Kinds of boat with usual lines, as they are chosen. */
export const usualOptions = () => USUAL_CLASSES.map((value) => ({ value, name: say(`boat.usual.${value}`) }));
