import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commands } from '../../../commands/index.ts';
import { ask } from '../../ask.ts';
import { everyComponent } from '../../discord/standin/component.ts';
import { list, record } from '../../discord/standin/json.ts';
import type { Json } from '../../discord/standin/json.ts';
import { userIds } from '../../discord/standin/world.ts';
import { nowMs, openClub } from './club.ts';
import type { Club } from './club.ts';
import { profile } from './members.ts';

let club: Club;
let tankId = 0;
beforeEach(async () => {
  club = await openClub({ commands, ask });
  tankId = club.store.keepFor(userIds.keeper).addTank(profile('Pantry', 251.7)).id;
});
afterEach(async () => {
  await club.close();
  if (club.log.join('').includes('errorId')) throw new Error(club.log.join(''));
});

const open = () => club.standIn.slash('log', {}, { subcommand: 'add' });
const labelsOf = (modal: Json) => list(modal['components']).map((each) => record(each)['label']);
const values = () =>
  club.store
    .keepFor(userIds.keeper)
    .latest(tankId)
    .map(({ parameter, value }) => [parameter, Number(value.toFixed(2))]);

describe('/log add without readings', () => {
  it('opens a form with a field a value, in the units of the tank', async () => {
    const modal = await open().modal;
    expect(modal['title']).toBe('Log readings of your tank');
    expect(labelsOf(modal)).toEqual([
      'Alkalinity, dKH',
      'Calcium, mg/L',
      'Magnesium, mg/L',
      'Nitrate, mg/L',
      'Phosphate, mg/L',
    ]);
  });

  it('logs what was written, empty fields left out', async () => {
    const opened = open();
    await opened.modal;
    const fields = { 'reading.alkalinity': '8,1', 'reading.phosphate': '0.04' };
    const reply = await club.standIn.submitModal(opened, fields).reply;
    expect(reply.text).toContain('Logged for Pantry');
    expect(values()).toEqual([
      ['alkalinity', 8.1],
      ['phosphate', 0.04],
    ]);
  });

  it('keeps every value of the form as it was opened, whatever is logged meanwhile', async () => {
    const opened = open();
    await opened.modal;
    const keep = club.store.keepFor(userIds.keeper);
    for (const parameter of ['salinity', 'temperature', 'potassium', 'strontium', 'iodine'] as const)
      keep.addEntry(tankId, { atMs: nowMs - 1000, values: [{ parameter, value: 8 }], note: undefined });
    const fields = { 'reading.alkalinity': '8.1', 'reading.phosphate': '0.04' };
    await club.standIn.submitModal(opened, fields).reply;
    expect(values()).toEqual(
      expect.arrayContaining([
        ['alkalinity', 8.1],
        ['phosphate', 0.04],
      ]),
    );
  });

  it('asks for what the member logs most', async () => {
    const keep = club.store.keepFor(userIds.keeper);
    const at = (parameter: 'salinity' | 'temperature', value: number, ago: number) =>
      keep.addEntry(tankId, { atMs: nowMs - ago, values: [{ parameter, value }], note: undefined });
    for (const ago of [1, 2, 3]) at('salinity', 35, ago * 86_400_000);
    at('temperature', 25, 1000);
    expect(labelsOf(await open().modal).slice(0, 2)).toEqual(['Salinity, ppt', 'Temperature, °C']);
  });

  it.each([
    [{ 'reading.alkalinity': 'zzz', 'reading.calcium': '420' }, 'Alkalinity, dKH'],
    [{ 'reading.alkalinity': '8.1', 'reading.calcium': '-5' }, 'Calcium, mg/L'],
    [{ 'reading.alkalinity': '8.1 mg 1300' }, 'Alkalinity, dKH'],
  ])(
    'names the one field that cannot be read, logs nothing, and keeps the rest: %j',
    async (fields, field) => {
      const opened = open();
      await opened.modal;
      const reply = await club.standIn.submitModal(opened, fields).reply;
      expect(reply.ephemeral).toBe(true);
      expect(reply.text).toContain(field);
      expect(values()).toEqual([]);
      const again = everyComponent(reply.components)
        .map((each) => String(each['custom_id']))
        .find((id) => /^(?:ask|held):/.test(id));
      const modal = await club.standIn.component(again ?? '').modal;
      const written = list(modal['components']).map((each) => record(record(each)['component']));
      for (const [id, value] of Object.entries(fields))
        expect(written.find((each) => each['custom_id'] === id)?.['value']).toBe(value);
    },
  );
});
