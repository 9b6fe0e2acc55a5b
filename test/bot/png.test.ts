import { inflateSync } from 'node:zlib';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { toPng } from '../../bot/png.ts';
import { palette } from '../../core/picture/palette.ts';
import { trendSvg, WIDTH } from '../../core/picture/trend.ts';
import { samplePanel, samplePicture } from '../core/picture/sample.ts';

const picture = trendSvg(samplePicture([samplePanel('alkalinity', { additions: 4 })]));

interface Decoded {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}

/** Reads an 8-bit RGBA PNG whose rows are unfiltered, as the PNG specification lays it out. */
function decode(png: Uint8Array): Decoded {
  const bytes = Buffer.from(png);
  expect(bytes.subarray(0, 8)).toEqual(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]));
  const chunks = new Map<string, Buffer>();
  for (let at = 8; at < bytes.length;) {
    const length = bytes.readUInt32BE(at);
    chunks.set(bytes.toString('latin1', at + 4, at + 8), bytes.subarray(at + 8, at + 8 + length));
    at += length + 12;
  }
  expect([...chunks.keys()]).toEqual(['IHDR', 'IDAT', 'IEND']);
  const header = chunks.get('IHDR') ?? Buffer.alloc(13);
  const [width, height] = [header.readUInt32BE(0), header.readUInt32BE(4)];
  const rows = inflateSync(chunks.get('IDAT') ?? Buffer.alloc(0));
  expect(rows.length).toBe((width * 4 + 1) * height);
  const rgba = Buffer.concat(
    Array.from({ length: height }, (_, row) => {
      const start = row * (width * 4 + 1);
      expect(rows[start]).toBe(0);
      return rows.subarray(start + 1, start + 1 + width * 4);
    }),
  );
  return { width, height, rgba };
}

function differing(one: Decoded, other: Decoded): number {
  let count = 0;
  for (let at = 0; at < one.rgba.length; at += 4) {
    if ([0, 1, 2].some((i) => one.rgba[at + i] !== other.rgba[at + i])) count++;
  }
  return count;
}

async function titled(title: string): Promise<Decoded> {
  return decode(await toPng(trendSvg(samplePicture([samplePanel('ph')], title))));
}

describe('toPng', () => {
  it('has the size of the drawing and no see-through pixel', async () => {
    const { width, height, rgba } = decode(await toPng(picture));
    expect(width).toBe(WIDTH);
    expect(picture).toContain(`height="${height}"`);
    expect(rgba.filter((_, i) => i % 4 === 3).every((alpha) => alpha === 255)).toBe(true);
    expect(Buffer.from(rgba.subarray(0, 3)).toString('hex')).toBe(palette.ground.slice(1));
  });

  it('can be read by another PNG reader, pixel by pixel', async () => {
    const png = await toPng(picture);
    const { width, height, rgba } = decode(png);
    const href = `data:image/png;base64,${Buffer.from(png).toString('base64')}`;
    const again = new Resvg(
      `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><image width="${width}" height="${height}" href="${href}"/></svg>`,
    ).render();
    expect(Buffer.compare(again.pixels, rgba)).toBe(0);
  });

  it('draws the words', async () => {
    const wordless = picture.replaceAll(/<text\b[^>]*>[^<]*<\/text>/g, '');
    expect(wordless.length).toBeLessThan(picture.length);
    const count = differing(decode(await toPng(picture)), decode(await toPng(wordless)));
    // About 190 characters; a missing font would draw none.
    expect(count).toBeGreaterThan(10_000);
  });

  it('draws each word of a title as another shape', async () => {
    expect(differing(await titled('Pantry'), await titled('Harbour'))).toBeGreaterThan(500);
  });

  it.each([
    { what: 'no SVG', svg: 'hello', message: /width/ },
    { what: 'no size', svg: '<svg xmlns="http://www.w3.org/2000/svg"/>', message: /width/ },
    {
      what: 'too large',
      svg: '<svg xmlns="http://www.w3.org/2000/svg" width="900" height="40000"/>',
      message: /height/,
    },
    {
      what: 'broken',
      svg: '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><text></svg>',
      message: /./,
    },
    {
      what: 'endless',
      svg: `<svg width="9" height="9">${' '.repeat(2_000_001)}</svg>`,
      message: /characters/,
    },
  ])('rejects what is $what', async ({ svg, message }) => {
    await expect(toPng(svg)).rejects.toThrow(message);
  });
});
