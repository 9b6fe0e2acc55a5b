import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { LONGEST_LINE } from '../../../bot/terminal/read.ts';
import { openRoom } from '../../../bot/terminal/room.ts';
import type { Desk, Reply } from '../../../bot/terminal/desk.ts';
import { replyTo } from '../../../bot/terminal/reply.ts';
import { answer } from '../../../commands/answer.ts';
import { formCommands } from '../discord/asked/form-commands.ts';
import { moveIn } from '../discord/members.ts';
import { probeCommands } from '../discord/probe-commands.ts';
import { sampleDesk } from './sample.ts';
import { pretended } from '../../action.ts';

const style = { width: 80, bold: false };

function formDesk(ask: readonly string[] = ['readings', 'times', 'mood']): ReturnType<typeof sampleDesk> {
  const desk = { ...sampleDesk(), commands: formCommands };
  moveIn(desk.keep, 'Pantry', 251, 'before');
  const next = [pretended({ label: 'Enter reading', command: 'note enter', input: { item: '12' }, ask })];
  return { ...desk, ask: () => answer({ headline: 'Due.', next }) };
}

/** The last reply to lines typed one after another. */
async function after(desk: Desk, ...lines: string[]): Promise<Reply> {
  let reply: Reply = { text: '', offers: [], leave: false };
  for (const line of lines) reply = await replyTo(line, reply, desk, style);
  return reply;
}

const entries = ({ keep }: Desk) => keep.readings(1, { parameter: 'calcium' }).length;

describe('a form in the room', () => {
  it('is opened by its number and asks one option a line, then runs', async () => {
    const desk = formDesk();
    const first = await after(desk, 'x', '1');
    expect(first.text).toContain('Filling in /note enter item:12\n');
    expect(first.text).toContain('What you tested, e.g. kh 8.2 ca 420\n');
    expect(first.text).toContain('An empty line gives up.');
    const second = await after(desk, 'x', '1', '8.2');
    expect(second.text).toContain('How often\n  - leaves it out, an empty line gives up.\n');
    expect((await after(desk, 'x', '1', '8.2', '3')).text).toContain('How you feel (calm, worried)');
    const done = await after(desk, 'x', '1', '8.2', '3', 'worried');
    expect(done.text).toContain('12 in Pantry: 8.2, 3 times, worried');
    expect(done.question).toBeUndefined();
    expect(entries(desk)).toBe(1);
    expect(desk.reported).toEqual([]);
  });

  it('leaves out what may be left out, and takes a number as a value', async () => {
    expect((await after(formDesk(), 'x', '1', '420', '-', '-')).text).toContain('420, 1 times, calm');
  });

  it.each([
    [['often'], 'times is not a number I can use.'],
    [['2', 'glad'], 'mood takes one of a few values.'],
    [['x'.repeat(LONGEST_LINE + 1)], 'too long for me to read'],
  ])('asks again after %j', async (values, sentence) => {
    const desk = formDesk();
    const refused = await after(desk, 'x', '1', 'kh 8', ...values);
    expect(refused.text).toContain(sentence);
    expect(refused.text).toContain('gives up.');
    const rest = values.length === 1 ? ['2', 'calm'] : ['calm'];
    expect((await after(desk, 'x', '1', 'kh 8', ...values, ...rest)).text).toContain('kh 8, 2 times, calm');
  });

  it('is given up by an empty line, and left by a command', async () => {
    const desk = formDesk();
    expect((await after(desk, 'x', '1', '  ')).text).toBe('Given up. Nothing was changed.\n');
    expect((await after(desk, 'x', '1', '', '2')).text).toContain('I offered 1 to 1.');
    expect((await after(desk, 'x', '1', '/note later until:noon')).text).toContain('Until noon.');
    expect((await after(desk, 'x', '1', '/quit')).leave).toBe(true);
    expect(entries(desk)).toBe(0);
  });

  it('offers the choices of a problem with what was written', async () => {
    const asked = await after(formDesk(['readings']), 'x', '1', 'lots');
    expect(asked.text).toContain('[2] kh 9');
    expect((await after(formDesk(['readings']), 'x', '1', 'lots', '2')).text).toContain('Pantry: kh 9');
  });

  it('that asks for no option there is, is a failure of ours', async () => {
    const desk = formDesk(['nothing']);
    expect((await after(desk, 'x')).text).toContain('It is logged as F1.');
  });

  it('takes ids as typed, and says what one is', async () => {
    const desk = { ...sampleDesk(), commands: probeCommands };
    const typed = await after(desk, '/whom member:1100000000000000012');
    expect(typed.text).toContain('member  this one 1100000000000000012');
    expect((await after(desk, '/whom member:Teo')).text).toContain('the id of a member: 17 to 20 digits');
  });

  it('takes piped lines', async () => {
    const input = new PassThrough();
    const output = new PassThrough();
    let text = '';
    output.on('data', (chunk) => (text += String(chunk)));
    const desk = formDesk(['readings']);
    const room = openRoom({ ...desk, input, output });
    input.end('what is due\n1\nca 431\n/note later until:noon\n');
    await room;
    expect(text).toContain('> ca 431\n12 in Pantry: ca 431');
    expect(text).toContain('Until noon.');
    expect(desk.reported).toEqual([]);
  });
});
