import { z } from 'zod';
import { compoundsFor } from '../../core/dosing/compound.ts';
import { Problem } from '../../core/problem.ts';
import { significant, toUnit } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { limitsOf, type Pace } from '../../core/water/limits.ts';
import { findParameter, parameter, parameterIds, type ParameterId } from '../../core/water/parameter.ts';
import { possible } from '../../core/water/possible.ts';
import { salinityPaceWords } from '../../core/water/salinity-pace.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { fittingHeadline } from '../fitting.ts';
import { textOption } from '../options.ts';
import { say } from '../../core/wording/say.ts';

/** Guards a step against 1.0200000001 of the pace. */
const NEAR = 0.02;

export const paceCommand = defineCommand({
  path: ['water', 'pace'],
  summary: 'How fast a level may be moved in a day, and whether a step fits into one',
  example: '/water pace of:alkalinity step:3 dKH',
  options: z.strictObject({
    of: textOption('What is moved: alkalinity, calcium, salinity, temperature, ...', {
      suggest: 'paced',
    }),
    step: textOption('How far it would go in one day, e.g. 3 dKH').optional(),
  }),
  run: ({ of, step }): Answer => {
    const { id, pace } = paced(of);
    if (id === 'salinity') return salinityPace();
    const { label, unit } = parameter(id);
    const size = step === undefined ? undefined : readStep(id, step);
    const usual = pace.gentle === undefined ? `${pace.up}` : `${pace.gentle} to ${pace.up}`;
    const isDosed = compoundsFor(id).length > 0;
    return answer({
      headline: fittingHeadline(
        `${verdict(id, pace, size)}At most ${usual} ${unit} of ${label} a day is usual (common practice), in several parts.`,
        `${verdict(id, pace, size)}At most ${usual} ${unit} of ${label} a day is usual, in several parts.`,
      ),
      read: [`how fast ${label} may be ${isDosed ? 'raised' : 'moved'}`],
      steps: [
        'Test again before the next day’s part.',
        ...(isDosed
          ? [`With all numbers I work out the days: "raise ${label} from ... to ... in 75 gal with ...".`]
          : []),
      ],
      cautions: isDosed
        ? [
            'Going down is not done by dosing: stop what raises it, and let use or water changes take it down slowly.',
          ]
        : ['In an emergency the card comes first: /urgent.'],
      sources: ['practice'],
    });
  },
});

/** @throws Problem for what nobody moves on purpose. */
function paced(of: string): { readonly id: ParameterId; readonly pace: Pace } {
  const id = findParameter(of);
  const pace = id === undefined ? undefined : limitsOf(id).pace;
  if (id !== undefined && pace !== undefined) return { id, pace };
  const known = parameterIds.filter((one) => limitsOf(one).pace !== undefined);
  throw new Problem(say('water.iKnowNoPace', { of }), {
    field: 'of',
    given: of,
    limit: known.map((one) => parameter(one).label).join(', '),
  });
}

const DEGREES = /^(\d{1,2}(?:[.,]\d{1,2})?)\s*(?:°|deg(?:rees?)?)?\s*([cf])?$/i;

/** A step in the parameter's own unit; of temperature it is a difference, so that 2 °F are 1.1 °C. */
function readStep(id: ParameterId, text: string): number {
  const { kind, unit } = parameter(id);
  const bare = text.replace(/^[+-]/, '').trim();
  const [, degrees, scale] = (kind === 'temperature' ? DEGREES.exec(bare) : null) ?? [];
  const size =
    degrees === undefined
      ? toUnit(kind, readQuantity(kind, bare, { field: 'step', fallback: unit }).value, unit)
      : Number(degrees.replace(',', '.')) * (scale?.toLowerCase() === 'f' ? 5 / 9 : 1);
  possible(id, 'step', size);
  if (size > 0) return size;
  throw new Problem(say('water.stepAbove0'), { field: 'step', given: text });
}

function verdict(id: ParameterId, { up }: Pace, size: number | undefined): string {
  if (size === undefined) return '';
  const shown = `${significant(size, 3)} ${parameter(id).unit}`;
  return size > up * (1 + NEAR)
    ? `No, not ${shown} in one day: take ${Math.ceil(size / up - NEAR)} days or more. `
    : `Yes: ${shown} in a day is within the usual pace. `;
}

function salinityPace(): Answer {
  const { up, down } = salinityPaceWords;
  return answer({
    headline: `At most ${down} a day downward and ${up} upward is usual with corals.`,
    read: ['how fast salinity may be moved'],
    steps: [
      'Check the instrument on a 35 ppt standard first.',
      'With what it reads, the goal and the volume I work out the days: "1.028 to 1.025 in 75 gal".',
    ],
    sources: ['practice'],
  });
}
