import { expect, it } from 'vitest';
import { render } from '../../../bot/discord/message/render.ts';
import { twoPersons } from './person.ts';

/** Handling zoanthids is dangerous (Hamade et al. 2015): the words must not be cut, however many stand in the tank. */
it.each(['/coral check', '/coral map'])('%s of a hundred zoanthids still says what to do', (line) => {
  const [{ keep, say }] = twoPersons();
  const [tank] = keep.tanks();
  for (let i = 0; i < 100; i++) {
    keep.addCoral(tank?.id ?? 0, {
      coralId: i % 2 === 0 ? 'zoanthus' : 'toadstool-sarcophyton',
      label: `${'A very long label of my own, number'} ${i}`,
      spot: { xCm: 5 + (i % 20) * 5, yCm: 5 + Math.floor(i / 20) * 8, zCm: 10 },
      rough: false,
      diameterCm: 3,
      origin: 'unknown',
    });
  }
  const shown = JSON.stringify(render(say(line)).body);
  expect(shown).toMatch(/and \d+ more: May hold palytoxin\. Wear gloves and eye protection/);
  expect(shown).toMatch(/call a doctor or a poison centre and say palytoxin/);
});
