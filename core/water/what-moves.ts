import type { ParameterId } from './parameter.ts';

/** What moves a level by itself, the likeliest first, upward and downward. Common practice, no source. */
interface Causes {
  readonly up: readonly string[];
  readonly down: readonly string[];
}

const MORE_SALT =
  'salinity that rose (evaporation, salt water in the top-off): it lifts all dissolved salts in proportion';
const LESS_SALT =
  'salinity that fell (a top-off that ran on, skimmate replaced with fresh water): it lowers all of them';
const FRESH_MIX = 'a water change with a mix that holds more or less of it: test the new water';

const causes: Readonly<Partial<Record<ParameterId, Causes>>> = {
  alkalinity: {
    up: [
      'a doser, reactor or limewater that gives more than the tank uses',
      'corals that grow less than before',
      FRESH_MIX,
      MORE_SALT,
    ],
    down: [
      'use by corals and coralline algae, more as they grow',
      'a doser, reactor or limewater that stopped or gives less',
      FRESH_MIX,
      'chalk falling out where pH and alkalinity are high: white crust on heaters and pumps',
    ],
  },
  calcium: {
    up: ['a doser or reactor that gives more than the tank uses', FRESH_MIX, MORE_SALT],
    down: [
      'use by corals, about 7 mg/L for each 1 dKH',
      'a doser or reactor that stopped',
      FRESH_MIX,
      LESS_SALT,
    ],
  },
  magnesium: {
    up: [FRESH_MIX, MORE_SALT, 'dosing it without a test'],
    down: ['slow use by corals and coralline algae', FRESH_MIX, LESS_SALT],
  },
  salinity: {
    up: [
      'evaporation that was not topped off, an empty or stuck top-off',
      'salt water in the top-off',
      'an instrument that drifted: check it on a 35 ppt standard',
    ],
    down: [
      'a top-off that ran on',
      'salt water lost (skimmate, spills, leaks) and replaced with fresh',
      'new salt water mixed too weak',
      'an instrument that drifted: check it on a 35 ppt standard',
    ],
  },
  nitrate: {
    up: [
      'more food or more fish',
      'something that died',
      'export that got less: skimmer, refugium, water changes',
      'nitrite in the water, which makes nitrate kits read too high',
    ],
    down: [
      'algae or bacteria that grow and take it up',
      'less food, more export, a carbon source',
      'water changes',
    ],
  },
  phosphate: {
    up: [
      'more food',
      'something that died',
      'new rock or sand that gives it off',
      'spent phosphate media, top-off or tap water that holds it',
    ],
    down: ['phosphate media, fresh rock or sand that binds it', 'algae or bacteria that take it up'],
  },
  ph: {
    up: [
      'the hour: highest before the lights go off',
      'fresh air in the room',
      'limewater or soda ash going in fast',
      'a probe that wants calibration',
    ],
    down: [
      'the hour: lowest before the lights come on',
      'carbon dioxide of a closed room in winter, or of a calcium reactor',
      'falling alkalinity',
      'a probe that wants calibration',
    ],
  },
  temperature: {
    up: [
      'a heater that sticks or a thermostat that drifted',
      'the room, pumps and lamps',
      'a thermometer that is off: hold a second one beside it',
    ],
    down: [
      'a heater that failed or is too small',
      'the room, an open window, a fan',
      'a thermometer that is off: hold a second one beside it',
    ],
  },
  ammonia: {
    up: ['something that died, too much food', 'a filter that was cleaned too well, or ran dry'],
    down: ['bacteria that take it up: as it should'],
  },
  nitrite: {
    up: ['a filter that has not caught up', 'something that died'],
    down: ['bacteria that take it up: as it should'],
  },
};

const others: Causes = {
  up: [FRESH_MIX, MORE_SALT, 'dosing it without a test'],
  down: ['use by what lives in the tank', FRESH_MIX, LESS_SALT],
};

/** What a keeper may rule out: what was not done, or that the hour of the day was another. */
export const ruledOut = ['dosing', 'changes', 'feeding', 'top-off', 'hour'] as const;
export type RuledOut = (typeof ruledOut)[number];

/** What a cause rests on, by its words; others come whatever is done. */
const restsOn: Readonly<Record<RuledOut, RegExp>> = {
  dosing: /^(?:a doser|dosing|limewater|corals that grow less)/,
  changes: /^(?:a water change|water changes|new salt water)/,
  feeding: /^(?:more food|less food)/,
  'top-off': /^a top-off that ran on/,
  hour: /^the hour/,
};

/** What a room that is shut up brings. */
const SHUT_ROOM = /^carbon dioxide of a closed room/;

/**
 * The likely causes of a level that went up or down by itself, without those that were ruled out; what a room shut up since
 * then brings comes first.
 */
export function whatMoves(
  id: ParameterId,
  way: 'up' | 'down',
  without: readonly RuledOut[] = [],
  isRoomShut = false,
): readonly string[] {
  const all = (causes[id] ?? others)[way];
  const left = all.filter((cause) => !without.some((one) => restsOn[one].test(cause)));
  const first = left.filter((cause) => isRoomShut && SHUT_ROOM.test(cause));
  const isKit = without.some((one) => one !== 'hour');
  return [
    ...first,
    ...left.filter((cause) => !first.includes(cause)),
    ...(isKit ? ['a kit that scatters, or old reagents: read a standard'] : []),
  ];
}

/** What a tank of corals uses up, so that a steady fall is no fault. */
const USED: ReadonlySet<ParameterId> = new Set([
  'alkalinity',
  'calcium',
  'magnesium',
  'strontium',
  'potassium',
]);

export function isUsedUp(id: ParameterId): boolean {
  return USED.has(id);
}
