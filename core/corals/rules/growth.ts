import { basisWords } from '../basis-words.ts';
import type { Bases } from '../basis.ts';
import { fastestEdgeCmPerYear, monthsUntil, type Months } from '../growth.ts';
import { cm, missingCm, monthRange } from '../say.ts';
import type { Finding, Placed } from '../scene.ts';
import { isSoft, spreaderOf, spreads } from '../spreading.ts';
import type { StandingPair } from './pair.ts';

/** Told when it may come within this many months; the project's spacing leaves room for a year too. */
const AHEAD_MONTHS = 12;
/** Nearer than this a mat is as good as upon its neighbour, cm: project rule. */
const CREEPING_CM = 2;

const creepBasis: Bases = [{ kind: 'practice', note: 'mats win by overgrowing; act early' }];
const polypBasis: Bases = [{ kind: 'practice', note: 'leave 2 to 5 cm and group by vigour' }];
const paceBasis: Bases = [{ kind: 'project rule', note: 'straight-line growth of both edges' }];

/** Mats that creep over a neighbour, and corals that grow to within their least gap, or meet, within a year. */
export function growthFinding(pair: StandingPair): Finding | undefined {
  const mat = creeping(pair);
  return mat === undefined ? meetingFinding(pair) : creepFinding(pair, mat);
}

/** The soft mat, else the faster polyps, upon a neighbour of another kind. */
function creeping({ one, other, gap }: StandingPair): Placed | undefined {
  const first = gap.cm >= CREEPING_CM ? undefined : spreaderOf(one.entry, other.entry);
  return [one, other].find(({ entry }) => entry === first);
}

function creepFinding({ one, other, gap }: StandingPair, mat: Placed): Finding {
  const neighbour = mat === one ? other : one;
  const soft = isSoft(mat.entry);
  const { lowCmPerYear, highCmPerYear, basis } = mat.entry.growth;
  const place = gap.cm === 0 ? 'already touching' : `${cm(gap.cm)} from`;
  return {
    rule: 'growth',
    verdict: soft ? 'move' : 'watch',
    corals: [neighbour.id, mat.id],
    reason: `${mat.label}: ${place} ${neighbour.label}, spreading ${lowCmPerYear} to ${highCmPerYear} cm a year. They win by growing over, not by stinging.`,
    basis: basisWords(basis, soft ? creepBasis : polypBasis),
    cure: soft
      ? `A rock of its own for ${mat.label}, with bare sand round it. Peel or chip it off outside the tank: scraping inside spreads it.`
      : `${missingCm(CREEPING_CM - gap.cm)} further apart: at least to 2 cm, better 5 cm.`,
    weight: soft ? 58 : 21,
  };
}

function meetingFinding(pair: StandingPair): Finding | undefined {
  const months = monthsToTrouble(pair);
  if (months === undefined) return undefined;
  const { one, other, gap, need } = pair;
  const goalCm = need.moveBelowCm;
  const about = gap.rough ? 'about ' : '';
  const what =
    goalCm > 0
      ? `closer than the ${cm(goalCm)} they should keep`
      : gap.cm === 0
        ? 'grow against each other'
        : 'grown together';
  const when = gap.cm === 0 ? 'now' : `in ${monthRange(months.soonest, months.latest)}`;
  return {
    rule: 'growth',
    verdict: 'watch',
    corals: [one.id, other.id],
    reason: `${one.label} and ${other.label}: ${what} ${when}. They stand ${about}${cm(gap.cm)} apart.`,
    basis: basisWords(one.entry.growth.basis, other.entry.growth.basis, paceBasis),
    cure: 'Leave more room now, or plan to trim one of them.',
    weight: 10 + (goalCm > 0 ? 4 : 0) + (AHEAD_MONTHS - months.soonest) / 4,
  };
}

/**
 * Months until two corals stand closer than they should, or meet; undefined when not within `AHEAD_MONTHS`, when they
 * are too close already (the sting rule says so), when they get on, or when one walks anyway.
 */
export function monthsToTrouble({ one, other, gap, need }: StandingPair): Months | undefined {
  const goalCm = need.moveBelowCm;
  if (gap.cm < goalCm || gap.cm - goalCm > inAYearCm(one) + inAYearCm(other)) return undefined;
  if (walks(one) || walks(other)) return undefined;
  const { ally, rules } = need.facts;
  const getOn = goalCm === 0 && (ally !== undefined || rules.length > 0);
  if (getOn && (one.entry === other.entry || !(spreads(one.entry) || spreads(other.entry)))) return undefined;
  const months = monthsUntil(one, other, gap.cm, goalCm);
  return months !== undefined && months.soonest <= AHEAD_MONTHS ? months : undefined;
}

function inAYearCm(coral: Placed): number {
  return fastestEdgeCmPerYear(coral);
}

function walks({ entry }: Placed): boolean {
  return entry.moves.value === 'walks';
}
