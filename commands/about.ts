import { z } from 'zod';
import { coralSources } from '../core/corals/sources.ts';
import { sources, type SourceCode } from '../core/sources.ts';
import { answer, type Answer } from './answer.ts';
import { defineCommand } from './command.ts';

/** What the guide to corals rests on is named with each coral. */
const codes = Object.keys(sources) as readonly SourceCode[];

export const aboutCommand = defineCommand({
  path: ['about'],
  summary: 'What Sumpside does, how far to trust it, and where its numbers come from',
  example: '/about',
  options: z.strictObject({}),
  run: (): Answer =>
    answer({
      headline: 'Sumpside turns a reef tank’s readings into the next safe action, with the working shown.',
      facts: [
        { label: 'doses', value: '/dose: how much of which compound, over how many days' },
        { label: 'water changes', value: '/waterchange: how much, how often, and when it is the wrong tool' },
        { label: 'salinity', value: '/salinity: convert, check the instrument, raise or lower safely' },
        { label: 'light', value: '/light: daily light, dimmer, raise plan, what lux can and cannot tell' },
        { label: 'corals', value: '/coral: the guide, where yours stand, a map of the tank' },
        { label: 'trouble', value: '/urgent: what to do first; /triage: what it may be' },
        { label: 'cards', value: '/primer: short cards; /claim: a rule you were told, judged' },
        { label: 'units', value: '/convert' },
        {
          label: 'plain words',
          value: 'ask in your own words: in the room, in a DM, by mentioning the bot, or with /ask',
        },
      ],
      steps: [
        'Give the net water volume: what is really in the system, without rock, sand and air gap.',
        'Test twice before a large dose, dose less than computed at first, test again.',
      ],
      working: [
        'Units and weights follow the SI and IUPAC, sea water PSS-78 and EOS-80, the carbonate system the CO2 guide.',
        'Targets and daily limits are common practice, and marked so. No number comes from a product.',
        'Depth, habitat, size, growth and names of corals are worked out from three open collections under attribution licences (Madin et al. 2016, Octocoral Trait Database 2024, World Register of Marine Species); core/DATA.md of the source code says what was changed.',
      ],
      isList: true,
      dangers: ['Unplug mains equipment before you put your hands in the water.'],
      cautions: [
        'Product labels, local rules, a vet and a doctor come before anything said here. No medicine doses are given.',
      ],
      sources: codes.filter((code) => !(code in coralSources)),
    }),
});
