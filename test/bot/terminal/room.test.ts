import { PassThrough, Writable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { LONGEST_LINE } from '../../../bot/terminal/read.ts';
import { openRoom } from '../../../bot/terminal/room.ts';
import { sampleDesk } from './sample.ts';

/** What the room writes when `typed` is piped in, in the chunks given. */
async function piped(...typed: (string | Buffer)[]): Promise<{ text: string; reported: unknown[] }> {
  const desk = sampleDesk();
  const input = new PassThrough();
  const output = new PassThrough();
  const text = collected(output);
  const room = openRoom({ ...desk, input, output });
  for (const chunk of typed) input.write(chunk);
  input.end();
  await room;
  output.end();
  return { text: await text, reported: desk.reported };
}

async function collected(stream: PassThrough): Promise<string> {
  let text = '';
  for await (const chunk of stream) text += String(chunk);
  return text;
}

/** What a terminal of so many columns shows when keys are pressed. */
async function typedAt(columns: number, ...keys: string[]): Promise<string> {
  const input = Object.assign(new PassThrough(), { isTTY: true });
  const output = Object.assign(new PassThrough(), { isTTY: true, columns });
  const text = collected(output);
  const room = openRoom({ ...sampleDesk(), input, output });
  for (const key of keys) {
    input.write(key);
    await new Promise((resolve) => setImmediate(resolve));
  }
  await room;
  output.end();
  return text;
}

describe('a piped room', () => {
  it('echoes and answers every line, and ends with the input', async () => {
    const { text, reported } = await piped('/tide\n\nwhat', ' now?\r\n/dose pace da', 'ys:2\nlast');
    expect(text.split('\n')).toEqual([
      '> /tide',
      'It is 1234 ms.',
      '',
      '> what now?',
      'Heard: what now?',
      '',
      '> /dose pace days:2',
      '{"days":2,"form":"powder"}',
      '',
      '> last',
      'Heard: last',
      '',
      '',
    ]);
    expect(reported).toEqual([]);
  });

  it('ends at once with an empty input', async () => {
    expect((await piped()).text).toBe('');
  });

  it('leaves at /quit, with more input waiting', async () => {
    expect((await piped('/quit\n/tide\n')).text).toBe('> /quit\n');
  });

  it('goes on after a failure and a Problem', async () => {
    const { text, reported } = await piped('/leak\n/nothing\n/tide\n');
    expect(text).toContain('It is logged as F1.');
    expect(text).toContain('There is no such command.');
    expect(text).toContain('It is 1234 ms.');
    expect(reported).toHaveLength(1);
  });

  it('refuses a line of a megabyte and takes the next', async () => {
    const { text } = await piped('x'.repeat(500_000), 'y'.repeat(500_000), '\n', '/tide\n');
    expect(text).toContain('1000000 characters');
    expect(text).toContain(`at most ${LONGEST_LINE} characters`);
    expect(text).toContain('It is 1234 ms.');
    expect(text.length).toBeLessThan(2000);
  });

  it('reads a line as long as a message of Discord', async () => {
    const { text } = await piped(`${'z '.repeat(2000)}\n`, '/tide\n');
    expect(text.split('Heard:')).toHaveLength(2);
    expect(text).not.toContain('too long');
    expect(text).toContain('It is 1234 ms.');
  });

  it('shows hostile bytes as signs', async () => {
    const { text } = await piped(
      Buffer.from([0x1b, 0x5b, 0x32, 0x4a, 0xff, 0xfe, 0x00, 0x9b, 0x0a]),
      '/\u001B]0;x\u0007\n',
    );
    expect(text.replaceAll('\n', '')).not.toMatch(/\p{Cc}/u);
    expect(text).toContain('␛[2J');
  });

  it('answers a thousand lines into a slow reader, one at a time', async () => {
    const desk = sampleDesk();
    const input = new PassThrough();
    let lines = 0;
    let most = 0;
    const output: Writable = new Writable({
      highWaterMark: 64,
      write(chunk, _, done) {
        most = Math.max(most, output.writableLength);
        lines += String(chunk).split('Heard:').length - 1;
        setImmediate(done);
      },
    });
    const room = openRoom({ ...desk, input, output });
    input.end(Array.from({ length: 1000 }, (_, index) => `line ${index}\n`).join(''));
    await room;
    expect(lines).toBeGreaterThanOrEqual(999);
    expect(most).toBeLessThan(200);
  });

  it.each([
    ['EPIPE', 0],
    ['EIO', 1],
  ])('ends when the reader fails with %s; reports %i', async (code, reports) => {
    const desk = sampleDesk();
    const input = new PassThrough();
    const output = new Writable({
      write(_chunk, _encoding, done) {
        done(Object.assign(new Error('write failed'), { code }));
      },
    });
    const room = openRoom({ ...desk, input, output });
    input.write('/tide\n/tide\n');
    await room;
    expect(desk.reported).toHaveLength(reports);
  });

  it('ends when the input fails, and reports it', async () => {
    const desk = sampleDesk();
    const input = new PassThrough();
    const room = openRoom({ ...desk, input, output: new PassThrough() });
    input.destroy(new Error('hung up'));
    await room;
    expect(desk.reported).toHaveLength(1);
  });
});

describe('a room at a terminal', () => {
  it('greets, prompts, answers, and leaves at /quit', async () => {
    const text = await typedAt(80, '/tide\r', '/quit\r');
    expect(text).toContain('The Sumpside room.');
    expect(text).toContain('> ');
    expect(text).toContain('It is 1234 ms.');
    expect(text).not.toContain('> /tide\n');
  });

  it.each([
    ['Ctrl-C', '\u0003'],
    ['Ctrl-D', '\u0004'],
  ])('leaves at %s, on a fresh line', async (_, key) => {
    expect(await typedAt(80, 'half\u0015', key)).toMatch(/\n$/);
  });

  it('completes with Tab', async () => {
    expect(await typedAt(80, '/ti\t', '\r', '/quit\r')).toContain('It is 1234 ms.');
  });

  it('wraps at the width of the terminal, at least 40', async () => {
    const words = Array<string>(30).fill('word').join(' ');
    const wide = await typedAt(60, `${words}\r`, '/quit\r');
    expect(wide).toContain(`Heard:${' word'.repeat(10)}`);
    expect(wide).not.toContain(`Heard:${' word'.repeat(11)}`);
    const narrow = await typedAt(10, `${words}\r`, '/quit\r');
    expect(narrow).toContain(`Heard:${' word'.repeat(6)}`);
  });
});
