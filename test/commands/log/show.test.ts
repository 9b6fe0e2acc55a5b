import { describe, expect, it } from 'vitest';
import { addCommand } from '../../../commands/log/add.ts';
import { logDoseCommand } from '../../../commands/log/dose.ts';
import { showCommand } from '../../../commands/log/show.ts';
import { undoCommand } from '../../../commands/log/undo.ts';
import { problemOf } from '../text.ts';
import { member } from './member.ts';

function logged() {
  const one = member();
  one.run(addCommand, { readings: 'kh 9.3 ca 420', note: 'new kit' });
  one.wait(1);
  one.run(logDoseCommand, { of: 'kh', rise: '0.5 dKH' });
  one.wait(1);
  one.run(addCommand, { readings: 'kh 8.8' });
  return one;
}

describe('/log show', () => {
  it('lists readings and doses, the newest first, by the member’s clock', () => {
    const answer = logged().run(showCommand);
    expect(answer.table).toEqual({
      head: ['Time', 'What', 'Value', 'Note'],
      rows: [
        ['2026-01-05 12:00', 'alkalinity', '8.8 dKH', ''],
        ['2026-01-04 12:00', 'dose for alkalinity', '+0.5 dKH', ''],
        ['2026-01-03 12:00', 'alkalinity', '9.3 dKH', 'new kit'],
        ['2026-01-03 12:00', 'calcium', '420 mg/L', 'new kit'],
      ],
    });
    expect(answer.headline).toBe(
      'Reef: the last 4 entries, the newest first: alkalinity 8.8 dKH at 2026-01-05 12:00.',
    );
  });

  it('shows one parameter, and no more lines than asked', () => {
    const { run } = logged();
    expect(run(showCommand, { of: 'ca' }).table?.rows).toHaveLength(1);
    expect(run(showCommand, { most: 2 }).table?.rows.map(([time]) => time)).toEqual([
      '2026-01-05 12:00',
      '2026-01-04 12:00',
    ]);
    expect(problemOf(() => run(showCommand, { of: 'boron' })).field).toBe('of');
    expect(problemOf(() => run(showCommand, { most: 0 })).field).toBe('most');
  });

  it('says when there is nothing', () => {
    expect(member().run(showCommand).headline).toBe('Nothing is logged for Reef yet.');
    expect(logged().run(showCommand, { of: 'sg' }).headline).toBe(
      'Nothing of salinity is logged for Reef yet.',
    );
  });
});

describe('/log undo', () => {
  it('takes back what was typed last, even when it was tested before', () => {
    const { run, keep, tank } = logged();
    run(addCommand, { readings: 'mg 1300 no3 8', at: '3 days ago', note: 'late' });
    expect(run(undoCommand).headline).toBe(
      'Taken back from the log of Reef: magnesium 1300 mg/L, nitrate 8 mg/L of 2026-01-02 12:00, with the note "late".',
    );
    expect(run(undoCommand).headline).toContain('alkalinity 8.8 dKH of 2026-01-05 12:00');
    expect(keep.readings(tank.id, {}).map(({ value }) => value)).toEqual([9.3, 420]);
    expect(keep.additions(tank.id, {})).toHaveLength(1);
  });

  it('says when there is nothing', () => {
    expect(member().run(undoCommand).headline).toBe('There is no reading to take back for Reef.');
    expect(member().run(undoCommand, { of: 'dose' }).headline).toBe(
      'There is no dose to take back for Reef.',
    );
  });
});
