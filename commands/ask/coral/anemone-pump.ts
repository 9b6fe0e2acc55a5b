import { coralsIn } from '../../../core/words/corals.ts';
import { cardAnswer } from '../../urgent/card-answer.ts';
import { says, type Intent } from '../intent.ts';

const PUMPS = [
  'wave ?makers?',
  'power ?heads?',
  'pumps?',
  'impellers?',
  'intakes?',
  'flow pumps?',
  'propellers?',
  'overflow',
] as const;
const HIT = [
  'went (?:through|into|in)',
  '(?:got|is|was) (?:sucked|caught|stuck|shredded|chopped|into|in)',
  'sucked',
  'shredded',
  'chopped',
  'minced',
  'bits',
  'pieces',
  'blended',
  '(?:walked|wandered|moved) into',
  'in (?:the |my |a |our )?(?:return |main )?(?:pump|power ?head|wave ?maker|overflow|impeller|intake)(?! section| chamber| compartment)',
] as const;

/** An anemone in a pump: the tank first, then why, then guards. */
export const anemonePumpIntent: Intent = (heard) => {
  if (!says(heard, ...PUMPS) || !says(heard, ...HIT)) return undefined;
  const isAnemone =
    says(heard, 'anemones?', 'nems?', 'bta', 'rbta', 'bubble ?tips?') ||
    coralsIn(heard.text).some(({ entries }) => entries[0].group === 'anemone');
  if (!isAnemone) return undefined;
  const card = cardAnswer('shredded anemone', {});
  return {
    ...card,
    headline: `Yes, the rest of the tank is at risk until the bits are out. ${card.headline}`,
    facts: [
      ...card.facts,
      {
        label: 'why it moved',
        value:
          'it cannot be said for certain. Anemones wander after a change in light, flow or food, or when they have not settled yet',
      },
      ...(says(heard, 'clean(?:ed|ing)?', 'washed', 'wiped', 'lamp', 'brighter', 'light')
        ? [
            {
              label: 'the lamp',
              value:
                'a cleaned lamp is brighter at once, so it is one likely cause: dim it and come back by about 10 % a week',
            },
          ]
        : []),
    ],
  };
};
