import type { CoralEntry } from '../../core/corals/entry.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { palytoxinCautions } from '../coral/palytoxin-cautions.ts';
import { cm } from '../../core/corals/say.ts';
import { say } from '../../core/wording/say.ts';
import { action } from '../calls.ts';

const CORAL: readonly Fact[] = [
  { label: 'the light', value: 'which lamp, hours a day, and PAR at that spot if you can measure it' },
  { label: 'the place', value: `what stands within ${cm(15)}, and how the water moves there` },
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
    unused: water?.unused ?? [],
    steps: [
      'In five minutes: do every pump, the heater and the skimmer run? Read the temperature; how do fish breathe?',
      'Fish gasp or lie down: move the surface hard at once (pump, air stone), test ammonia, wait for no answer.',
      'Take out what is plainly dead, leave all else: no dip, no scraping, no medicine, no new additive.',
      ...(water?.steps ?? []),
    ],
    facts: [
      ...(water?.facts ?? []),
      { label: 'a photo', value: 'by white light, pumps off: the whole tank, and the animal close up' },
      {
        label: 'since when',
        value:
          'what changed: animal, additive, salt, lamp, water change, power cut, cleaning, spray in the room',
      },
      {
        label: 'the water',
        value: 'salinity first, temperature, pH, alkalinity, calcium, magnesium, nitrate, phosphate, ammonia',
      },
      { label: 'each number', value: 'with its day and the kit' },
      { label: 'the tank', value: 'litres or gallons of water, how old it is, what you dose each day' },
      ...(isFish ? FISH : CORAL),
      {
        label: 'the others',
        value: 'how the other corals, fish, shrimps and snails look, and what you see by torch at night',
      },
    ],
    isList: true,
    dangers: [
      ...palytoxinCautions(entries),
      'Gloves where you have a cut, wash hands and arms afterwards: dying corals and rock can poison or infect.',
    ],
    cautions: ['A sick fish belongs to a vet who knows fish. I name no medicine and no dose of one.'],
    sources: ['practice'],
    next: [
      action(say('triage.whatISee'), 'triage', {}),
      action(say('urgent.itIsUrgent'), 'urgent', {}),
      action(say('checkup.checkMyReadings'), 'checkup', {}, ['readings']),
    ],
  });
}
