import type { CoralEntry } from '../../core/corals/entry.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { palytoxinCautions } from '../coral/palytoxin-cautions.ts';
import { cmAndInches } from '../../core/corals/say.ts';
import { action } from '../calls.ts';

const CORAL: readonly Fact[] = [
  { label: 'the light', value: 'which lamp, hours a day, and PAR at that spot if you can measure it' },
  { label: 'the place', value: `what stands within ${cmAndInches(15)}, and how the water moves there` },
];

const FISH: readonly Fact[] = [
  { label: 'the fish', value: 'which kind and size, how long it is here, and who chases it' },
  { label: 'food', value: 'what it gets, whether it eats, how thin it is, and its droppings' },
];

/**
 * Trouble with little to work with: first do no harm, then what to tell; readings that were said are judged with it. Common
 * practice, no source.
 */
export function tellMore(
  names: readonly string[],
  entries: readonly CoralEntry[],
  water?: Answer,
  isFish = false,
): Answer {
  return answer({
    headline:
      'Change nothing big and dose nothing yet: tell these few things first, so that the cause can be found.',
    read: [
      `trouble${names.length === 0 ? '' : ` with ${names.join(', ')}`}${water === undefined ? ', and no number to work with' : ''}`,
      ...(water?.read ?? []),
    ],
    steps: [
      'Now, in five minutes: see that every pump, the heater and the skimmer run, read the temperature, and look how the fish breathe.',
      'Fish gasp or lie down: move the surface more at once (turn a pump up at it, or an air stone), test ammonia, and do not wait for an answer here.',
      'Take out what is plainly dead. Leave all else where it is: no dip, no scraping, no medicine, no new additive until the cause is known.',
      ...(water?.steps ?? []),
    ],
    facts: [
      ...(water?.facts ?? []),
      { label: 'a photo', value: 'by white light, pumps off: the whole tank, and the animal close up' },
      {
        label: 'since when',
        value:
          'and what changed in the last days: a new animal, additive, salt or lamp, a water change, a power cut, cleaning or spray in the room',
      },
      {
        label: 'the water',
        value:
          'salinity first (all else hangs on it), then temperature, pH, alkalinity, calcium, magnesium, nitrate, phosphate, ammonia: numbers, the day, and with which kits',
      },
      { label: 'the tank', value: 'litres or gallons of water, how old it is, what you dose each day' },
      ...(isFish ? FISH : CORAL),
      {
        label: 'the others',
        value: 'how the other corals, fish, shrimps and snails look, and what you see by torch at night',
      },
    ],
    cautions: [
      ...palytoxinCautions(entries),
      'Wash your hands and arms afterwards, and wear gloves where you have a cut: dying corals and rock can poison or infect.',
      'A sick fish belongs to a vet who knows fish. I name no medicine and no dose of one.',
    ],
    sources: ['practice'],
    next: [
      action('What I see', 'triage', {}),
      action('It is urgent', 'urgent', {}),
      action('Check my readings', 'checkup', {}, ['readings']),
    ],
  });
}
