import { afterChanges, changesToGoal, fractionForGoal } from '../../core/change/exchange.ts';
import { met } from '../../core/language/met.ts';
import { scan } from '../../core/language/tokens.ts';
import { urgentCard } from '../../core/care/urgent/cards.ts';
import { PEOPLE_FIRST } from '../../core/care/urgent/people.ts';
import { significant, volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import { cardAnswer } from '../urgent/card-answer.ts';
import { urgentAction } from '../urgent/action.ts';
import { notUsed, readOrName } from '../urgent/not-used.ts';
import { mostAtOnce, NOT_HALF } from '../waterchange/advice.ts';
import { percent, readShare, readWater, type Water } from '../waterchange/pour.ts';
import { substance, type Substance } from './substance.ts';
import { say } from '../../core/wording/say.ts';

interface Foreign {
  readonly what?: string | undefined;
  readonly amount?: string | undefined;
  readonly strength?: string | undefined;
  readonly volume?: string | undefined;
  readonly share?: string | undefined;
  readonly goal?: string | undefined;
  readonly now?: string | undefined;
}

/** What is no addition, and harms in any amount. */
const POISONS = [
  'poisons.bleach',
  'poisons.chlorine',
  'poisons.ammoniaCleaner',
  'poisons.soap',
  'poisons.glassCleaner',
  'poisons.airFreshener',
  'poisons.perfume',
  'poisons.skinCream',
  'poisons.insecticide',
  'poisons.aerosol',
  'poisons.paint',
  'poisons.solvent',
  'poisons.oil',
  'poisons.acid',
  'poisons.poison',
] as const;

/** Changes that are shown where none was asked about. */
const SHOWN = [0.2, 0.3, 0.5] as const;

/** Anything that is no salt of a dose: how much of it is in the water, and what changes take out. What cannot be read is named. */
export function foreign(input: Foreign): Answer {
  const left = input.now === undefined ? [] : [notUsed('now', input.now, 'it takes a salt that I know')];
  const water = readOrName('volume', input.volume, readWater, left) ?? readWater(undefined);
  const went = readOrName('amount', input.amount, (text) => substance(text, input.strength), left);
  const share = readOrName('share', input.share, readShare, left);
  const goal = readOrName('goal', input.goal, readGoal, left);
  const mgL = went === undefined ? undefined : (went.grams * 1000) / water.volumeL;
  const sums = {
    facts: mgL === undefined ? [] : [...factsOf(mgL, share), ...goalFacts(mgL, goal)],
    working:
      went === undefined || mgL === undefined
        ? []
        : [
            `${significant(went.grams * 1000, 4)} mg / ${volume(water.volumeL)} = ${significant(mgL, 3)} mg/L`,
          ],
    unused: left,
    read: [...(input.what === undefined ? [] : [`what went in: ${input.what}`]), ...(went?.read ?? [])],
  };
  if (isPoison(input.what ?? '')) return withCard(sums, input.volume);
  return answer({
    ...sums,
    headline: `${first(went, water, mgL)}${mgL === undefined ? '' : changeWords(mgL, goal, share)}`,
    tone: 'urgent',
    read: [...sums.read, ...water.read],
    steps: urgentCard('other overdose').steps,
    dangers: [PEOPLE_FIRST, ...((share ?? 0) > mostAtOnce ? [NOT_HALF] : [])],
    cautions: [
      'The sum takes all of it as dissolved and none as used up or bound; it says nothing of how harmful it is.',
    ],
    sources: ['mixing', 'practice'],
    next: [urgentAction('bleach or spray'), action(say('urgent.anotherEmergency'), 'urgent', {})],
  });
}

/** Cleaners, sprays, drinks and the like have a card. */
function isPoison(what: string): boolean {
  return met(scan(what), ...POISONS);
}

/** First aid by the card, the sums behind it. */
function withCard(
  sums: Pick<Answer, 'facts' | 'working' | 'read' | 'unused'>,
  tank: string | undefined,
): Answer {
  const card = cardAnswer('bleach or spray', { volume: tank });
  return {
    ...card,
    read: [...sums.read, ...card.read],
    unused: [...sums.unused, ...card.unused],
    facts: [...sums.facts, ...card.facts],
    working: [...sums.working, ...card.working],
    sources: [...new Set([...card.sources, 'mixing' as const])],
  };
}

/** mg/L; a number alone is that. */
function readGoal(text: string): number {
  return readQuantity('concentration', text, { field: 'goal', fallback: 'mg/L' }).value;
}

function first(went: Substance | undefined, water: Water, mgL: number | undefined): string {
  if (went === undefined || mgL === undefined)
    return 'Stop whatever still goes in, look at people and animals first, and say how much of what it was.';
  return `${went.words} in ${water.part(1)} is ${significant(mgL, 3)} mg/L now, if all of it dissolved.`;
}

function changeWords(mgL: number, goal: number | undefined, share: number | undefined): string {
  if (goal === undefined)
    return share === undefined ? '' : ` A change of ${percent(share)} leaves ${remains(mgL, share)} mg/L.`;
  const one = fractionForGoal({ now: mgL, goal, fresh: 0 });
  if (one === undefined || one === 0) return ` That is below the ${significant(goal, 3)} mg/L asked about.`;
  if (one <= mostAtOnce) return ` One change of ${percent(one)} takes it to ${significant(goal, 3)} mg/L.`;
  const halves = changesToGoal({ now: mgL, goal, fresh: 0 }, mostAtOnce);
  return halves === undefined
    ? ' Water changes come near to none but never reach it.'
    : ` To ${significant(goal, 3)} mg/L it takes ${halves.whole} changes of ${percent(mostAtOnce)}, some hours apart.`;
}

function remains(mgL: number, fraction: number): string {
  return significant(afterChanges({ now: mgL, fresh: 0, fraction }), 3);
}

function factsOf(mgL: number, share: number | undefined): readonly Fact[] {
  const shares = share === undefined ? SHOWN : [share];
  return [
    { label: 'in the water now', value: `${significant(mgL, 3)} mg/L` },
    ...shares.map((one) => ({
      label: `after a change of ${percent(one)}`,
      value: `${remains(mgL, one)} mg/L`,
    })),
  ];
}

function goalFacts(mgL: number, goal: number | undefined): readonly Fact[] {
  const one = goal === undefined ? undefined : fractionForGoal({ now: mgL, goal, fresh: 0 });
  return one === undefined || one === 0
    ? []
    : [
        {
          label: 'one change alone',
          value: percent(one),
          verdict: one > mostAtOnce ? 'too much at once' : 'possible',
        },
      ];
}
