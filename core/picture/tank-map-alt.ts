import { counted } from '../quantity/format.ts';
import type { Scene } from '../corals/scene.ts';
import { MOST_ALT } from './alt.ts';
import { countOf, troubleWords, type Shown, type Trouble } from './tank-map-shown.ts';
import { glassWords } from './tank-map-glass.ts';

/**
 * What the map says, in words: the glass, the flow, how many corals, and every coral or pair that should move or wants
 * watching, the worst first. At most `MOST_ALT` characters: then "and N more".
 */
export function mapAlt(
  title: string,
  scene: Scene,
  shown: readonly Shown[],
  troubles: readonly Trouble[],
): string {
  const { light, flow } = scene;
  const corals = shown.length === 0 ? 'No corals' : `${count(shown.length, 'coral')}: ${countOf(shown)}`;
  const head = [
    `${title}, from above and from the front.`,
    `${glassWords(scene)}; flow ${flow ?? 'not said'}; ${count(light.length, 'light reading')}.`,
    `${corals}.`,
  ].join(' ');
  return withTroubles(head, troubles);
}

function withTroubles(head: string, troubles: readonly Trouble[]): string {
  let text = head;
  for (const [i, trouble] of troubles.entries()) {
    const isFirst = trouble.verdict !== troubles[i - 1]?.verdict;
    const next = `${text}${isFirst ? ` To ${trouble.verdict}: ` : ' '}${troubleWords(trouble)}.`;
    const left = troubles.length - i;
    const more = left > 1 ? ` And ${left - 1} more.` : '';
    if (next.length + more.length > MOST_ALT) return `${text} And ${left} more.`;
    text = next;
  }
  return text;
}

function count(number: number, what: string): string {
  return number === 0 ? `no ${what}s` : counted(number, what);
}
