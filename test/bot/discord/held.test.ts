import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { MemberExport } from '../../../bot/store/export.ts';
import { commands } from '../../../commands/index.ts';
import { ask } from '../../ask.ts';
import { everyComponent } from '../../discord/standin/component.ts';
import type { Sent } from '../../discord/standin/message.ts';
import { channelIds, userIds } from '../../discord/standin/world.ts';
import { openClub } from './club.ts';
import type { Club } from './club.ts';
import { moveIn } from './members.ts';
import { whyOf } from './whole-text.ts';

const { keeper, second } = userIds;
const DAY_MS = 86_400_000;
const GONE = 'This answer is no longer kept (30 days). Ask again.';
const dose = { of: 'alkalinity', now: '7.2', goal: '8.4', with: 'soda ash' };

let nowMs: number;
let club: Club;

beforeEach(async () => {
  nowMs = 1_700_000_000_000;
  club = await openClub({ commands, ask, nowMs: () => nowMs });
});

afterEach(async () => {
  await club.close();
  if (club.log.join('').includes('errorId')) throw new Error(club.log.join(''));
});

const labelsOf = (sent: Sent): readonly (readonly [string, string])[] =>
  everyComponent(sent.components)
    .filter((each) => each['custom_id'] !== undefined)
    .map((each) => [String(each['label']), String(each['custom_id'])] as const);

const idOf = (sent: Sent, label: RegExp): string =>
  labelsOf(sent).find(([words]) => label.test(words))?.[1] ?? expect.unreachable();

const on = ({ message }: Sent) => ({ messageId: String(message['id']) });
const why = (sent: Sent, userId: string = keeper) =>
  club.standIn.component(whyOf(sent) ?? '', { ...on(sent), userId }).reply;
const amount = (given: Record<string, string>, userId: string = keeper) =>
  club.standIn.slash('dose', given, { subcommand: 'amount', userId }).reply;
const heldOf = (id: string) => (club.store.keepFor(id).exportAll() as MemberExport).held;

describe('"Working and sources"', () => {
  it('shows everything, to whoever presses alone, though nothing is run again', async () => {
    const asked = await amount({ ...dose, volume: '75 gal' });
    expect(asked.ephemeral).toBe(false);
    expect(asked.text).not.toMatch(/How it adds up|105\.99/);
    for (const who of [keeper, second]) {
      const shown = await why(asked, who);
      expect(shown.ephemeral).toBe(true);
      for (const part of ['6.4 g', '**How it adds up**', '105.99 g/mol', '**Sources**', '**Take care**'])
        expect(shown.text).toContain(part);
    }
  });

  it('outlives a restart, and is gone after thirty days', async () => {
    const asked = await club.standIn.mention('raise alk 7.2 to 8.4 in 75 gal with soda ash').reply;
    nowMs += 30 * DAY_MS;
    await club.restart();
    expect((await why(asked)).text).toContain('105.99 g/mol');
    nowMs += 1;
    const gone = await why(asked, second);
    expect([gone.ephemeral, gone.text.includes(GONE)]).toEqual([true, true]);
  });

  it('of a private answer opens for its own person alone', async () => {
    moveIn(club.store.keepFor(keeper), 'Pantry', 251.7, 'own');
    const asked = await amount(dose);
    expect(asked.ephemeral).toBe(true);
    expect((await why(asked)).text).toContain('Pantry');
    const other = await why(asked, second);
    expect([other.ephemeral, other.text.includes(GONE), other.text.includes('Pantry')]).toEqual([
      true,
      true,
      false,
    ]);
    const direct = await club.standIn.directMessage('raise alk 7.2 to 8.4 with soda ash').reply;
    const id = whyOf(direct) ?? '';
    expect((await club.standIn.component(id, { ...on(direct), dm: true }).reply).text).toContain('Pantry');
    expect((await club.standIn.component(id, { ...on(direct), userId: second }).reply).text).toContain(GONE);
  });

  it('is what the store shows as kept, until that is erased; the erasure itself is not held', async () => {
    const asked = await amount({ ...dose, volume: '75 gal' });
    expect(heldOf(keeper)).toMatchObject([{ kind: 'answer', isPrivate: false }]);
    expect(heldOf(second)).toEqual([]);
    await why(asked, second);
    expect(heldOf(keeper)).toHaveLength(1);
    club.store.keepFor(keeper).setZone('Asia/Tokyo');
    const erased = await club.standIn.slash('mydata', { sure: 'yes' }, { subcommand: 'erase' }).reply;
    expect(erased.text).toContain('Everything kept of you is removed.');
    expect(erased.text, 'nothing is left out, as nothing is held').toContain('seven days');
    expect(heldOf(keeper)).toEqual([]);
    expect((await why(asked)).text).toContain(GONE);
  });

  it('of an answer that a bot of another format held is ignored', async () => {
    const body = JSON.stringify({ format: 0, answer: { text: 'old' } });
    const asked = await amount({ ...dose, volume: '75 gal' });
    club.store.held.hold({ id: 'old', personId: keeper, isPrivate: false, kind: 'answer', body });
    const { reply } = club.standIn.component(whyOf(asked) ?? '', {
      ...on(asked),
      forged: 'why:old',
    });
    expect((await reply).text).toContain(GONE);
  });
});

describe('"More"', () => {
  it('shows the next page to the presser alone, until there is none', async () => {
    const first = await club.standIn.slash(
      'coral',
      { level: 'first year', par: '90', flow: 'low' },
      { subcommand: 'suited' },
    ).reply;
    const [, id] = labelsOf(first).find(([label]) => label.startsWith('More (2 of ')) ?? expect.unreachable();
    const next = await club.standIn.component(id, { ...on(first), userId: second }).reply;
    expect(next.ephemeral).toBe(true);
    expect(next.text.split('\n')[0]).toBe(first.text.split('\n')[0]);
    expect(next.text).not.toBe(first.text);
  });
});

describe('a call too long for a custom id', () => {
  const at = '30 cm from the left, 40 cm from the front, 25 cm up';

  it('has its button all the same: either kind of hammer', async () => {
    moveIn(club.store.keepFor(keeper), 'Pantry', 251.7, 'own');
    await club.standIn.slash('tank', { size: '120 x 50 x 50 cm' }, { subcommand: 'edit' }).reply;
    const asked = await club.standIn.slash(
      'coral',
      { coral: 'hammer', at, size: '2 heads' },
      { subcommand: 'add' },
    ).reply;
    expect(asked.text).toContain('Which hammer?');
    const labels = labelsOf(asked).map(([label]) => label);
    expect(labels.slice(0, 2)).toEqual(['Branching hammer coral', 'Wall hammer coral']);
    const id = idOf(asked, /Wall hammer/);
    expect(id).toMatch(/^held:h\d+$/);
    const other = await club.standIn.component(id, { ...on(asked), userId: second }).reply;
    expect([other.ephemeral, other.text.includes(GONE)]).toEqual([true, true]);
    await club.restart();
    const placed = await club.standIn.component(id, on(asked)).reply;
    expect(placed.text).toContain('Wall hammer coral is coral 1 of Pantry');
    expect(club.store.keepFor(keeper).corals(1)).toMatchObject([{ coralId: 'hammer-coral-wall' }]);
  });

  it('opens its form, which holds it too', async () => {
    moveIn(club.store.keepFor(keeper), 'Pantry', 251.7, 'own');
    const call = { command: 'log add', input: { tank: 'Pantry', note: 'n'.repeat(120) }, ask: ['readings'] };
    const asked = await amount({ ...dose, volume: '75 gal' });
    const body = JSON.stringify({ format: 1, call });
    club.store.held.hold({ id: 'form', personId: keeper, isPrivate: true, kind: 'call', body });
    const opened = club.standIn.component(whyOf(asked) ?? '', {
      ...on(asked),
      forged: 'held:form',
    });
    expect((await opened.modal)['custom_id']).toBe('held:form');
    const sent = await club.standIn.submitModal(opened, { 'reading.alkalinity': '7.9' }).reply;
    expect(sent.text).toContain('7.9 dKH');
    expect(club.store.keepFor(keeper).lastEntry(1)?.note).toBe('n'.repeat(120));
  });
});

describe('where nothing can be held', () => {
  it('nothing is left out, and the log has an id', async () => {
    const other = await openClub({ commands, ask, newHeldId: () => 'taken' });
    other.store.held.hold({ id: 'taken', personId: keeper, isPrivate: false, kind: 'answer', body: '{}' });
    const asked = await other.standIn.mention('raise alk 7.2 to 8.4 in 75 gal with soda ash', {
      channelId: channelIds.chat,
    }).reply;
    expect(whyOf(asked)).toBeUndefined();
    expect(asked.text).toContain('105.99 g/mol');
    expect(other.log.join('')).toMatch(/"errorId":"[0-9a-f]{8}".*an answer was not held/);
    await other.close();
  });
});
