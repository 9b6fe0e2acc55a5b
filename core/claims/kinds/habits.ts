import { FLOW_LOOK } from '../../corals/rules/flow.ts';
import { amountG } from '../../dosing/dose.ts';
import { compoundsFor } from '../../dosing/compound.ts';
import { fixed, mass, significant, volume } from '../../quantity/format.ts';
import { parameter } from '../../water/parameter.ts';
import { limitsOf } from '../../water/limits.ts';
import type { Judge, Verdict } from '../claim.ts';
import { canonical, levelOf, own } from '../salts.ts';
import { byUnit, has, is, type Stated } from '../stated.ts';

/** Whether a rule sets a border: "never", "max", "you can", "safe to". */
export function isLimit(stated: Stated): boolean {
  return has(
    stated,
    'manner.negation',
    'sums.most',
    'manner.may',
    'manner.must',
    'manner.askOk',
    'manner.caps',
  );
}

/** "no more than 1 dKH a day": the paces that are common practice. */
export const paceRule: Judge = (stated) => {
  const said = stated.amounts.find(({ everyDays }) => everyDays === 1);
  if (said === undefined || said.value <= 0 || !isLimit(stated)) return undefined;
  const id = byUnit(said)[0] ?? stated.parameters[0];
  if (id === undefined) return undefined;
  const { kind, unit, label } = parameter(id);
  const { pace } = limitsOf(id);
  const forms = compoundsFor(id);
  if (pace === undefined || forms.length === 0 || (!is(said, kind) && !is(said, 'bare'))) return undefined;
  const value = own(id, levelOf(id, said));
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
export const turnover: Judge = (stated) => {
  const [only, other] = stated.amounts;
  if (only === undefined || other !== undefined || !is(only, 'times')) return undefined;
  if (!has(stated, 'sums.hourly', 'places.current')) return undefined;
  const times = only.value;
  if (!(times > 0 && times <= 500)) return undefined;
  return {
    kind: 'turnover',
    rule: `pumps move ${times} times the tank each hour`,
    verdict: 'depends',
    figure:
      'soft corals do with about 10 to 20 times an hour, small-polyp stony corals get 40 or more (common practice)',
    besides: 'where the stream goes counts for more than the number',
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
