import type { MapPicture } from '../../../core/picture/tank-map.ts';
import { palette } from '../../../core/picture/palette.ts';

/** One element as written: its name and its attributes. */
export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
}

/** All elements of SVG text, in order, without their children. */
export function elements(svg: string, name?: string): readonly Element[] {
  return [...svg.matchAll(/<([a-zA-Z]+)((?:\s[\w-]+="[^"]*")*)\/?>/g)]
    .map(([, tag = '', written = '']) => ({
      name: tag,
      attributes: Object.fromEntries(
        [...written.matchAll(/\s([\w-]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [key, value]),
      ),
    }))
    .filter((element) => name === undefined || element.name === name);
}

export function number({ attributes }: Element, name: string): number {
  return Number(attributes[name] ?? Number.NaN);
}

/** What lies between two marks of the text, such as the start of one group and of the next. */
export function between(svg: string, from: string, to: string): string {
  const start = svg.indexOf(from);
  const end = svg.indexOf(to, start);
  if (start < 0 || end < 0) throw new Error(`no ${from} ... ${to}`);
  return svg.slice(start, end);
}

const starts = { above: '<g class="above">', front: '<g class="front">' } as const;

export function viewOf(svg: string, side: 'above' | 'front'): string {
  return between(svg, starts[side], '<g class="scale">');
}

/** Both pictures of a tank, one after the other. */
export function bothOf(pictures: readonly MapPicture[]): string {
  return pictures
    .slice(0, 2)
    .map(({ svg }) => svg)
    .join('\n');
}

/** Picture units a unit of length, by the marks along the edge of a view. */
export function scaleOf(svg: string, side: 'above' | 'front' = 'above'): number {
  const edge = between(svg.slice(svg.indexOf(starts[side])), '<g class="scale">', '</g>');
  const [first, second] = elements(edge, 'line').map((mark) => number(mark, 'x1'));
  const [from, to] = textsOf(edge).map(({ text }) => Number.parseFloat(text));
  if (first === undefined || second === undefined || from === undefined || to === undefined)
    throw new Error('fewer than two marks');
  return (second - first) / (to - from);
}

/** A group without groups in it, by its class. */
export function groupOf(view: string, name: string): string {
  return between(view, `<g class="${name}"`, '</g>');
}

export function listOf(svg: string): string {
  return between(svg, '<g class="list">', '</svg>');
}

/** The body of a coral: its middle on its ground and its width, picture units. */
export function bodyOf(
  view: string,
  id: string,
): { readonly x: number; readonly y: number; readonly width: number } {
  const found = elements(view).find(({ attributes }) => attributes['id'] === id);
  if (found === undefined) throw new Error(`no ${id}`);
  if (found.name === 'circle')
    return { x: number(found, 'cx'), y: number(found, 'cy'), width: 2 * number(found, 'r') };
  if (found.name === 'rect') {
    const [x, width] = [number(found, 'x'), number(found, 'width')];
    return { x: x + width / 2, y: number(found, 'y') + number(found, 'height'), width };
  }
  const [, left = '', y = '', right = ''] =
    /^M([\d.-]+) ([\d.-]+)A[\d.]+ [\d.]+ 0 0 1 ([\d.-]+)/.exec(found.attributes['d'] ?? '') ?? [];
  return { x: (Number(left) + Number(right)) / 2, y: Number(y), width: Number(right) - Number(left) };
}

/** Words with their place. */
export function textsOf(
  svg: string,
): readonly { readonly text: string; readonly size: number; readonly fill: string }[] {
  return [...svg.matchAll(/<text[^>]*font-size="([\d.]+)" fill="([^"]*)"[^>]*>([^<]*)<\/text>/g)].map(
    ([, size = '', fill = '', text = '']) => ({ text, size: Number(size), fill }),
  );
}

/** Left, right, top and bottom of the shapes that carry words in the water: each the one just before a text. */
export function wordBoxes(view: string): readonly (readonly [number, number, number, number])[] {
  return [...view.matchAll(/<(?:rect|polygon)[^>]*\/>(?=<text)/g)]
    .flatMap(([shape]) => elements(shape))
    .filter(({ attributes }) => attributes['fill'] !== palette.water)
    .map((shape) => {
      if (shape.name === 'rect') {
        const [x, y] = [number(shape, 'x'), number(shape, 'y')];
        return [x, x + number(shape, 'width'), y, y + number(shape, 'height')] as const;
      }
      const corners = (shape.attributes['points'] ?? '')
        .split(' ')
        .map((pair) => pair.split(',').map(Number));
      const along = (axis: number): number[] => corners.map((corner) => corner[axis] ?? Number.NaN);
      const [xs, ys] = [along(0), along(1)];
      return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)] as const;
    });
}
