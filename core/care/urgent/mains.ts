import type { UrgentCard } from './card.ts';

/** Mains near water, before anybody is hurt. Common practice, no source. */
export const mainsFault: UrgentCard = {
  label: 'Tripping switch, tingle, wet plug',
  first:
    'Hands out of the water: switch off at the breaker, from a dry place, before you touch tank, plug or lead.',
  steps: [
    'A trip switch (RCD, GFCI) that trips did its work. All plugs out, dry hands; reset, then one plug at a time.',
    'What makes it trip is scrap. It trips with nothing plugged in, or stray voltage stays: an electrician.',
    'A wet plug, socket or power strip: breaker off, then out for good. Drying does not make it safe.',
    'Every cable gets a drip loop: it hangs below its socket before it rises to it. Sockets high and to the side.',
    'One extension lead, off the floor, never one in another. Unplug what your hand goes near, heater first.',
  ],
  never: [
    'Never bypass or tape a trip switch, and never go on without one.',
    'Never test for a tingle with a hand. A grounding probe does not replace the switch.',
  ],
  stop: 'Anyone felt it: /urgent what:person hurt hurt:electric shock. Scorched or humming parts: electrician before power.',
  sources: ['practice'],
};
