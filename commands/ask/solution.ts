import { findCompound } from '../../core/dosing/compound.ts';
import { parameter } from '../../core/water/parameter.ts';
import type { Heard } from '../../core/words/hear.ts';
import { is, type Mention } from '../../core/words/mention.ts';
import { solutionCommand } from '../dose/solution.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';

/** "500 g soda ash in 1 gal, how many ml for 1 dkh in 100 gal": a stock solution and the millilitres of it. */
export const solutionIntent: Intent = (heard, context) => {
  if (
    !says(
      heard,
      'how many ml',
      'how much ml',
      'how many milli\\w+',
      'mls?',
      'solution',
      'stock',
      'how strong',
      'per ml',
    )
  )
    return undefined;
  const salt = heard.compounds[0]?.name ?? '';
  const found = findCompound(salt);
  const powder = heard.mentions.find((m) => is(m, 'mass') && !/^[\d.,]+\s*mg$/.test(m.text));
  const made = powder === undefined ? undefined : waterOf(heard, powder);
  if (found === undefined || powder === undefined || made === undefined) return undefined;
  const [id] = 'name' in found ? found.raises : [];
  const rise =
    id === undefined
      ? undefined
      : heard.mentions.find((m) => m !== powder && is(m, parameter(id).kind) && !is(m, 'volume'));
  const goal = rise === undefined ? undefined : `+${rise.text}`;
  const tank = heard.mentions.find(
    (m) => m !== made && m !== powder && is(m, 'volume') && !m.text.endsWith('ml'),
  );
  const input = { with: salt, amount: powder.text, volume: made.text, goal, tank: tank?.text };
  return call(solutionCommand, input, context);
};

/** The volume the powder is dissolved in: the next one behind it, "in 1 gal", "into 2 L", "per litre". */
function waterOf({ text, mentions }: Heard, powder: Mention): Mention | undefined {
  return mentions.find(
    (m) =>
      m.start > powder.end &&
      is(m, 'volume') &&
      /\b(?:in|into|per|to|with|of)\s*(?:a |the )?$/.test(text.slice(powder.end, m.start)),
  );
}
