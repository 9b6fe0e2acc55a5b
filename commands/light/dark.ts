import { z } from 'zod';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption } from '../options.ts';
import { days as long } from '../waterchange/rate.ts';
import { urgentAction } from '../urgent/action.ts';

/** Common practice: what a power cut or a lamp on its way back may last without harm. */
const HARMLESS_DAYS = 3;

export const darkCommand = defineCommand({
  path: ['light', 'dark'],
  summary: 'How long corals bear the dark, and what to do until the light is back',
  example: '/light dark days:5 days',
  options: z.strictObject({
    days: quantityOption('days', 'How long it is or will be dark, e.g. 5 days').optional(),
  }),
  run: ({ days }): Answer => {
    const read =
      days === undefined ? undefined : readQuantity('days', days, { field: 'days', fallback: 'days' });
    return answer({
      headline: `${read === undefined ? '' : verdict(read.value)}Two to three days without light do corals no harm.`,
      facts: [
        { label: 'beyond that', value: 'they pale, those that need most light first (common practice)' },
      ],
      read: read === undefined ? [] : [`${long(read.value)} without light`, ...read.notes],
      steps: [
        'Water movement and warmth count more than light: see to the pumps and the heater first.',
        'For longer, put up any lamp: even a dim one, or a bright room without direct sun, helps.',
        'Feed little meanwhile: without light the tank takes up less.',
        'When the light is back, begin at about half and go up over one to two weeks.',
      ],
      dangers: ['No blackout against algae with corals that need much light.'],
      sources: ['practice'],
      next: [urgentAction('power cut')],
    });
  },
});

function verdict(days: number): string {
  return days <= HARMLESS_DAYS
    ? `${long(days)}: no harm. `
    : `${long(days)} is long: get some light over them sooner. `;
}
