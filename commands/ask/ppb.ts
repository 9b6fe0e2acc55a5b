import { is } from '../../core/words/mention.ts';
import { convertCommand } from '../convert.ts';
import { call } from './call.ts';
import type { Intent } from './intent.ts';

/** "meter says 18 ppb P": as phosphate, in both ways the number can be meant. */
export const ppbIntent: Intent = (heard, context) => {
  const mention = heard.mentions.find((m) => is(m, 'phosphate') && /ppb|µg/.test(m.text));
  if (mention === undefined || heard.said.length > 1) return undefined;
  const saysP =
    /\bp$|phosphorus$/.test(mention.text) ||
    /^\s*(?:of\s+)?(?:phosphorus|p)\b/.test(heard.text.slice(mention.end));
  const amount = `${mention.value} ppb ${saysP ? 'P' : 'PO4'}`;
  return call(convertCommand, { amount, of: 'phosphate' }, context);
};
