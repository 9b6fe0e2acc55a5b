import { levelCard } from '../../core/care/urgent/level-card.ts';
import { urgentSide, type Side } from '../../core/water/limits.ts';
import { paceWords } from '../../core/water/pace-words.ts';
import type { ParameterId } from '../../core/water/parameter.ts';

/** What is done first about an urgent level, once a second test confirms it: common practice, no source. */
const first: Readonly<Partial<Record<ParameterId, Readonly<Partial<Record<Side, readonly string[]>>>>>> = {
  ammonia: {
    high: [
      'stop feeding, move the surface strongly, take out anything dead.',
      'Change a quarter to a half of the water today, new water of the same salinity and temperature.',
      'Test every day until it reads none.',
    ],
  },
  salinity: {
    low: [
      `look at the top-off first; raise it by ${paceWords('salinity').up}.`,
      'Leave every ion alone until then.',
    ],
    high: [
      `swap tank water for fresh (RO) water, by ${paceWords('salinity').down}.`,
      'Leave every ion alone until then.',
    ],
  },
  temperature: {
    low: ['heater looked at with its plug out, surface moved strongly, closed bottles of warm water.'],
    high: ['heater off at the wall, surface moved strongly, lamps off.'],
  },
  alkalinity: {
    low: [
      `raise it from today by ${paceWords('alkalinity').up} (/dose amount), never at once.`,
      'Find what used it up or stopped going in.',
    ],
    high: [
      'stop everything that adds it, limewater included, and let the tank use it up.',
      'Never acid into the tank.',
    ],
  },
  ph: {
    low: [
      'fresh air in the room and a strongly moved surface.',
      'Look for carbon dioxide (a reactor, a closed room) and test alkalinity. Nothing is dosed for pH.',
    ],
    high: ['stop limewater and soda ash, and move the surface strongly.', 'No acid, no vinegar.'],
  },
};

/** The steps about an urgent reading; `named` is it with its number. */
export function urgentSteps(id: ParameterId, value: number, named: string): readonly string[] {
  const side = urgentSide(id, value) ?? 'high';
  const card = levelCard(id, side);
  const [now, ...then] = first[id]?.[side] ?? ['act today.'];
  return [
    `${named}: test again now, fresh sample, another instrument if you can.`,
    `If it is confirmed: ${now}`,
    ...then,
    ...(card === undefined ? [] : [`/urgent what:${card} has the rest.`]),
  ];
}
