import { describe, expect, it } from 'vitest';
import { LONGEST_LINE, readLine } from '../../bot/terminal/read.ts';
import { commands } from '../../commands/index.ts';
import { optionsOf } from '../../commands/options.ts';
import { MAX_MESSAGE_LENGTH } from '../../core/message-length.ts';

/** Options that hold what a member would write as a message. */
const free = [
  ['ask', 'question'],
  ['claim', 'rule'],
  ['triage', 'seen'],
  ['checkup', 'readings'],
  ['log add', 'readings'],
  ['remind enter', 'readings'],
  ['remind several', 'text'],
] as const;

describe('a message of a member', () => {
  it.each(free)('may be as long in /%s %s: as anywhere else', (name, option) => {
    const command = commands.find(({ path }) => path.join(' ') === name) ?? expect.unreachable();
    const found = optionsOf(command.options).find((one) => one.name === option);
    expect(found?.maxLength).toBe(MAX_MESSAGE_LENGTH);
  });

  it('fits behind its command in the terminal room', () => {
    const text = 'a'.repeat(MAX_MESSAGE_LENGTH);
    expect(readLine(text, commands)).toEqual({ kind: 'words', text });
    expect(readLine(`/claim rule:${text} volume:75 gal`, commands)).toMatchObject({ kind: 'command' });
    expect(LONGEST_LINE).toBeGreaterThan(MAX_MESSAGE_LENGTH);
  });
});
