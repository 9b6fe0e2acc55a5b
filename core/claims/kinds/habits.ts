import { FLOW_LOOK } from '../../corals/rules/flow.ts';
import { amountG } from '../../dosing/dose.ts';
import { compoundsFor } from '../../dosing/compound.ts';
import { fixed, mass, significant, volume } from '../../quantity/format.ts';
import { readQuantity } from '../../quantity/read.ts';
import { parameter } from '../../water/parameter.ts';
import { is } from '../../words/mention.ts';
import type { Recogniser, Verdict } from '../claim.ts';
import { NUM } from '../rule-text.ts';
import { canonical } from '../salts.ts';
import { limitsOf } from '../../water/limits.ts';

const LIMIT =
  /\b(?:no more than|not more than|at most|max(?:imum)?(?: of)?|never (?:raise|move|change|go|more)[^.?]{0,30}|don't (?:raise|move|change)[^.?]{0,30}|up to|(?:safe to|can(?: safely)?|(?:ok|okay|fine) to) (?:raise|move|change|increase|bump)[^.?]{0,20}|limit[^.?]{0,20})/;
const A_DAY =
  /^\s*(?:(?:of )?(?:alk(?:alinity)?|calcium|ca|magnesium|mg|nitrates?|phosphates?|kh)\s*)?(?:a|per|each|every|\/)\s*(?:1 )?(?:day|24 ?h)/;

/** "no more than 1 dKH a day": the paces that are common practice. */
export const paceRule: Recogniser = (heard) => {
  if (!LIMIT.test(heard.text)) return undefined;
  const said = heard.mentions.find((m) => A_DAY.test(heard.text.slice(m.end)));
  if (said === undefined || said.value <= 0) return undefined;
  const id = heard.said.find(({ mention }) => mention === said)?.parameter ?? heard.parameters[0];
  if (id === undefined) return undefined;
  const { kind, unit, label } = parameter(id);
  const { pace } = limitsOf(id);
  const forms = compoundsFor(id);
  if (pace === undefined || forms.length === 0 || (!is(said, kind) && !is(said, 'bare'))) return undefined;
  const value =
    said.value *
    (unit === 'dKH' && is(said, 'alkalinity')
      ? readQuantity(kind, said.text, { field: 'rule', fallback: unit }).value / canonical(id, said.value)
      : 1);
  const gentle = pace.gentle ?? pace.up;
  const verdict: Verdict =
    value > pace.up * 1.12 ? 'wrong' : value < gentle * 0.88 ? 'roughly right' : 'right';
  const salt = forms.find(({ hazard }) => hazard !== 'lime');
  const usual = gentle === pace.up ? `${pace.up}` : `${gentle} to ${pace.up}`;
  return {
    kind: 'pace',
    rule: `${label} is moved at most ${significant(value, 3)} ${unit} a day`,
    verdict,
    figure: `common practice is at most ${usual} ${unit} a day, upward; nothing published fixes it${verdict === 'roughly right' ? ', and slower is never wrong' : ''}`,
    working: [`usual pace of ${label}: ${usual} ${unit} a day (common practice)`],
    ...(salt === undefined
      ? {}
      : {
          following: (waterL: number) => {
            const low = amountG(salt, id, canonical(id, value), waterL);
            return {
              words: `in ${volume(waterL)} that is ${mass(low)} of ${salt.name} a day, in two or more portions`,
              low,
              high: low,
              unit: 'g',
            };
          },
        }),
    steps: ['Test again before the next portion.'],
    sources: ['practice'],
  };
};

/** "20x turnover": pump flow against the volume. */
export const turnover: Recogniser = ({ text }) => {
  const found =
    new RegExp(
      String.raw`${NUM}\s*(?:x|times)\s*(?:the\s+|your\s+)?(?:tank\s+|water\s+)?(?:volume\s+)?(?:of\s+)?(?:turnover|flow|an hour|per hour|every hour)\b`,
    ).exec(text) ??
    new RegExp(
      String.raw`\b(?:turnover|flow)\s+(?:of|should be|is)\s+(?:at least\s+)?${NUM}\s*(?:x|times)\b`,
    ).exec(text);
  const times = Number(found?.[1]);
  if (found === null || !(times > 0 && times <= 500)) return undefined;
  return {
    kind: 'turnover',
    rule: `pumps move ${times} times the tank each hour`,
    verdict: 'depends',
    figure:
      'soft corals do with about 10 to 20 times an hour and small-polyp stony corals get 40 or more (common practice); where the stream goes counts for more than the number',
    working: ['turnover = litres an hour on the pump / litres of water; pumps give less than the box says'],
    following: (waterL) => {
      const low = times * waterL;
      return {
        words: `${volume(waterL)} would need ${fixed(low, 0)} L an hour in all`,
        low,
        high: low,
        unit: 'L/h',
      };
    },
    steps: [`Look at the corals: ${FLOW_LOOK}, nor does it lie still.`],
    sources: ['practice'],
  };
};
