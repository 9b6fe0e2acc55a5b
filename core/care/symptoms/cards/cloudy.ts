import type { SymptomCard } from '../card.ts';

export const cloudy: SymptomCard = {
  group: 'water',
  label: 'Cloudy water',
  causes: {
    bacteria: {
      name: 'a bloom of bacteria',
      why: 'after a death, food or a young filter',
      signs: ['young tank', 'ammonia'],
    },
    falling: {
      name: 'chalk falling out after dosing',
      why: 'white within minutes of a dose',
      signs: ['alkalinity high'],
    },
    sand: { name: 'stirred sand', why: 'settles within a day' },
    spawning: { name: 'animals spawning', why: 'sudden, and it skims out' },
  },
  questions: [
    {
      ask: 'What was just done?',
      choices: {
        dosed: {
          label: 'dosed something',
          up: ['falling'],
          because: 'something was just dosed',
          first: 'Stop all dosing now.',
        },
        sand: { label: 'moved sand or rock', up: ['sand'], because: 'sand was stirred' },
        died: { label: 'food, or something died', up: ['bacteria'], because: 'there is something to rot' },
        nothing: { label: 'nothing', up: ['bacteria', 'spawning'], because: 'nothing was done' },
      },
    },
    {
      ask: 'How do fish breathe?',
      choices: {
        fast: {
          label: 'fast',
          up: ['bacteria'],
          because: 'a bloom takes oxygen',
          first: 'Oxygen first: air stone and a pump at the surface, now.',
        },
        normal: { label: 'as usual', because: 'fish breathe as usual' },
      },
    },
  ],
  first: 'Move the surface more, with an air stone too, and stop dosing and feeding.',
  steps: ['Test ammonia and alkalinity.', 'Fresh carbon and clean floss.', 'Look for something dead.'],
  never: ['No more additives, clearing ones neither.'],
  stop: 'Fish gasping: oxygen first, then ask at once.',
  sources: ['practice'],
  urgent: 'oxygen loss',
};
