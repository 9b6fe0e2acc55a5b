import { describe, expect, it } from 'vitest';
import { known, noCase, withMoment, type Case } from '../../../core/language/case.ts';
import { framesOf, type Frame } from '../../../core/language/frame.ts';
import type { Kind } from '../../../core/language/kinds.ts';
import { isNewSubject, isOtherWater, isSomebodyElses } from '../../../core/language/new-subject.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { plain, scriptedReader } from '../../scripted-reader.ts';

function frame(marked: string, kind: Kind = 'dose-amount'): Frame {
  const reader = scriptedReader([{ marked, kinds: [[kind, 0.9]] }]);
  return framesOf(reader.read(plain(marked)))[0] ?? expect.unreachable();
}

/** A case of one message. */
function told(kind: Kind, slots: Slots, more: Partial<Case> = {}): Case {
  return { ...withMoment(noCase, { atMs: 0, kind, slots }, 'before'), ...more };
}

const dose = told('dose-amount', { of: 'alkalinity', now: '7.2', wanted: '8.4', volume: '75 gal' });

describe('a new subject', () => {
  it.each([
    'new question, how do I feed it',
    'my other tank is cloudy',
    'unrelated: is this PAR fine',
    'and in my second tank, the same?',
  ])('%s', (text) => expect(isNewSubject(dose, frame(text))).toBe(true));

  it.each(['and with baking soda?', 'what do I do first', 'is that ok', 'nitrate is high too'])(
    'is not: %s',
    (text) => expect(isNewSubject(dose, frame(text))).toBe(false),
  );

  it('is another volume with another subject, and neither of them alone', () => {
    const nitrate = 'nitrate [40](now nitrate) in [20 gal](system)';
    expect(isNewSubject(dose, frame(nitrate, 'change-goal'))).toBe(true);
    expect(isNewSubject(dose, frame('nitrate [40](now nitrate) in [75 gal](system)', 'change-goal'))).toBe(
      false,
    );
    expect(isNewSubject(dose, frame('alk [7](now alkalinity) in [20 gal](system)', 'change-goal'))).toBe(
      false,
    );
    expect(isNewSubject(dose, frame(nitrate, 'dose-amount'))).toBe(false);
    expect(isNewSubject(dose, frame(`i meant ${nitrate}`, 'change-goal'))).toBe(false);
  });

  it('is another of the tanks by its name, also back to the first', () => {
    const reef = { named: 'Reef', usual: 'Reef' };
    const nano = { named: 'Nano', usual: 'Reef' };
    expect(isNewSubject(dose, frame('reef: alk is low'), reef)).toBe(false);
    expect(isNewSubject(dose, frame('nano: alk is low'), nano)).toBe(true);
    expect(isNewSubject({ ...dose, tank: 'Nano' }, frame('nano: alk is low'), nano)).toBe(false);
    expect(isNewSubject({ ...dose, tank: 'Nano' }, frame('reef: alk is low'), reef)).toBe(true);
  });

  it('needs a case to leave', () => expect(isNewSubject(noCase, frame('new question'))).toBe(false));
});

describe('two volumes', () => {
  it.each([
    ['75 gal', '284 L', false],
    ['75 gal', '40 gal', true],
    ['100 L', '89 L', true],
    ['40', '100 L', false],
    ['some', '100 L', false],
  ])('%s and %s', (one, other, isOther) => expect(isOtherWater(one, other)).toBe(isOther));
});

describe("somebody else's tank", () => {
  it.each(["my friend's tank reads kh 6", 'asking for a friend: kh 6', 'kh 6 in her tank', "a buddy's tank"])(
    '%s',
    (text) => expect(isSomebodyElses(frame(text))).toBe(true),
  );

  it('is not what a friend gave or what is mine', () => {
    for (const text of ['a friend gave me a torch', 'kh 6 in my tank'])
      expect(isSomebodyElses(frame(text)), text).toBe(false);
  });

  it('is no part of what is known of the own', () => {
    const theirs = { atMs: 1, kind: 'moved', slots: { volume: '20 gal' }, isOthers: true } as const;
    expect(known(withMoment(dose, theirs, 'hers')).volume).toBe('75 gal');
  });
});
