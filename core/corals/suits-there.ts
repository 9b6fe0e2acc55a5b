import { problemsOf } from './check.ts';
import { distanceCm } from './distance.ts';
import type { CoralEntry } from './entry.ts';
import { judgeLight } from './rules/light.ts';
import type { Finding, Placed, Scene, Spot } from './scene.ts';

/** Something said of a coral: it speaks against it, or is to be watched. */
export interface Said {
  readonly against: boolean;
  readonly text: string;
}

export const no = (text: string): Said => ({ against: true, text });
export const mind = (text: string): Said => ({ against: false, text });

/** A spot to be tried: every rule of the placement check is asked of each coral there. */
export interface Place {
  readonly scene: Scene;
  readonly spot: Spot;
  readonly rough: boolean;
  /** Rules not to ask, because what they judge by is not known. */
  readonly untold: readonly Finding['rule'][];
}

/** Width of the small piece that is tried, cm: project rule. */
const TRIED_CM = 5;
/** No kept coral has this id. */
const TRIED_ID = -1;

/** Beyond every reach and a year of growth, cm: those further off have nothing to say: project rule. */
const FARTHEST_CM = 90;

/** What the placement check says of a new, small, tank-grown piece at the spot. Too dim or too bright speaks against it. */
export function placeSays(entry: CoralEntry, { scene, spot, rough, untold }: Place): readonly Said[] {
  const tried: Placed = {
    id: TRIED_ID,
    entry,
    label: entry.names.common[0],
    spot,
    rough,
    diameterCm: Math.min(TRIED_CM, entry.size.practicalMaxCm),
    origin: 'tank-grown',
    daysHere: 0,
  };
  const near = scene.corals.filter((other) => distanceCm(tried, other) < FARTHEST_CM);
  const { side, sure, word } = judgeLight(scene, tried);
  const isOff = sure && side !== 'fits' && word !== 'too bright to begin with';
  return problemsOf({ ...scene, corals: [...near, tried] }, tried)
    .filter(({ verdict, rule }) => verdict !== 'settled' && !untold.includes(rule))
    .map((finding) => {
      const against = finding.verdict === 'move' || (isOff && finding.rule === 'light');
      return (against ? no : mind)(shortly(finding, tried, scene));
    });
}

/** A finding in a few words; the check itself says it whole. */
function shortly({ rule, corals }: Finding, tried: Placed, scene: Scene): string {
  const other = scene.corals.find(({ id }) => corals.includes(id));
  if (other !== undefined) return `${rule}: your ${other.label} is near`;
  switch (rule) {
    case 'light': {
      const { word, need } = judgeLight(scene, tried);
      return `${word}: begins near ${need.startPpfd} of ${need.lowPpfd} to ${need.highPpfd} PAR`;
    }
    case 'ground':
      return `belongs on ${tried.entry.ground.value}`;
    case 'pump':
      return 'guard every pump intake';
    case 'walking':
      return 'it may walk: a rock of its own';
    case 'room':
      return 'it rubs on the glass there';
    default:
      return rule;
  }
}
