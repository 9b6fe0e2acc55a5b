import type { SymptomCard } from '../card.ts';

export const manyAtOnce: SymptomCard = {
  group: 'water',
  label: 'Many animals suddenly bad at once',
  causes: {
    heat: {
      name: 'a heater stuck on or off',
      why: 'the thermometer tells at once',
      signs: ['hot', 'cold', 'temperature moved'],
    },
    salt: {
      name: 'salinity: top-off or mixing',
      why: 'measure with two instruments',
      signs: ['salinity off', 'salinity moved'],
    },
    dosing: {
      name: 'a doser that ran on',
      why: 'look at alkalinity and pH',
      signs: ['alkalinity high', 'alkalinity moved', 'dosed'],
    },
    poison: { name: 'spray, metal, cleaner or a treatment', why: 'ask everybody in the house' },
    oxygen: { name: 'oxygen loss', why: 'fish at the surface, pumps off' },
    current: { name: 'stray current', why: 'a cracked heater or pump' },
  },
  questions: [
    {
      ask: 'What do temperature and salinity read right now?',
      choices: {
        temp: { label: 'temperature is off', up: ['heat'], because: 'temperature is off' },
        salt: { label: 'salinity is off', up: ['salt'], because: 'salinity is off' },
        fine: {
          label: 'both fine',
          up: ['dosing', 'poison', 'oxygen'],
          down: ['heat', 'salt'],
          because: 'both read fine',
        },
      },
    },
    {
      ask: 'Anything unusual?',
      choices: {
        spray: { label: 'spray, paint, cleaner', up: ['poison'], because: 'something was used nearby' },
        dosed: { label: 'doser or new product', up: ['dosing'], because: 'something was dosed' },
        gasp: { label: 'fish gasp', up: ['oxygen'], because: 'fish gasp' },
        tingle: {
          label: 'a tingle from the water',
          up: ['current'],
          because: 'you felt current',
          first: 'Hands off, and breaker off from a dry place, now.',
        },
      },
    },
  ],
  first: 'Read temperature and salinity now, stop every doser and the top-off, and put an air stone in.',
  steps: [
    'Fresh carbon.',
    'A large change with matched water (/waterchange once), as soon as it is mixed.',
    'Keep a bottle of the old water and take photos.',
    'Correct heat or cold by at most 1 °C an hour.',
  ],
  never: ['No fast heating or cooling.', 'Do not put in remedies one after another.'],
  stop: 'Ask experienced keepers within the hour.',
  sources: ['practice', 'memory'],
  change: [0.25, 0.5],
  urgent: 'oxygen loss',
};
