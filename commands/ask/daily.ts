import { compoundsFor, findCompound } from '../../core/dosing/compound.ts';
import { parameter } from '../../core/water/parameter.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { significant } from '../../core/quantity/format.ts';
import { answer } from '../answer.ts';
import { askedWater, inOwnUnit } from '../dose/asked.ts';
import { replacements } from '../dose/use-answer.ts';
import type { Intent } from './intent.ts';
import { waterSaid } from './tank-in-use.ts';
import { limitsOf } from '../../core/water/limits.ts';

/** "the tank uses 1.2 dkh a day, how much soda ash daily": what replaces a use that is known. */
export const dailyIntent: Intent = (heard, context) => {
  const use = heard.said.find(({ role, everyDays }) => role === 'use' && everyDays !== undefined);
  if (use === undefined || compoundsFor(use.parameter).length === 0 || use.everyDays === undefined)
    return undefined;
  if (heard.said.some(({ role }) => role === 'goal')) return undefined;
  const id = use.parameter;
  const { kind, unit, label } = parameter(id);
  const read = readQuantity(kind, use.mention.text, { field: 'use', fallback: unit });
  const perDay = inOwnUnit(id, read.value) / use.everyDays;
  const tank = waterSaid(heard, context);
  const water = askedWater(tank.text);
  const named = heard.compounds.flatMap(({ name }) => formsOf(name));
  const all = replacements(id, perDay, water);
  const masses = all.filter(({ label: of }) => named.some((name) => of.startsWith(name)));
  const facts = masses.length > 0 ? masses : all;
  if (facts.length === 0 || perDay <= 0) return undefined;
  const asked = `${significant(perDay, 3)} ${unit} of ${label} a day`;
  const most = limitsOf(id).pace?.up ?? perDay;
  return answer({
    headline: `To replace ${asked}: ${facts.map((one) => `${one.value.replace(` ${water.where}`, '')} of ${one.label}`).join(', or ')}, ${water.where}.`,
    read: [`a use of ${asked}, as you say it`, ...read.notes, ...tank.read, ...water.read],
    facts,
    steps: [
      'This only holds the level where it is. What is missing already is a dose of its own (/dose amount).',
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
};

function formsOf(word: string): readonly string[] {
  const found = findCompound(word);
  if (found === undefined) return [];
  return ('name' in found ? [found] : found).map(({ name }) => name);
}
