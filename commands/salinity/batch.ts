import { z } from 'zod';
import { fractionForGoal } from '../../core/change/exchange.ts';
import { freshWaterToAddKg, mixRange } from '../../core/change/salt.ts';
import { inRange } from '../../core/problem.ts';
import { fixed, mass, volume, volumeAsWritten } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { askFirst, stillUnusual, sureOption } from '../unusual.ts';
import { asRead, readPairOf, UNPLUG } from './print.ts';
import { opened } from '../short/remark-first.ts';

/** Readings nearer than this are one number, ppt; own choice, as in /salinity adjust. */
const NEAR_PPT = 0.3;
/** Salt mix for a litre and each ppt, g: the cautious first step (salinity mix says why). */
const MIX_G = 1;

export const batchCommand = defineCommand({
  path: ['salinity', 'batch'],
  summary: 'Correct a batch of new salt water: too weak or too strong',
  example: '/salinity batch volume:32 gal now:1.023 goal:1.026',
  options: z.strictObject({
    volume: quantityOption('volume', 'How much is mixed, e.g. 32 gal'),
    now: textOption('What it reads, e.g. 1.023'),
    goal: textOption('What you want; 35 ppt if left out').optional(),
    sure: sureOption(),
  }),
  run: (input): Answer => {
    const readings = readPairOf(input.now, input.goal);
    const [from, to] = [readings.now, readings.goal];
    const now = inRange('now', from.practicalSalinity, mixRange.min, mixRange.max, 'ppt');
    const goal = inRange('goal', to.practicalSalinity, mixRange.min, mixRange.max, 'ppt');
    const planned = { id: 'salinity', goal, now } as const;
    const asked = askFirst({
      ...planned,
      sure: input.sure,
      again: (label, changed) => action(label, 'salinity batch', { ...input, ...changed }),
    });
    if (asked !== undefined) return asked;
    const { value: litres, written, unit, notes } = readQuantity('volume', input.volume, { field: 'volume' });
    const of = volumeAsWritten(litres, written, unit);
    const { what, working } = correction(now, goal, litres);
    const unusual = stillUnusual(planned).trim();
    const given = answer({
      headline: '',
      read: [
        `a batch without animals, ${asRead(from)} now, ${input.goal === undefined ? '35 ppt' : asRead(to)} wanted`,
        ...new Set([
          ...from.notes,
          ...to.notes.filter((note) => !note.startsWith('specific gravity on')),
          ...notes,
        ]),
      ],
      steps: [
        'Check the instrument on a 35 ppt standard first.',
        'Add most of it, mix, measure, then the rest: mixes differ and bags hold moisture.',
        'In a tank with animals this goes slowly, over days: ask it with "tank" (/salinity adjust).',
      ],
      working: [working],
      dangers: [UNPLUG],
      sources: ['mixing', 'fm83', 'practice'],
    });
    return opened(
      [
        { value: `In ${of} of new salt water: ${what}.` },
        ...(unusual === '' ? [] : [{ label: 'the goal', value: unusual, isBefore: true } as const]),
      ],
      given,
    );
  },
});

/** Salt to add, fresh water to add, or neither. */
function correction(
  now: number,
  goal: number,
  litres: number,
): { readonly what: string; readonly working: string } {
  if (Math.abs(goal - now) < NEAR_PPT) {
    const working = `${fixed(now, 1)} and ${fixed(goal, 1)} ppt are closer than a hobby instrument can tell`;
    return { what: 'leave it, it is there as near as an instrument can tell', working };
  }
  if (goal > now) {
    const saltG = (goal - now) * litres * MIX_G;
    return {
      what: `add about ${mass(saltG)} of salt mix (${MIX_G} g per litre for each ppt), mix until clear and measure`,
      working: `(${fixed(goal, 1)} - ${fixed(now, 1)}) ppt x ${fixed(litres, 1)} L x ${MIX_G} g = ${mass(saltG)}`,
    };
  }
  const share = freshWaterToAddKg(1, now, goal);
  const swap = fractionForGoal({ now, goal, fresh: 0 }) ?? 0;
  return {
    what: `add ${volume(share * litres)} of fresh (RO) water (${fixed(share * 100, 1)} %), or, in a full bin, swap ${volume(swap * litres)} for it`,
    working: `${fixed(now, 1)} / ${fixed(goal, 1)} - 1 = ${fixed(share * 100, 1)} %`,
  };
}
