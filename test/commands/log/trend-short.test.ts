import { expect, it } from 'vitest';
import { addCommand } from '../../../commands/log/add.ts';
import { trendCommand } from '../../../commands/log/trend.ts';
import { textOf } from '../text.ts';
import { member } from './member.ts';

it('makes no trend of readings a few hours apart, but says that it moved too fast', () => {
  const { run, wait } = member();
  run(addCommand, { readings: 'kh 9.9' });
  wait(0.3);
  run(addCommand, { readings: 'kh 8.2' });
  const shown = textOf(run(trendCommand, { of: 'alk' }));
  expect(shown).toMatch(/too short a time/);
  expect(shown).not.toMatch(/(?:rising|falling) \d/);
  expect(shown).toMatch(/faster|usual limit|usual 1 dKH|pace/i);
});
