import { describe, expect, it } from 'vitest';
import { quietSettings, type DeskSettings } from '../../../commands/server.ts';
import { DAY_MS, newFile, NOW_MS, opened, raw } from './place.ts';

const CLUB = '600000000000000006';
const OTHER = '70000000000000000007';
const loud: DeskSettings = {
  units: { alkalinity: 'dKH' },
  reminderChannelId: '500000000000000005',
  publicChannelIds: ['500000000000000005'],
  helperRoleId: undefined,
};

describe("a server's settings", () => {
  it('are quiet until they are set, and kept', () => {
    const file = newFile();
    const store = opened(file);
    expect(store.settingsOf(CLUB)).toEqual(quietSettings);
    store.changeSettings(CLUB, loud);
    store.changeSettings(OTHER, { ...quietSettings, helperRoleId: CLUB });
    expect([store.settingsOf(CLUB), store.settingsOf(OTHER).helperRoleId]).toEqual([loud, CLUB]);
    store.changeSettings(OTHER, quietSettings);
    store.close();
    const next = opened(file);
    expect([next.settingsOf(CLUB), next.settingsOf(OTHER)]).toEqual([loud, quietSettings]);
  });

  it('are forgotten a while after the bot was removed, unless it came back', () => {
    const file = newFile();
    const store = opened(file);
    for (const id of [CLUB, OTHER]) store.changeSettings(id, loud);
    for (const id of [CLUB, OTHER, '800000000000000008']) store.serverLeft(id, NOW_MS);
    store.serverJoined(OTHER);
    expect(store.forgetServersLeftBefore(NOW_MS)).toBe(0);
    expect(store.settingsOf(CLUB)).toEqual(loud);
    expect(store.forgetServersLeftBefore(NOW_MS + 30 * DAY_MS)).toBe(1);
    expect([store.settingsOf(CLUB), store.settingsOf(OTHER)]).toEqual([quietSettings, loud]);
    store.close();
    expect(raw(file, (db) => db.prepare('SELECT id FROM server').pluck().all())).toEqual([OTHER]);
  });

  it('are forgotten by the upkeep 30 days after the bot left, also where it left unnoticed', async () => {
    const store = opened();
    for (const id of [CLUB, OTHER]) store.changeSettings(id, loud);
    store.onlyServers([OTHER], NOW_MS);
    store.onlyServers([OTHER], NOW_MS + 5 * DAY_MS);
    await store.upkeep(NOW_MS + 30 * DAY_MS);
    expect(store.settingsOf(CLUB)).toEqual(loud);
    await store.upkeep(NOW_MS + 30 * DAY_MS + 1);
    expect([store.settingsOf(CLUB), store.settingsOf(OTHER)]).toEqual([quietSettings, loud]);
  });

  it('stay when the bot is found to be back', async () => {
    const store = opened();
    store.changeSettings(CLUB, loud);
    store.serverLeft(CLUB, NOW_MS);
    store.onlyServers([CLUB], NOW_MS + DAY_MS);
    await store.upkeep(NOW_MS + 100 * DAY_MS);
    expect(store.settingsOf(CLUB)).toEqual(loud);
  });

  it('come back to life when they are changed again', () => {
    const store = opened();
    store.changeSettings(CLUB, loud);
    store.serverLeft(CLUB, NOW_MS);
    store.changeSettings(CLUB, loud);
    expect(store.forgetServersLeftBefore(NOW_MS + DAY_MS)).toBe(0);
  });

  it('are looked at without a query', () => {
    const store = opened();
    store.changeSettings(CLUB, loud);
    store.close();
    expect([store.settingsOf(CLUB), store.settingsOf(OTHER)]).toEqual([loud, quietSettings]);
  });
});
