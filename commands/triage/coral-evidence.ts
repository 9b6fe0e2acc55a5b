import type { Found } from '../../core/care/symptoms/rank.ts';
import { pairFindings } from '../../core/corals/check.ts';
import { judgeLight, lightWords } from '../../core/corals/rules/light.ts';
import type { Placed, Scene } from '../../core/corals/scene.ts';
import { palytoxinCautions } from '../coral/palytoxin-cautions.ts';
import { askedPlaced, nameOf } from '../coral/asked-placed.ts';
import { sceneOf } from '../coral/scene-of.ts';
import type { Keep, Tank } from '../keep.ts';

/** A coral is new for so many days: days to two weeks are usual until it opens (common practice). */
const NEW_DAYS = 14;
/** At most so many of each sign are told. */
const MOST = 3;

interface CoralEvidence {
  readonly found: readonly Found[];
  readonly read: readonly string[];
  /** Harm the named coral can do to people. */
  readonly hazards: readonly string[];
  readonly count: number;
}

/** New corals, stings within reach and light that does not fit; of one coral where it is named. */
export function coralEvidence(keep: Keep, tank: Tank, nowMs: number, coral?: string): CoralEvidence {
  const scene = sceneOf(keep, tank, nowMs);
  const placing = coral === undefined ? undefined : askedPlaced(keep, tank, coral);
  const meant = scene.corals.filter(({ id }) => placing === undefined || id === placing.id);
  return {
    found: [
      ...meant.flatMap(newSign).slice(0, MOST),
      ...stings(scene, meant).slice(0, MOST),
      ...meant.flatMap((one) => lightSign(scene, one)).slice(0, MOST),
    ],
    read: placing === undefined ? [] : [`about ${nameOf(placing)}`],
    hazards: placing === undefined ? [] : palytoxinCautions(meant.map(({ entry }) => entry)),
    count: scene.corals.length,
  };
}

function newSign({ label, daysHere }: Placed): readonly Found[] {
  if (daysHere === undefined || daysHere > NEW_DAYS) return [];
  const when = daysHere === 0 ? 'today' : daysHere === 1 ? 'yesterday' : `${daysHere} days ago`;
  return [{ sign: 'new coral', text: `your corals: ${label} came ${when}` }];
}

/** The worst first. */
function stings(scene: Scene, meant: readonly Placed[]): readonly Found[] {
  const found = new Map<string, number>();
  for (const one of meant) {
    for (const other of scene.corals) {
      if (other.id === one.id) continue;
      for (const { rule, verdict, reason, weight } of pairFindings(scene, one, other)) {
        if (rule === 'sting' && verdict !== 'settled')
          found.set(reason, verdict === 'move' ? weight + 1000 : weight);
      }
    }
  }
  return [...found]
    .sort(([, a], [, b]) => b - a)
    .map(([reason]) => ({ sign: 'sting', text: `your corals: ${firstSentence(reason)}` }));
}

function lightSign(scene: Scene, coral: Placed): readonly Found[] {
  const judged = judgeLight(scene, coral);
  if (judged.verdict === 'settled') return [];
  return [
    {
      sign: judged.side === 'dim' ? 'dim' : 'bright',
      text: `your corals: ${lightWords(judged, coral)}`,
    },
  ];
}

/** The rest stands in /coral check. */
function firstSentence(text: string): string {
  return (text.split(/(?<=\.) /)[0] ?? text).replace(/\.$/, '');
}
