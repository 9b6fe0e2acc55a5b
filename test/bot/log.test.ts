import { describe, expect, it } from 'vitest';
import { logFailure, newErrorId, openLog } from '../../bot/log.ts';

function logged(error: unknown): { line: string; id: string } {
  let line = '';
  const log = openLog('info', { write: (text) => void (line += text) });
  return { id: logFailure(log, error, 'it failed', { interaction: '123' }), line };
}

describe('newErrorId', () => {
  it('is eight characters and not the same twice', () => {
    const ids = Array.from({ length: 100 }, newErrorId);
    for (const id of ids) expect(id).toMatch(/^[0-9a-f]{8}$/);
    expect(new Set(ids).size).toBe(100);
  });
});

describe('logFailure', () => {
  it('logs the id, the ids given and the stack', () => {
    const { line, id } = logged(new TypeError('seven'));
    const entry = JSON.parse(line) as Record<string, unknown>;
    expect(entry).toMatchObject({ errorId: id, interaction: '123', msg: 'it failed' });
    expect(entry['err']).toMatchObject({
      name: 'TypeError',
      stack: expect.stringContaining('log.test.ts') as string,
    });
  });

  it('logs no message, address or body of an error or its causes', () => {
    const cause = Object.assign(new Error('my secret words\n    at secret'), { code: 'ECONNREFUSED' });
    const extra = { status: 400, code: 50035, url: '/secret', requestBody: { json: 'secret' } };
    const { line } = logged(Object.assign(new Error('secret', { cause }), extra));
    expect(line).not.toContain('secret');
    expect(JSON.parse(line)).toMatchObject({
      err: { code: 50035, status: 400, cause: { code: 'ECONNREFUSED' } },
    });
  });

  it('takes what is no error', () => {
    expect(logged('secret').line).not.toContain('secret');
  });
});
