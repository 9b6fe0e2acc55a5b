import { z } from 'zod';
import { onTheFloorL } from '../../core/change/drain-down.ts';
import { volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption } from '../options.ts';
import { urgentAction } from '../urgent/action.ts';

export const spillCommand = defineCommand({
  path: ['water', 'spill'],
  summary: 'Whether the sump holds what runs back: the return pump stops, or how much spills',
  example: '/water spill drains:120 x 50 x 4 cm pipes:2 L room:20 L',
  options: z.strictObject({
    drains: quantityOption('volume', 'What runs back: length x width x fall, 120 x 50 x 4 cm, or litres'),
    pipes: quantityOption('volume', 'What stands in pipes and overflow box; none if left out').optional(),
    room: quantityOption('volume', 'Free space in the sump, above its running level').optional(),
  }),
  run: ({ drains, pipes, room }): Answer => {
    const fields = { drains, pipes, room };
    const [fall, standing, free] = (['drains', 'pipes', 'room'] as const).map((field) => {
      const text = fields[field];
      return text === undefined ? undefined : readQuantity('volume', text, { field });
    });
    const drainsL = fall?.value ?? 0;
    const pipesL = standing?.value ?? 0;
    const backL = drainsL + pipesL;
    const floorL = free === undefined ? undefined : onTheFloorL({ drainsL, pipesL, roomL: free.value });
    return answer({
      headline: headline(backL, free?.value, floorL),
      read: [
        `${volume(drainsL)} runs back from the display`,
        standing === undefined ? 'nothing counted for pipes' : `${volume(pipesL)} in the pipes`,
        ...(free === undefined ? [] : [`${volume(free.value)} of room in the sump`]),
        ...new Set([fall, standing, free].flatMap((read) => read?.notes ?? [])),
      ],
      facts: [
        { label: 'runs back in all', value: volume(backL) },
        ...(floorL === undefined ? [] : [{ label: 'on the floor', value: volume0(floorL) }]),
      ],
      steps: [
        'Try it: sump at its usual mark, return pump off, and stand by with the plug in a dry hand.',
        'The fall ends where the return pipe sucks air: keep its hole just under the surface, free of algae.',
        ...(floorL !== undefined && floorL > 0
          ? [
              `Run the sump ${volume(floorL)} lower, drill or raise that hole, or take a larger sump.`,
              'What spilled was tank water: replace it with salt water of the usual strength, not with fresh.',
            ]
          : ['Mark the highest running level on the sump, and fill it no higher.']),
      ],
      working: [
        ...(pipesL === 0 ? [] : [`${volume(drainsL)} + ${volume(pipesL)} = ${volume(backL)}`]),
        ...(free === undefined || floorL === undefined
          ? []
          : [
              `${volume(backL)} - ${volume(free.value)} of room = ${floorL > 0 ? volume(floorL) : 'none left over'}`,
            ]),
      ],
      dangers: [
        'Water on the floor near a plug: breaker first, from a dry place.',
        'Every plug above the water line with a drip loop, behind a ground-fault switch.',
      ],
      cautions: [
        'A check valve sticks one day: do not reckon on it. A display filled from a clogged overflow is another case.',
      ],
      sources: ['geometry', 'practice'],
      next: [urgentAction('flood')],
    });
  },
});

function headline(backL: number, roomL: number | undefined, floorL: number | undefined): string {
  const back = `${volume(backL)} runs back when the return pump stops`;
  if (roomL === undefined || floorL === undefined)
    return `${back}: the sump needs that much free above its running level, and a few litres more.`;
  if (floorL > 0)
    return `Not enough room: ${back}, the sump takes ${volume(roomL)}, ${volume(floorL)} spills.`;
  const leftL = roomL - backL;
  return leftL < backL * MARGIN
    ? `Only just: ${back} and the sump takes ${volume(roomL)}. Leave a tenth more.`
    : `It holds: ${back}, and the sump takes ${volume(roomL)}.`;
}

/** Free space beyond what runs back, as a part of it, below which it is called tight. Own choice. */
const MARGIN = 0.1;

function volume0(litres: number): string {
  return litres === 0 ? 'none' : volume(litres);
}
