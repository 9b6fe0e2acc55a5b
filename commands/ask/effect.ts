import { Problem } from '../../core/problem.ts';
import type { Heard } from '../../core/words/hear.ts';
import { is, type Mention } from '../../core/words/mention.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import type { Answer } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { effectCommand } from '../dose/effect.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';

/** "what does 20 g of soda ash do in 150 gal?", "1 tsp baking soda per 5 gal raises 1 dkh": what it really does. */
export const effectIntent: Intent = (heard, context) => {
  const asks = says(
    heard,
    'do',
    'does',
    'effect',
    'what happens',
    'raises?',
    'add',
    'added',
    'adding',
    'put',
    'after (?:adding|dosing)',
  );
  return asks ? effect(heard, context) : undefined;
};

/** "1.5 tsp baking soda in 40 gallons": no other question fits, so what it does. */
export const amountIntent: Intent = (heard, context) => effect(heard, context);

/** What an amount that is named together with a compound does in the volume that was named. */
export function effect(heard: Heard, context: OwnContext): Answer | undefined {
  const amount = powderIn(heard);
  const compound = heard.compounds[0];
  if (amount === undefined || compound === undefined) return undefined;
  const volume = tankVolume(heard)?.text;
  try {
    return call(effectCommand, { with: compound.name, amount: amount.text, volume }, context);
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}

/** The first amount of powder, weighed or by the spoon. */
export function powderIn({ mentions }: Heard): Mention | undefined {
  return mentions.find((m) => isPowder(m.text) || (is(m, 'mass') && !is(m, 'volume')));
}

function isPowder(text: string): boolean {
  return /(?:tsps?|teaspoons?|tbsps?|tablespoons?)$/.test(text);
}
