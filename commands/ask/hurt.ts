import { isPersonHurt } from '../../core/care/urgent/person-words.ts';
import { cardAnswer } from '../urgent/card-answer.ts';
import type { Intent } from './intent.ts';

/** Somebody is hurt: people first, no arithmetic. */
export const hurtIntent: Intent = (heard) =>
  isPersonHurt(heard.text) ? cardAnswer('person hurt', {}) : undefined;
