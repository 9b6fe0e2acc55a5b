import { coralsIn } from '../../../core/words/corals.ts';
import { answer } from '../../answer.ts';
import { says, type Intent } from '../intent.ts';

const PUMPS = ['wave ?makers?', 'power ?heads?', 'pumps?', 'impellers?', 'intakes?', 'gyres?', 'propellers?', 'overflow'] as const; // prettier-ignore
const HIT = ['went (?:through|into|in)', '(?:got|is|was) (?:sucked|caught|stuck|shredded|chopped|into|in)', 'sucked', 'shredded', 'chopped', 'minced', 'bits', 'pieces', 'blended', '(?:walked|wandered|moved) into'] as const; // prettier-ignore

/** An anemone in a pump: the tank first, then why, then guards. */
export const anemonePumpIntent: Intent = (heard) => {
  if (!says(heard, ...PUMPS) || !says(heard, ...HIT)) return undefined;
  const isAnemone =
    says(heard, 'anemones?', 'nems?', 'bta', 'rbta', 'bubble ?tips?') ||
    coralsIn(heard.text).some(({ entries }) => entries[0].group === 'anemone');
  if (!isAnemone) return undefined;
  return answer({
    headline:
      'Yes, the rest of the tank is at risk until the bits are out: switch the pump off at the plug, take out every piece, and run carbon today.',
    steps: [
      'Pump off at the plug before your hand goes in. Keep another pump or an air stone running, so that the fish have oxygen.',
      'Take out every piece with a net or hose, in the pump and the sump too. Wear gloves: the bits still sting.',
      'Fresh activated carbon now, and skim as wet as it will go.',
      'Change 20 to 30 % of the water soon, matched in salinity and temperature (common practice).',
      'Test ammonia today and on the next two days. Fish that gasp or breathe fast, or ammonia that can be read: change water again.',
      'A part that still has foot and mouth may heal: put it in a guarded box in gentle flow and do not feed it until it is firm. Take it out when it goes limp or smells.',
      'Then guard every intake with foam or mesh, and clean the guards, before the pump runs again.',
    ],
    facts: [
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
    cautions: [
      'Mains and water: plug out before you open the pump, with dry hands and a drip loop in the cable.',
    ],
    sources: ['practice'],
  });
};
