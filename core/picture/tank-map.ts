import type { Finding, Scene } from '../corals/scene.ts';
import type { LengthUnit } from '../quantity/chosen-units.ts';
import { FONT_FAMILY, palette } from './palette.ts';
import { WORDS } from './panel.ts';
import { cutTo, tag, words } from './svg.ts';
import { mapAlt } from './tank-map-alt.ts';
import { bodies, softPaints } from './tank-map-body.ts';
import { lightSlice, type LightSlice } from './tank-map-field.ts';
import { edgeScale } from './tank-map-edge.ts';
import { frame, glass, glassWords } from './tank-map-glass.ts';
import { key } from './tank-map-key.ts';
import { lightLines, lightNumbers, lightWords, readingMarks } from './tank-map-light.ts';
import { links, linkWords, MOST_LINKS, pairsIn } from './tank-map-links.ts';
import { list, listHeight } from './tank-map-list.ts';
import { numbers } from './tank-map-numbers.ts';
import { roomIn } from './tank-map-room.ts';
import { countOf, shownOf, troublesOf, type Shown, type Trouble } from './tank-map-shown.ts';
import { FOOT, PAD, viewOf, wholeOf, type Region, type View } from './tank-map-view.ts';
import { CROWDED, zoomOf } from './tank-map-zoom.ts';
import { WIDTH } from './trend.ts';

const TITLE = 36;
const TOP = 160;
/** The most the view takes in height, and the whole picture. */
const MOST_VIEW = 700;
const MOST_HEIGHT = 3960;
/** A larger picture is drawn at fewer pixels: it costs less, and a phone shows it 400 wide anyway. */
const MOST_AREA = 1_200_000;
/** Names of the sides, key: more than they take. */
const BETWEEN = 620;
/** The scale along the lower edge. */
const EDGE = 34;
const NOTE = 34;
const quiet = { size: WORDS, fill: palette.quietInk };

/** A picture of a map, and the same in words. */
export interface MapPicture {
  readonly name: string;
  readonly svg: string;
  readonly alt: string;
}

/**
 * The tank from above and from the front, a picture each, and where they are crowded the worst conflict near to: corals at
 * their width now, reach, growth of a year, conflicts, light between readings. Nothing is told by colour alone. Lengths
 * along the edge are in `length`.
 */
export function tankMap(
  scene: Scene,
  findings: readonly Finding[],
  title = 'Map of the tank',
  length: LengthUnit = 'cm',
): readonly MapPicture[] {
  const shown = shownOf(scene, findings);
  const troubles = troublesOf(scene, findings);
  const whole = { scene, shown, troubles, title, length };
  const alt = mapAlt(title, scene, shown, troubles);
  const near = zoomOf(scene, shown, troubles);
  return [
    { name: 'from-above', svg: drawn(whole, { side: 'above', heading: 'From above' }), alt },
    {
      name: 'from-the-front',
      svg: drawn(whole, { side: 'front', heading: 'From the front' }),
      alt: `${title}, from the front: the same corals and conflicts, with their heights over the sand.`,
    },
    ...(near === undefined
      ? []
      : [
          {
            name: 'conflict',
            svg: drawn({ ...whole, ...near }, near),
            alt: `${title}, the worst conflict near to: ${near.about}.`,
          },
        ]),
  ];
}

interface Whole {
  readonly scene: Scene;
  readonly shown: readonly Shown[];
  readonly troubles: readonly Trouble[];
  readonly title: string;
  readonly length: LengthUnit;
}

interface Sight {
  readonly side: View['side'];
  readonly heading: string;
  /** What is shown instead of the count of corals. */
  readonly about?: string;
  readonly region?: Region;
}

function drawn(
  { scene, shown, troubles, title, length }: Whole,
  { side, heading, about, region }: Sight,
): string {
  const listed = listHeight(shown);
  const most = Math.min(MOST_VIEW, MOST_HEIGHT - TOP - BETWEEN - listed);
  const view = viewOf(side, region ?? wholeOf(scene.box, side), TOP, most);
  const slice = lightSlice(scene.light, scene.box, side);
  const { svg, ...left } = drawView({ scene, shown, troubles }, view, slice);
  const pairs = troubles.filter(({ corals }) => corals.length === 2);
  const noteTop = view.bottom + FOOT + EDGE;
  const notes = notesFor(left, pairs.length);
  const keyTop = noteTop + notes.length * NOTE;
  const explained = key({ scene, shown, pairs: pairs.slice(0, MOST_LINKS), side, slice, length }, keyTop);
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
    tag('defs', {}, clip(view), shown.some(({ coral }) => coral.rough) ? softPaints() : ''),
    tag('rect', { x: -9, y: -9, width: WIDTH + 18, height: height + 18, fill: palette.ground }),
    header({ scene, shown, title, heading, length, ...(about === undefined ? {} : { about }) }),
    svg,
    edgeScale(view, region, length),
    ...notes.map((text, i) => words(text, { x: PAD, y: noteTop + 26 + i * NOTE, ...quiet })),
    explained.svg,
    list(shown, listTop),
  );
}

function header({
  scene,
  shown,
  title,
  heading,
  length,
  about,
}: Omit<Whole, 'troubles'> & Omit<Sight, 'side' | 'region'>): string {
  const size = cutTo(WIDTH - 2 * PAD, glassWords(scene, length, 'a guessed size'), WORDS);
  const count = shown.length === 0 ? 'No corals placed yet' : `Corals: ${countOf(shown)}`;
  return [
    words(cutTo(WIDTH - 2 * PAD, title, TITLE), { x: PAD, y: 52, size: TITLE, fill: palette.ink }),
    words(heading, { x: PAD, y: 88, size: WORDS, fill: palette.ink }),
    words(size, { x: PAD, y: 120, ...quiet }),
    words(cutTo(WIDTH - 2 * PAD, about ?? count, WORDS), { x: PAD, y: 152, size: WORDS, fill: palette.ink }),
  ].join('');
}

/** What had no room, so that nobody takes it for missing. */
function notesFor({ noNumber, noWords }: Omit<Drawn, 'svg'>, pairs: number): readonly string[] {
  return [
    ...(pairs > MOST_LINKS ? [`Drawn: the ${MOST_LINKS} worst of ${pairs} conflicts.`] : []),
    ...(noWords > 0 ? ['Some lines have no room for words: the text has all.'] : []),
    ...(noNumber > 0 ? [`Too crowded for ${noNumber} of the numbers.`] : []),
  ];
}

/** One view, and how many numbers of corals and words of conflicts had no room in it. */
interface Drawn {
  readonly svg: string;
  readonly noNumber: number;
  readonly noWords: number;
}

function drawView(
  { scene, shown, troubles }: Pick<Whole, 'scene' | 'shown' | 'troubles'>,
  view: View,
  slice: LightSlice | undefined,
): Drawn {
  const { light, flow } = scene;
  const room = roomIn(view);
  const pairs = pairsIn(troubles, view);
  const numbered = numbers(shown, view, room);
  const lit = lightNumbers(light, view, room) + (slice === undefined ? '' : lightWords(slice, view, room));
  const isCrowded = troubles.length > 1 && shown.length > CROWDED;
  const said = isCrowded ? { svg: '', left: 0 } : linkWords(pairs, room);
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
