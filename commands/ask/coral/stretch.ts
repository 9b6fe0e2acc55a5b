import { coralsIn } from '../../../core/words/corals.ts';
import { is } from '../../../core/words/mention.ts';
import { stretchedAnswer } from '../../coral/stretched-answer.ts';
import { says, type Intent } from '../intent.ts';

const LONG = [
  'stretch(?:ed|es|ing|y)?',
  'long necks?',
  'long stalks?',
  'long stems?',
  'leggy',
  'reaching (?:up|for)',
  'elongat(?:ed|ing)',
  'tall and thin',
] as const;

/** "my torch is stretched": light that fits, or up in steps. */
export const stretchIntent: Intent = (heard) => {
  if (!says(heard, ...LONG)) return undefined;
  const [named] = coralsIn(heard.text);
  return named === undefined
    ? undefined
    : stretchedAnswer(
        named,
        heard.mentions.find((m) => is(m, 'light')),
      );
};
