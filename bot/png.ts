import { createRequire } from 'node:module';
import { promisify } from 'node:util';
import { crc32, deflate } from 'node:zlib';
import { renderAsync } from '@resvg/resvg-js';
import { FONT_FAMILY } from '../core/picture/palette.ts';

const FONT_FILE = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
const font = {
  fontFiles: [FONT_FILE],
  loadSystemFonts: false,
  defaultFontFamily: FONT_FAMILY,
  sansSerifFamily: FONT_FAMILY,
};

/** Our pictures stay far below these; more is a bug upstream. */
const MOST_SVG_CHARACTERS = 2_000_000;
const MOST_SIDE = 4000;

const compress = promisify(deflate);

/** Settles when the picture before is done. */
let busy: Promise<unknown> = Promise.resolve();

/**
 * Draws SVG text as PNG. Drawing and compressing run on another thread: the library's own PNG writer would hold up the
 * event loop for as long as it compresses. One picture at a time, so that a rush of them leaves the bot a processor.
 *
 * @throws Error for what is not SVG, says no size, or is too large: a bug, not something a member can put right.
 */
export async function toPng(svg: string): Promise<Uint8Array> {
  if (svg.length > MOST_SVG_CHARACTERS) throw new Error(`a picture of ${svg.length} characters`);
  for (const side of ['width', 'height']) checkSide(svg, side);
  const drawn = busy.then(() => draw(svg));
  busy = drawn.catch(() => undefined);
  return drawn;
}

async function draw(svg: string): Promise<Uint8Array> {
  const { pixels, width, height } = await renderAsync(svg, { font, logLevel: 'off' });
  return writePng(pixels, width, height);
}

function checkSide(svg: string, side: string): void {
  const given = new RegExp(`^<svg[^>]*\\s${side}="([\\d.]+)"`).exec(svg)?.[1];
  const length = Number(given);
  if (!(length > 0 && length <= MOST_SIDE)) throw new Error(`a picture whose ${side} is ${given}`);
}

/** 8-bit RGBA, no interlace, every row unfiltered (PNG specification, ISO/IEC 15948). */
async function writePng(pixels: Buffer, width: number, height: number): Promise<Uint8Array> {
  const stride = width * 4;
  const rows = Buffer.allocUnsafe((stride + 1) * height);
  for (let row = 0; row < height; row++) {
    rows[row * (stride + 1)] = 0;
    pixels.copy(rows, row * (stride + 1) + 1, row * stride, (row + 1) * stride);
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 6, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    chunk('IHDR', header),
    chunk('IDAT', await compress(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(name: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, check]);
}
