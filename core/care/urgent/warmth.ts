import { readIn } from '../../corals/basis-words.ts';
import type { UrgentCard } from './card.ts';

/** Water too warm or too cold. Common practice; the pace of 1 °C an hour is from memory. */
export const overheating: UrgentCard = {
  label: 'Too hot',
  first:
    'Unplug the heater at the wall and move the surface as strongly as you can: warm water holds less oxygen.',
  steps: [
    'Check the number with a second thermometer before you cool anything.',
    'Lamps off or down, lid off, and a fan blowing across the surface. Top off what evaporates with fresh water.',
    'Still too warm: float closed bottles of frozen water, one at a time, and watch the thermometer.',
    'At most 1 °C an hour while it is dangerous, and 0.5 to 1 °C a day for the last part.',
    'Air stone in, and watch how fish breathe.',
    'Find the cause: a heater stuck on, a pump running hot, the sun, the room, the chiller.',
    'For the next days keep the light down and feed lightly: heated corals bleach after the heat.',
  ],
  never: [
    'No loose ice, no cold tap water and no big change with cold water.',
    'Do not reach in beside a heater that is plugged in.',
  ],
  stop: 'Above 29 °C with several corals pale or fish gasping: ask an experienced keeper or an aquatic vet within the hour.',
  published: [`heat: stress begins about 1 °C above the warmest usual month (${readIn('NOAACRW')})`],
  sources: ['practice', 'memory'],
};

export const coldWater: UrgentCard = {
  label: 'Too cold',
  first: 'Unplug the heater at the wall before you reach in, and check the number with a second thermometer.',
  steps: [
    'Look at the heater: cracked, dry, or simply off? A cracked one never goes back in (/urgent what:burst heater).',
    'Warm the room, put the lid on with a gap for air, wrap the sides.',
    'Float closed bottles of warm water, and change them as they cool.',
    'At most 1 °C an hour while it is dangerous, then 0.5 to 1 °C a day.',
    'Keep the surface moving. No feeding until it is warm again.',
    'Test ammonia today and tomorrow, and take out anything dead.',
    'A new heater goes in only after the water is steady, and on a controller of its own if you can.',
  ],
  never: ['No hot or boiling water into the tank.', 'Do not turn two heaters up to make it quicker.'],
  stop: 'Fish lying down or not swimming upright although it warms: ask a vet who knows fish.',
  sources: ['practice', 'memory'],
};
