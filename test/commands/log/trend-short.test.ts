import { expect, it } from 'vitest';
import { addCommand } from '../../../commands/log/add.ts';
import { trendCommand } from '../../../commands/log/trend.ts';
import { textOf } from '../text.ts';
import { member } from './member.ts';

it('makes no trend of readings a few hours apart; that they moved too fast was said when they were logged', () => {
  const { run, wait } = member();
  run(addCommand, { readings: 'kh 9.9' });
  wait(0.3);
  expect(textOf(run(addCommand, { readings: 'kh 8.2' }))).toMatch(/1 dKH a day/);
  const trend = run(trendCommand, { of: 'alk' });
  expect(trend.headline).toMatch(/^No trend yet: it takes two readings a day or more apart/);
  expect(trend.pictures?.[0]).toBeUndefined();
});
