import { primer } from '../../../core/care/primers/cards.ts';
import type { Row } from '../row.ts';
import { convertCommand } from '../../convert.ts';
import { netCommand } from '../../dose/net.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { call } from '../call.ts';
import { attempt } from './attempt.ts';

export const volumeRows: readonly Row[] = [
  {
    kind: 'volume',
    label: 'How much water my tank holds',
    uses: ['box', 'lengths', 'volume', 'container', 'salt', 'change'],
    answer: ({ slots }, context) => {
      const { box, volume, container, lengths = [], salt, change } = slots;
      const glass = container ?? lengths[0];
      if (box !== undefined) {
        const card = primer('net volume');
        const given = call(convertCommand, { amount: box }, context);
        const facts = card.points.map(([label, value]) => ({ label, value }));
        return {
          ...given,
          facts: [...given.facts, ...facts],
          steps: [card.headline, ...(card.steps ?? [])],
          sources: [...new Set([...given.sources, ...card.sources])],
        };
      }
      const goal = change === undefined ? undefined : `+${change}`;
      const net =
        glass === undefined || volume === undefined
          ? undefined
          : attempt(() => call(netCommand, { glass, volume, with: salt, goal }, context));
      return net ?? cardAnswer(primer('net volume'));
    },
  },
];
