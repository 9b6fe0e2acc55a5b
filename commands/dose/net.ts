import { z } from 'zod';
import { type Compound } from '../../core/dosing/compound.ts';
import { amountG } from '../../core/dosing/dose.ts';
import { Problem } from '../../core/problem.ts';
import { fixed, mass } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { possible } from '../../core/water/possible.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { askedCompound, oneForm, inOwnUnit, shown } from './asked.ts';
import { glassAndNet, type GlassAndNet } from './glass-and-net.ts';
import { say } from '../../core/wording/say.ts';

/** A rise shown where none was asked about. */
const EXAMPLE_DKH = '1 dKH';

export const netCommand = defineCommand({
  path: ['dose', 'net'],
  summary: 'What dosing for the whole glass does: there is less water',
  example: '/dose net glass:50 gal volume:38 gal with:baking soda goal:+1 dKH',
  options: z.strictObject({
    glass: quantityOption('volume', 'The size the tank is called by, e.g. 50 gal'),
    // The tank in use would be another tank than the one that is spoken of.
    volume: quantityOption('volume', 'The water it really holds, e.g. 38 gal'),
    with: textOption('A salt, to see both doses', { suggest: 'compound' }).optional(),
    goal: textOption('The rise meant, e.g. +1 dKH').optional(),
  }),
  run: (input): Answer => {
    const sizes = glassAndNet(input.glass, input.volume);
    const { glass, net, over } = sizes;
    const salt = input.with === undefined ? undefined : oneForm(askedCompound(input.with), input.with);
    const id = salt?.raises[0] ?? 'alkalinity';
    const rise = readRise(id, input.goal);
    const factor =
      over >= 2 ? `${fixed(over, 1)} times the dose` : `${fixed(100 * (over - 1), 0)} % too much`;
    return answer({
      headline: `Yes, it matters: dosing for ${glass} in a tank that holds ${net} is ${factor}${rise === undefined ? '' : `, +${shown(id, rise.value * over)} where ${rise.text} was meant`}.`,
      read: [
        `${net} as the water really in the system, ${glass} as the size of the glass`,
        ...sizes.read,
        ...(rise?.notes ?? []),
      ],
      facts:
        salt === undefined || rise === undefined
          ? []
          : sizes.units.map((unit) => doseLine(salt, id, rise, sizes, unit)),
      steps: [
        `Dose for ${net}, everywhere: doses, water changes, additives of any kind.`,
        'To measure it: count the litres when you next fill it, or dose a little and work back from the rise.',
      ],
      working: [`${glass} / ${net} = ${fixed(over, 3)}`],
      cautions: [
        'Rock and sand take a different share in every tank: measure yours rather than taking off a fixed tenth.',
      ],
      sources: ['mixing', 'iupac21'],
    });
  },
});

interface Rise {
  readonly value: number;
  readonly text: string;
  readonly notes: readonly string[];
}

/** Undefined where none was said and alkalinity is not what is spoken of. */
function readRise(id: ParameterId, goal: string | undefined): Rise | undefined {
  const said = goal ?? (id === 'alkalinity' ? EXAMPLE_DKH : undefined);
  if (said === undefined) return undefined;
  const text = said.replace(/^\+/, '');
  const { kind, unit } = parameter(id);
  const { value, notes } = readQuantity(kind, text, { field: 'goal', fallback: unit });
  possible(id, 'goal', inOwnUnit(id, value));
  if (value <= 0) throw new Problem(say('dose.riseAbove0'), { field: 'goal', given: text });
  return { value, text: text.trim(), notes };
}

function doseLine(salt: Compound, id: ParameterId, rise: Rise, sizes: GlassAndNet, unit: string): Fact {
  const grams = (text: string): string => {
    const litres = readQuantity('volume', `${text} ${unit}`, { field: 'volume' }).value;
    return `${text} ${unit}: ${mass(amountG(salt, id, rise.value, litres))}`;
  };
  const { glassText, netText } = sizes;
  return {
    label: `${salt.name}, +${rise.text}, in ${unit}`,
    value: `${grams(netText)}; ${grams(glassText)}`,
  };
}
