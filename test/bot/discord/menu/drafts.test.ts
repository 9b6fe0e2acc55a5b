import { describe, expect, it } from 'vitest';
import { openDrafts } from '../../../../bot/discord/menu/drafts.ts';
import { answer } from '../../../../commands/answer.ts';

const draft = (helperId: string) => ({
  helperId,
  channelId: 'c',
  messageId: 'm',
  answer: answer({ headline: `for ${helperId}` }),
});

describe('drafts', () => {
  it('are given once, and to their helper alone', () => {
    const drafts = openDrafts(() => 0);
    drafts.put('1', draft('ada'));
    expect(drafts.take('1', 'bea')).toBeUndefined();
    expect(drafts.take('2', 'ada')).toBeUndefined();
    expect(drafts.take('1', 'ada')).toEqual(draft('ada'));
    expect(drafts.take('1', 'ada')).toBeUndefined();
  });

  it('are kept for 15 minutes', () => {
    let now = 0;
    const drafts = openDrafts(() => now);
    drafts.put('1', draft('ada'));
    now = 1;
    drafts.put('2', draft('ada'));
    now = 15 * 60_000 + 1;
    expect(drafts.take('1', 'ada')).toBeUndefined();
    expect(drafts.take('2', 'ada')).toEqual(draft('ada'));
  });

  it('are the latest 500', () => {
    const drafts = openDrafts(() => 0);
    for (let id = 0; id <= 500; id++) drafts.put(String(id), draft('ada'));
    expect(drafts.take('0', 'ada')).toBeUndefined();
    expect(drafts.take('1', 'ada')).toBeDefined();
    expect(drafts.take('500', 'ada')).toBeDefined();
  });
});
