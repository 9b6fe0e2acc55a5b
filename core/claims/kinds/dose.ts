import { hazard } from '../../care/hazards.ts';
import { riseFrom, supplyPerG } from '../../dosing/dose.ts';
import type { Span } from '../../light/lux.ts';
import { mass, significant, volume } from '../../quantity/format.ts';
import { readQuantity } from '../../quantity/read.ts';
import type { SourceCode } from '../../sources.ts';
import { parameter, type ParameterId } from '../../water/parameter.ts';
import type { Heard } from '../../words/hear.ts';
import { is, type Mention } from '../../words/mention.ts';
import type { Claim, Recogniser, Verdict } from '../claim.ts';
import {
  amountIn,
  baseIn,
  dosedFor,
  gramsOf,
  own,
  ownSpan,
  printed,
  printedBase,
  saltsIn,
  type NamedSalt,
} from '../salts.ts';
import { againstNumber, againstSpan, spanAgainst } from '../verdict.ts';
import { limitsOf } from '../../water/limits.ts';

const RAISES = /\b(?:is|raises?|lifts?|bumps?|adds?|gives?|increases?|ups|boosts?|to get)\b|=/;

/** "1 tsp baking soda per 5 gal raises 1 dKH"; without a rise, "1 tsp soda ash per 50 gal", it depends. */
export const doseRule: Recogniser = (heard) => {
  const [salt, other] = saltsIn(heard);
  const base = baseIn(heard);
  const amount = amountIn(heard, base);
  if (salt === undefined || other !== undefined || base === undefined || amount === undefined)
    return undefined;
  const grams = gramsOf(amount, salt);
  if (grams === undefined || grams.low <= 0) return undefined;
  const id = raisedBy(heard, salt);
  const perL = readQuantity('volume', base.text, { field: 'rule' }).value;
  const rises = salt.forms.flatMap((form) => [grams.low, grams.high].map((g) => riseFrom(form, id, g, perL)));
  const real = { low: Math.min(...rises), high: Math.max(...rises) };
  const rise = riseSaid(heard, id, [base, amount]);
  if (rise === undefined)
    return /\bcups?$/.test(amount.text) ? undefined : rate(heard, salt, { id, amount, base, real });
  const meant = readQuantity(parameter(id).kind, rise.text, {
    field: 'rule',
    fallback: parameter(id).unit,
  }).value;
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
      words: `${scaled(amount, waterL / perL)} of ${salt.label} in ${volume(waterL)} raises ${parameter(id).label} by ${ownSpan(id, real)} where ${ownSpan(id, { low: meant, high: meant })} was meant: ${spanAgainst(real, meant)}`,
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
  readonly amount: Mention;
  readonly base: Mention;
  readonly real: Span;
}

/** A dose by volume with no rise named: right for one need only. */
function rate(heard: Heard, salt: NamedSalt, { id, amount, base, real }: Rate): Claim | undefined {
  if (salt.forms[0].hazard === 'lime' || heard.said.some(({ parameter: p }) => p === id)) return undefined;
  const perL = readQuantity('volume', base.text, { field: 'rule' }).value;
  const { unit, label } = parameter(id);
  const { pace } = limitsOf(id);
  const days = pace === undefined ? undefined : own(id, real.high) / pace.up;
  return {
    ...common(salt, id, { grams: gramsOf(amount, salt) ?? real, perL, real }),
    kind: 'dose by volume',
    rule: `dose ${printed(amount)} of ${salt.label} per ${printedBase(base)}`,
    verdict: 'depends',
    figure: `it raises ${label} by ${ownSpan(id, real)}; whether you need that only your own reading says${days !== undefined && days > 1 ? `, and at most ${pace?.up ?? ''} ${unit} a day is usual` : ''}`,
    following: (waterL) => ({
      words: `${scaled(amount, waterL / perL)} of ${salt.label} in ${volume(waterL)} raises ${label} by ${ownSpan(id, real)}`,
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
): Pick<Claim, 'working' | 'cautions' | 'steps' | 'sources'> {
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
    cautions: hazard(first.hazard).cautions,
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
function raisedBy(heard: Heard, salt: NamedSalt): ParameterId {
  const [first] = salt.forms;
  return (
    heard.parameters.find((id) => first.raises.includes(id) && supplyPerG(first, id) > 0) ?? dosedFor(salt)
  );
}

/** "my alk is 7.2 dKH, want 8.4": readings and goals, not what a rule promises. */
const READING =
  /\b(?:my|now|currently|reads?|reading|want|wanted|target|goal|from|is|at|was|to)\s+(?:[a-z]+\s+){0,3}$/;

/** "1.9 g soda ash per 100 L is 1 dkh": the rule itself. */
const EQUALS = /\b(?:l|lit(?:er|re)s?|gal(?:lon)?s?)\s+is\s+(?:about |around |roughly )?$/;

/** The rise a rule promises: a number in a unit of the parameter, or a bare one behind "by". */
function riseSaid(heard: Heard, id: ParameterId, not: readonly Mention[]): Mention | undefined {
  if (!RAISES.test(heard.text)) return undefined;
  const rest = heard.mentions.filter((m) => {
    const lead = heard.text.slice(0, m.start);
    return !not.includes(m) && (EQUALS.test(lead) || !READING.test(lead));
  });
  return (
    rest.find((m) => is(m, parameter(id).kind) && !is(m, 'volume')) ??
    rest.find((m) => is(m, 'bare') && /\bby\s*$/.test(heard.text.slice(0, m.start)))
  );
}

/** "15 tsp": the amount of the rule for another volume, in its own unit. */
function scaled(amount: Mention, times: number): string {
  return `${significant(amount.value * times, 3)} ${printed(amount).replace(/^[\d.]+\s/, '')}`;
}
