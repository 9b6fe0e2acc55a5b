import type { Finding, Scene } from '../corals/scene.ts';
import { FONT_FAMILY, palette } from './palette.ts';
import { WORDS } from './panel.ts';
import { cutTo, tag, words } from './svg.ts';
import { mapAlt } from './tank-map-alt.ts';
import { bodies, softPaints } from './tank-map-body.ts';
import { lightSlice, type LightSlice } from './tank-map-field.ts';
import { frame, glass, glassWords, scaleBar } from './tank-map-glass.ts';
import { key } from './tank-map-key.ts';
import { lightLines, lightWords, readingMarks } from './tank-map-light.ts';
import { links, linkWords, MOST_LINKS, pairsIn } from './tank-map-links.ts';
import { list, listHeight } from './tank-map-list.ts';
import { numbers } from './tank-map-numbers.ts';
import { roomIn } from './tank-map-room.ts';
import { countOf, shownOf, troublesOf, type Shown, type Trouble } from './tank-map-shown.ts';
import { FOOT, PAD, viewsOf, type View } from './tank-map-view.ts';
import { WIDTH } from './trend.ts';

const TITLE = 36;
const TOP = 128;
/** The most both views take in height, and the whole picture. */
const MOST_VIEWS = 1400;
const MOST_HEIGHT = 3960;
/** A larger picture is drawn at fewer pixels: it costs less, and a phone shows it 400 wide anyway. */
const MOST_AREA = 1_200_000;
/** Names of the sides, scale bar, key: more than they take. */
const BETWEEN = 560;
const NOTE = 34;
const quiet = { size: WORDS, fill: palette.quietInk };

/** What a map of the tank shows and says. */
export interface TankMap {
  readonly svg: string;
  readonly alt: string;
}

/**
 * The tank from above and from the front to one scale: corals at their width now, reach, growth of a year, conflicts,
 * light between readings. Nothing is told by colour alone.
 */
export function tankMap(scene: Scene, findings: readonly Finding[], title = 'Map of the tank'): TankMap {
  const shown = shownOf(scene, findings);
  const troubles = troublesOf(scene, findings);
  return { svg: drawn(scene, shown, troubles, title), alt: mapAlt(title, scene, shown, troubles) };
}

function drawn(scene: Scene, shown: readonly Shown[], troubles: readonly Trouble[], title: string): string {
  const listed = listHeight(shown);
  const { above, front } = viewsOf(
    scene.box,
    TOP,
    Math.min(MOST_VIEWS, MOST_HEIGHT - TOP - BETWEEN - listed),
  );
  const slices = {
    above: lightSlice(scene.light, scene.box, 'above'),
    front: lightSlice(scene.light, scene.box, 'front'),
  };
  const fromAbove = drawView(scene, shown, troubles, above, slices.above);
  const fromFront = drawView(scene, shown, troubles, front, slices.front);
  const pairs = troubles.filter(({ corals }) => corals.length === 2);
  const barTop = front.bottom + FOOT + 8;
  const noteTop = barTop + 34;
  const notes = notesFor([fromAbove, fromFront], pairs.length);
  const keyTop = noteTop + notes.length * NOTE;
  const explained = key({ scene, shown, pairs: pairs.slice(0, MOST_LINKS), ...slices }, keyTop);
  const listTop = keyTop + explained.height + 16;
  const height = Math.ceil(listTop + listed + PAD);
  const shrink = Math.min(1, Math.sqrt(MOST_AREA / (WIDTH * height)));
  return tag(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: Math.round(WIDTH * shrink),
      height: Math.round(height * shrink),
      viewBox: `0 0 ${WIDTH} ${height}`,
      'font-family': FONT_FAMILY,
    },
    tag('defs', {}, clip(above), clip(front), shown.some(({ coral }) => coral.rough) ? softPaints() : ''),
    tag('rect', { x: -9, y: -9, width: WIDTH + 18, height: height + 18, fill: palette.ground }),
    header(scene, shown, title),
    fromAbove.svg,
    fromFront.svg,
    scaleBar(front, barTop),
    ...notes.map((text, i) => words(text, { x: PAD, y: noteTop + 26 + i * NOTE, ...quiet })),
    explained.svg,
    list(shown, listTop),
  );
}

function header(scene: Scene, shown: readonly Shown[], title: string): string {
  const size = cutTo(WIDTH - 2 * PAD, glassWords(scene), WORDS);
  const count = shown.length === 0 ? 'No corals placed yet' : `Corals: ${countOf(shown)}`;
  return [
    words(cutTo(WIDTH - 2 * PAD, title, TITLE), { x: PAD, y: 52, size: TITLE, fill: palette.ink }),
    words(size, { x: PAD, y: 88, ...quiet }),
    words(count, { x: PAD, y: 120, size: WORDS, fill: palette.ink }),
  ].join('');
}

/** What had no room, so that nobody takes it for missing. */
function notesFor(views: readonly Drawn[], pairs: number): readonly string[] {
  const numbersLeft = views.reduce((most, { noNumber }) => Math.max(most, noNumber), 0);
  return [
    ...(pairs > MOST_LINKS ? [`Drawn: the ${MOST_LINKS} worst of ${pairs} conflicts.`] : []),
    ...(views.some(({ noWords }) => noWords > 0)
      ? ['Some lines have no room for words: the text has all.']
      : []),
    ...(numbersLeft > 0 ? [`Too crowded for ${numbersLeft} of the numbers.`] : []),
  ];
}

/** One view, and how many numbers of corals and words of conflicts had no room in it. */
interface Drawn {
  readonly svg: string;
  readonly noNumber: number;
  readonly noWords: number;
}

function drawView(
  scene: Scene,
  shown: readonly Shown[],
  troubles: readonly Trouble[],
  view: View,
  slice: LightSlice | undefined,
): Drawn {
  const { light, flow } = scene;
  const room = roomIn(view);
  const pairs = pairsIn(troubles, view);
  const numbered = numbers(shown, view, room);
  const lit = slice === undefined ? '' : lightWords(slice, light, view, room);
  const said = linkWords(pairs, room);
  const inGlass = [
    bodies(shown, view),
    slice === undefined ? '' : lightLines(slice, view),
    light.length === 0 ? '' : readingMarks(light.map(view.at)),
    links(pairs),
  ];
  const svg = [
    glass(view, flow),
    tag('g', { 'clip-path': `url(#${view.side})` }, ...inGlass),
    frame(view),
    lit,
    numbered.svg,
    said.svg,
  ];
  return { svg: tag('g', { class: view.side }, ...svg), noNumber: numbered.left, noWords: said.left };
}

function clip({ side, left, top, right, bottom }: View): string {
  return tag(
    'clipPath',
    { id: side },
    tag('rect', { x: left, y: top, width: right - left, height: bottom - top }),
  );
}
