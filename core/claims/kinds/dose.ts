import { hazard } from '../../care/hazards.ts';
import { riseFrom, supplyPerG } from '../../dosing/dose.ts';
import type { Span } from '../../light/lux.ts';
import { mass, significant, volume } from '../../quantity/format.ts';
import type { SourceCode } from '../../sources.ts';
import { parameter, type ParameterId } from '../../water/parameter.ts';
import { limitsOf } from '../../water/limits.ts';
import type { Claim, Judge, Verdict } from '../claim.ts';
import type { NamedSalt } from '../named-salts.ts';
import {
  amountIn,
  baseIn,
  dosedFor,
  gramsOf,
  levelOf,
  litresOf,
  own,
  ownSpan,
  printed,
  printedBase,
  volumeUnit,
  isSpoon,
} from '../salts.ts';
import { has, is, isOwn, tied, type Amount, type Stated } from '../stated.ts';
import { againstNumber, againstSpan, spanAgainst } from '../verdict.ts';

/** "1 tsp baking soda per 5 gal raises 1 dKH"; without a rise, "1 tsp soda ash per 50 gal", it depends. */
export const doseRule: Judge = (stated) => {
  const [salt, other] = stated.salts;
  const amount = amountIn(stated);
  const base = baseIn(stated, amount);
  if (salt === undefined || other !== undefined || base === undefined || amount === undefined)
    return undefined;
  const grams = gramsOf(amount, salt);
  if (grams === undefined || grams.low <= 0) return undefined;
  const id = raisedBy(stated, salt);
  const perL = litresOf(base);
  const rises = salt.forms.flatMap((form) => [grams.low, grams.high].map((g) => riseFrom(form, id, g, perL)));
  const real = { low: Math.min(...rises), high: Math.max(...rises) };
  const rest = stated.amounts.filter((each) => each !== base && each !== amount);
  const rise = riseSaid(stated, id, rest);
  if (rise === undefined) {
    const isOpen = rest.length === 0 && !(isSpoon(amount) && volumeUnit(amount) === 'US cup');
    return isOpen ? rate(salt, { id, amount, base, grams, real }) : undefined;
  }
  const meant = levelOf(id, rise);
  if (meant <= 0) return undefined;
  return {
    ...common(salt, id, { grams, perL, real }),
    kind: 'dose and rise',
    rule: `${printed(amount)} of ${salt.label} per ${printedBase(base)} raises ${parameter(id).label} by ${ownSpan(id, { low: meant, high: meant })}`,
    verdict: judged(meant, real, salt),
    figure:
      `${printed(amount)} of ${salt.label} in ${printedBase(base)} raises ${parameter(id).label} by ${ownSpan(id, real)}, ${spanAgainst(real, meant)}`.replace(
        ', as meant',
        '',
      ),
    following: (waterL) => ({
      words: `${scaled(amount, waterL / perL)} of ${salt.label} in ${volume(waterL)}: ${ownSpan(id, real)}, ${spanAgainst(real, meant)}`,
      low: own(id, real.low),
      high: own(id, real.high),
      unit: parameter(id).unit,
    }),
  };
};

function judged(meant: number, real: Span, { forms }: NamedSalt): Verdict {
  if (real.high - real.low <= real.low * 1e-6) return againstNumber(meant, real.low);
  const verdict = againstSpan(meant, real);
  return forms.length > 1 && verdict !== 'wrong' ? 'depends' : verdict;
}

interface Rate {
  readonly id: ParameterId;
  readonly amount: Amount;
  readonly base: Amount;
  readonly grams: Span;
  readonly real: Span;
}

/** A dose by volume with no rise named: right for one need only. */
function rate(salt: NamedSalt, { id, amount, base, grams, real }: Rate): Claim | undefined {
  if (salt.forms[0].hazard === 'lime') return undefined;
  const perL = litresOf(base);
  const { unit, label } = parameter(id);
  const { pace } = limitsOf(id);
  const days = pace === undefined ? undefined : own(id, real.high) / pace.up;
  return {
    ...common(salt, id, { grams, perL, real }),
    kind: 'dose by volume',
    rule: `dose ${printed(amount)} of ${salt.label} per ${printedBase(base)}`,
    verdict: 'depends',
    figure: `it raises ${label} by ${ownSpan(id, real)}; whether you need that only your own reading says${days !== undefined && days > 1 ? `, and at most ${pace?.up ?? ''} ${unit} a day is usual` : ''}`,
    following: (waterL) => ({
      words: `${scaled(amount, waterL / perL)} of ${salt.label} in ${volume(waterL)}: ${ownSpan(id, real)}`,
      low: own(id, real.low),
      high: own(id, real.high),
      unit,
    }),
  };
}

interface Sum {
  readonly grams: Span;
  readonly perL: number;
  readonly real: Span;
}

function common(
  salt: NamedSalt,
  id: ParameterId,
  { grams, perL, real }: Sum,
): Pick<Claim, 'working' | 'dangers' | 'steps' | 'sources'> {
  const [first] = salt.forms;
  const spooned = grams.high > grams.low * 1.000001;
  const shown = spooned ? `${significant(grams.low, 3)} to ${significant(grams.high, 3)} g` : mass(grams.low);
  const forms = salt.forms.map(
    (form) =>
      `${form.formula}: ${significant(supplyPerG(form, id), 4)} ${id === 'alkalinity' ? 'meq' : 'mg'} per gram`,
  );
  const spoon = `a level teaspoon taken as ${(first.teaspoonG ?? []).join(' to ')} g (common practice)`;
  const hazardCode: SourceCode = hazard(first.hazard).basis;
  return {
    working: [...forms, ...(spooned ? [spoon] : []), `${shown} in ${volume(perL)}: ${ownSpan(id, real)}`],
    steps: [
      ...(spooned
        ? ['Weigh it: a spoon of powder is off by a quarter before anything else goes wrong.']
        : []),
      ...tooFast(id, real),
      'Dissolve it in fresh (RO) water, add it slowly where the flow is strong, and test again.',
    ],
    dangers: hazard(first.hazard).dangers,
    sources: [
      'iupac21',
      ...(id === 'alkalinity' ? (['dkh'] as const) : []),
      ...(spooned ? (['practice'] as const) : []),
      hazardCode,
    ],
  };
}

function tooFast(id: ParameterId, { high }: Span): readonly string[] {
  const { unit } = parameter(id);
  const { pace } = limitsOf(id);
  if (pace === undefined || own(id, high) <= pace.up * 1.001) return [];
  return [`Not in one day: at most ${pace.up} ${unit} a day is usual (common practice).`];
}

/** What the rule says it raises, else what the salt is dosed for. */
function raisedBy({ parameters }: Stated, salt: NamedSalt): ParameterId {
  const [first] = salt.forms;
  return parameters.find((id) => first.raises.includes(id) && supplyPerG(first, id) > 0) ?? dosedFor(salt);
}

/** The rise a rule promises: the one level left beside amount and water, and no reading or wish of the asker's own. */
function riseSaid(stated: Stated, id: ParameterId, rest: readonly Amount[]): Amount | undefined {
  const [only, more] = rest;
  if (only === undefined || more !== undefined || isOwn(stated.words, only)) return undefined;
  // "lifts kh one degree": a degree is also one of hardness.
  if (id === 'alkalinity' && is(only, 'temperature')) return only;
  if (is(only, 'bare')) return tied(stated, 0, only.start, 'by') ? only : undefined;
  return is(only, parameter(id).kind) && !is(only, 'volume') && !has(stated, 'manner.askMuch')
    ? only
    : undefined;
}

/** "15 tsp": the amount of the rule for another volume, in its own unit. */
function scaled(amount: Amount, times: number): string {
  return `${significant(amount.value * times, 3)} ${printed(amount).replace(/^[\d.]+\s/, '')}`;
}
