import { z } from 'zod';
import { significant } from '../../core/quantity/format.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { shortLimits } from '../short/limits.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { readPerDay } from '../waterchange/rate.ts';
import { askedCompound, askedParameter, askedWater, inOwnUnit, type AskedWater } from './asked.ts';
import { moreThanAnyTank, replacements } from './use-answer.ts';

/** What a daily dose does not do. */
export const HOLDS_ONLY =
  'This only holds the level where it is. What is missing already is a dose of its own (/dose amount).';

export const dailyCommand = defineCommand({
  path: ['dose', 'daily'],
  summary: 'The daily dose that replaces a use you know',
  example: '/dose daily of:alkalinity use:1.2 dKH a day with:soda ash volume:100 gal',
  options: z.strictObject({
    of: textOption('What the tank uses up', { suggest: 'dosed' }),
    use: textOption('How much, e.g. 1.2 dKH a day, 15 ppm a week'),
    with: textOption('The salt you have; all if left out', { suggest: 'compound' }).optional(),
    volume: quantityOption('volume', 'Net water of the whole system', 'volume').optional(),
  }),
  run: (input): Answer => {
    const id = askedParameter(input.of);
    const { label, unit } = parameter(id);
    const { perDay: canonical, notes } = readPerDay(id, input.use, 'use');
    const perDay = inOwnUnit(id, canonical);
    const water = askedWater(input.volume);
    const asked = `${significant(perDay, 3)} ${unit} of ${label} a day`;
    const read = [`a use of ${asked}, as you say it`, ...notes, ...water.read];
    if (moreThanAnyTank(id, perDay)) return retest(asked, read);
    const facts = ofSalt(id, replacements(id, perDay, water), input.with);
    const most = limitsOf(id).pace?.up ?? perDay;
    return answer({
      headline: replacing(asked, facts, water),
      read,
      facts,
      steps: [
        HOLDS_ONLY,
        'Start with a little less, in several parts over the day, and test at the same hour after two or three days.',
        ...(perDay > most
          ? [
              `More than ${most} ${unit} a day is a lot: measure the use again before you dose for it (/dose use).`,
            ]
          : []),
      ],
      cautions: [
        'The label of your own product and local rules come first. Never mix the calcium part and the alkalinity part together.',
      ],
      sources: ['iupac21', 'practice'],
    });
  },
});

/** The grams of every salt, or of the first where there are too many for a line. */
function replacing(asked: string, facts: readonly Fact[], { where }: AskedWater): string {
  const each = facts.map(({ label, value }) => `${value.replace(` ${where}`, '')} of ${label}`);
  const all = `To replace ${asked}: ${each.join(', or ')}, ${where}.`;
  return all.length <= shortLimits.headline
    ? all
    : `To replace ${asked}: ${each[0] ?? ''}, ${where}, or another.`;
}

/** The lines of the salt that was named; all of them where none was, or where it is one that is not dosed by the gram. */
function ofSalt(id: ParameterId, all: readonly Fact[], salt: string | undefined): readonly Fact[] {
  if (salt === undefined) return all;
  const { forms } = askedCompound(salt, id);
  const named = all.filter(({ label }) => forms.some(({ name }) => label.startsWith(name)));
  return named.length > 0 ? named : all;
}

/** No dose from a use that no tank has; `asked` is "13.8 dKH of alkalinity a day". */
export function retest(asked: string, read: readonly string[]): Answer {
  return answer({
    headline: `Retest first: ${asked} is more than any tank uses, so no dose is worked out from it.`,
    read,
    steps: [
      'Look at the unit and at the time between the readings.',
      'Measure the use: /dose use takes two readings and what was dosed between them.',
    ],
    sources: ['practice'],
  });
}
