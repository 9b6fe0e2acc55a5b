import { cycleAnswer } from '../../primer/cycle-answer.ts';
import { says, type Intent } from '../intent.ts';
import { cycleLog } from './cycle-log.ts';

const CYCLE = [
  'cycl(?:e|es|ed|ing)',
  'wait for zeros?',
  'order (?:the )?(?:snails|fish|crew|cuc)',
  'first (?:fish|snails|animals)',
  'clean ?up crew',
  'cuc',
  'new tank',
  'log',
] as const;

/** A log of ammonia, nitrite and nitrate of a young tank: how far it is, and when snails may come. */
export const cycleIntent: Intent = (heard) => {
  const [first, ...more] = cycleLog(heard.text);
  if (first === undefined) return undefined;
  const tests = [first, ...more] as const;
  if (more.length === 0 ? !says(heard, 'cycl(?:e|es|ed|ing)') : !says(heard, ...CYCLE)) return undefined;
  return cycleAnswer(tests, says(heard, 'hair', 'algae', 'green', 'brown', 'diatoms?'));
};
