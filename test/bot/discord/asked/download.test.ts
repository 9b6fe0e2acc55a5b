import { createServer } from 'node:http';
import type { ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { download } from '../../../../bot/discord/asked/download.ts';
import { MAX_FILE } from '../../../../commands/options.ts';

const answers: Readonly<Record<string, (response: ServerResponse) => void>> = {
  '/good.csv': (response) => response.end('day,alk'),
  '/gone.csv': (response) => response.writeHead(404).end('not here'),
  '/elsewhere.csv': (response) => response.writeHead(302, { location: '/good.csv' }).end(),
  '/never.csv': () => {},
  '/stalls.csv': (response) => response.write('day,'),
  '/longer.csv': (response) => response.end(Buffer.alloc(MAX_FILE + 1, 'x')),
};

const server = createServer(({ url = '' }, response) => answers[url]?.(response));

beforeAll(() => new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve)));

afterAll(() => {
  server.closeAllConnections();
  server.close();
});

function fetchOf(name: string, size = 7, mostMs?: number) {
  const { port } = server.address() as AddressInfo;
  return download({ name: 'file' }, { name, size, url: `http://127.0.0.1:${port}/${name}` }, mostMs);
}

describe('download', () => {
  it('gives name and text', async () => {
    expect(await fetchOf('good.csv')).toEqual({ name: 'good.csv', text: 'day,alk' });
  });

  it.each([
    ['gone.csv', 'could not fetch'],
    ['elsewhere.csv', 'could not fetch'],
    ['longer.csv', 'too large'],
  ])('refuses %s: %s', async (name, sentence) => {
    await expect(fetchOf(name)).rejects.toThrow(sentence);
    await expect(fetchOf(name)).rejects.toMatchObject({ name: 'Problem', field: 'file' });
  });

  it.each(['never.csv', 'stalls.csv'])('gives up on %s', async (name) => {
    await expect(fetchOf(name, 7, 60)).rejects.toThrow('took too long');
  });

  it('does not ask for what is too large', async () => {
    await expect(fetchOf('never.csv', MAX_FILE + 1)).rejects.toThrow('too large');
  });
});
