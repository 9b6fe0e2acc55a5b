import type { Case } from './case.ts';
import { met } from './met.ts';
import type { Reading } from './reading.ts';
import { inUnit, saidAs, type Said } from './said.ts';
import type { NumberSpan } from './scan/number-span.ts';
import { isBack } from './taken-back.ts';
import { toldNumbers, type ToldNumber } from './told-numbers.ts';
import { placeOf } from './tokens.ts';
import { isWithin } from './within.ts';

/** Words by which a number told before is called wrong. They are grammar: nothing is learnt of them. */
const WRONG = new Set(
  'wait sorry hang hold lied wrong typo mistake printed sticker label old only'.split(' '),
);
/** A number within this factor of the one it stands for can be the same thing, put right; own choice. */
const FACTOR = 4;

/**
 * A number told before that a message calls wrong, and the one that stands for it: "300 is what is printed on the glass,
 * it's 250 of water" after "300 litres" is a system of 250 litres; "10 is the old can, that is 25 l" a can of 25. What
 * each number is of is known from the earlier message, and not guessed anew.
 */
export function withPutRight(reading: Reading, before: Case): Reading {
  const { scanned, said } = reading;
  const { tokens } = scanned;
  const isCalledWrong = met(scanned, 'manner.correction') || tokens.some(({ word }) => WRONG.has(word));
  const told = toldNumbers(before);
  for (const old of said) {
    const at = placeOf(tokens, old.number);
    if (!isCalledWrong && !isBack(tokens, at)) continue;
    const meant = told.find((one) => one.value === old.number.value && fits(old.number, one));
    const anew = meant === undefined ? undefined : standsFor(old, meant, reading);
    if (meant !== undefined && anew !== undefined)
      return { ...reading, said: said.map((one) => exchanged(one, { old, anew, meant })) };
  }
  return reading;
}

/** The number that takes the place of an old one: with its unit first, else the one closest to it. */
function standsFor(old: Said, meant: ToldNumber, { scanned, said }: Reading): Said | undefined {
  const can = said.filter((one) => {
    const { number } = one;
    const at = placeOf(scanned.tokens, number);
    const isCount = number.form === 'words' && number.unit === '' && one.part === 'none';
    const isSame = number.value === old.number.value;
    return (
      isWithin(FACTOR, number.value, meant.value) &&
      !isSame &&
      !isCount &&
      fits(number, meant) &&
      !isBack(scanned.tokens, at)
    );
  });
  const far = ({ number: { unit, value } }: Said): number =>
    (unit === '' ? 1 : 0) + Math.abs(Math.log(value / meant.value));
  return can.toSorted((a, b) => far(a) - far(b))[0];
}

function exchanged(one: Said, { old, anew, meant }: { old: Said; anew: Said; meant: ToldNumber }): Said {
  if (one === anew) return withUnit(one, meant);
  const isAgain = one.number.value === anew.number.value && one.number.kinds.length === 0;
  const isOld = one === old || (one.number.value === old.number.value && fits(one.number, meant));
  return isOld || isAgain ? { ...one, part: 'none', of: 'nothing' } : one;
}

function withUnit(one: Said, { part, of, unit }: ToldNumber): Said {
  const { number, probability } = one;
  const isBare = number.unit === '' && unit !== '';
  return isBare
    ? inUnit({ ...one, part, of }, unit, kindsOf(part, of))
    : saidAs(part, of, number, probability);
}

/** What a unit lets a number be, by the part it plays; those of levels say no more than the level. */
function kindsOf(part: Said['part'], of: Said['of']): NumberSpan['kinds'] {
  if (part === 'span') return ['days'];
  if (part === 'changed' && of === 'share') return ['share'];
  return isVolume({ part, of }) || (part === 'rate' && of === 'water') ? ['volume'] : [];
}

function isVolume({ part, of }: Pick<Said, 'part' | 'of'>): boolean {
  return of !== 'share' && (part === 'system' || part === 'part' || part === 'changed');
}

/** Without a unit, or with the same: what another unit measures is another thing. */
function fits({ unit, kinds }: NumberSpan, told: ToldNumber): boolean {
  if (unit === '') return kinds.length === 0;
  return unit === told.unit || (isVolume(told) && kinds.includes('volume') && !kinds.includes('mass'));
}
