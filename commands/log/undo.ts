import { z } from 'zod';
import { printed } from '../../core/log/value.ts';
import { mass, significant } from '../../core/quantity/format.ts';
import { parameter } from '../../core/water/parameter.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand, type OwnContext } from '../command.ts';
import type { Addition, Keep, Tank } from '../keep.ts';
import { textOption } from '../options.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { inZone } from '../zone.ts';
import { momentsOf, timeOf, zoneLine } from './words.ts';
import { say } from '../../core/wording/say.ts';

export const undoCommand = defineCommand({
  path: ['log', 'undo'],
  summary: 'Take back what was logged last, readings or a dose, and say what it was',
  example: '/log undo',
  private: true,
  options: z.strictObject({
    of: z.enum(['readings', 'dose']).describe('The last readings (if left out) or the last dose').optional(),
    tank: textOption('Which of your tanks, if not the one in use', { suggest: 'tank' }).optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const here = inZone(context, tank);
    return input.of === 'dose' ? undoDose(keep, tank, here) : undoReadings(keep, tank, here);
  },
});

function undoReadings(keep: Keep, tank: Tank, context: OwnContext): Answer {
  const last = keep.lastEntry(tank.id);
  if (last === undefined || !keep.removeEntry(tank.id, last.id)) return nothing(tank, 'readings');
  const values = last.values.map(
    ({ parameter: id, value }) => `${parameter(id).label} ${printed(id, value, tank.units)}`,
  );
  const note = last.note === undefined ? '' : `, with the note "${last.note}"`;
  return taken(`${values.join(', ')} of ${timeOf(last.atMs, context)}${note}`, last.atMs, tank, context);
}

/** A compound that raises several parameters was logged as one addition for each of them. */
function undoDose(keep: Keep, tank: Tank, context: OwnContext): Answer {
  const newestFirst = [...keep.additions(tank.id, {})].sort((a, b) => b.id - a.id);
  const [last] = newestFirst;
  if (last === undefined) return nothing(tank, 'dose');
  const others = newestFirst.findIndex((one, index) => !isOfOneDose(one, last, index));
  const dose = newestFirst.slice(0, others === -1 ? newestFirst.length : others);
  for (const { id } of dose) keep.removeAddition(tank.id, id);
  const rises = dose
    .toReversed()
    .map(
      ({ parameter: id, rise }) => `${parameter(id).label} +${significant(rise, 3)} ${parameter(id).unit}`,
    );
  const what =
    last.compound === undefined || last.massG === undefined
      ? 'a dose'
      : `${mass(last.massG)} of ${last.compound}`;
  return taken(`${what} (${rises.join(', ')}) of ${timeOf(last.atMs, context)}`, last.atMs, tank, context);
}

function isOfOneDose(one: Addition, last: Addition, index: number): boolean {
  if (index === 0) return true;
  const { compound, atMs, massG, parameter: id } = one;
  return (
    compound !== undefined &&
    compound === last.compound &&
    atMs === last.atMs &&
    massG === last.massG &&
    id !== last.parameter &&
    one.id === last.id - index
  );
}

function taken(what: string, atMs: number, tank: Tank, context: OwnContext): Answer {
  return answer({
    headline: `Taken back from the log of ${tank.name}: ${what}.`,
    instants: momentsOf([atMs], context),
    read: [zoneLine(context)],
    sources: ['practice'],
    next: [action(say('dose.showLog'), 'log show', { tank: tank.name })],
  });
}

function nothing(tank: Tank, what: 'readings' | 'dose'): Answer {
  return answer({
    headline: `There is no ${what === 'dose' ? 'dose' : 'reading'} to take back for ${tank.name}.`,
    sources: ['practice'],
  });
}
