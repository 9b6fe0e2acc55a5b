import { z } from 'zod';
import { printed } from '../../core/log/value.ts';
import { mass, significant } from '../../core/quantity/format.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand, type OwnContext } from '../command.ts';
import type { Addition, Keep, Reading, Tank } from '../keep.ts';
import { textOption } from '../options.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { inZone } from '../zone.ts';
import { askedMeasured } from './asked-measured.ts';
import { momentsOf, timeOf, zoneLine } from './words.ts';
import { say } from '../../core/wording/say.ts';

const USUALLY = 20;
const MOST = 100;

export const showCommand = defineCommand({
  path: ['log', 'show'],
  summary: 'What is logged for your tank, readings and doses, the newest first',
  example: '/log show of:alkalinity',
  private: true,
  options: z.strictObject({
    of: textOption('Only this one: alkalinity, salinity, ...', { suggest: 'parameter' }).optional(),
    most: z.number().int().min(1).max(MOST).describe('How many lines; 20 if left out').optional(),
    tank: textOption('Which of your tanks, if not the one in use', { suggest: 'tank' }).optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const id = input.of === undefined ? undefined : askedMeasured(input.of);
    return shown(keep, tank, id, input.most ?? USUALLY, inZone(context, tank));
  },
});

interface LineOfLog {
  readonly atMs: number;
  readonly cells: readonly [what: string, value: string, note: string];
}

function shown(
  keep: Keep,
  tank: Tank,
  id: ParameterId | undefined,
  most: number,
  context: OwnContext,
): Answer {
  const readings = keep.readings(tank.id, { parameter: id, most });
  const additions = keep.additions(tank.id, {}).filter((one) => id === undefined || one.parameter === id);
  const lines = [...readings.map((one) => ofReading(one, tank)), ...additions.slice(-most).map(ofAddition)]
    .sort((a, b) => b.atMs - a.atMs)
    .slice(0, most);
  const [newest] = lines;
  const subject = id === undefined ? '' : ` of ${parameter(id).label}`;
  if (newest === undefined) {
    return answer({
      headline: `Nothing${subject} is logged for ${tank.name} yet.`,
      steps: ['Log a line of readings: /log add readings:alk 8.1 ca 420 mg 1350.'],
      sources: ['practice'],
    });
  }
  const [what, value] = newest.cells;
  return answer({
    headline: `${tank.name}: the last ${lines.length === 1 ? 'entry' : `${lines.length} entries`}${subject}, the newest first: ${what} ${value} at ${timeOf(newest.atMs, context)}.`,
    instants: momentsOf([newest.atMs], context),
    read: [zoneLine(context)],
    table: {
      head: ['Time', 'What', 'Value', 'Note'],
      rows: lines.map(({ atMs, cells }) => [timeOf(atMs, context), ...cells]),
    },
    sources: ['practice'],
    next: [action(say('log.checkup'), 'checkup', { tank: tank.name })],
  });
}

function ofReading({ atMs, parameter: id, value, note = '' }: Reading, tank: Tank): LineOfLog {
  return { atMs, cells: [parameter(id).label, printed(id, value, tank.units), note] };
}

function ofAddition({ atMs, parameter: id, compound, massG, rise }: Addition): LineOfLog {
  const { label, unit } = parameter(id);
  const what = compound === undefined ? '' : massG === undefined ? compound : `${mass(massG)} of ${compound}`;
  return { atMs, cells: [`dose for ${label}`, `+${significant(rise, 3)} ${unit}`, what] };
}
