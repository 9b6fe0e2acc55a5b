import { describe, expect, it } from 'vitest';
import { ask, reached } from '../../ask.ts';
import { NOW_MS, twoPersons } from '../coral/person.ts';
import { textOf } from '../text.ts';

/** The first line of the answer, or of what it offers where that is what is looked for. */
function headline(question: string, pattern?: RegExp): string {
  const all = reached(question, { nowMs: 0 }).map((one) => one.headline);
  return all.find((one) => pattern?.test(one) === true) ?? all[0] ?? '';
}

describe('a pair', () => {
  it.each([
    ['can hammer and frogspawn touch each other', /^Usually yes: .*3 cm/],
    ['can i put my frogspawn near a torch', /^Not touching: .*20 cm/],
    ['galaxea 20 cm away from my acan, are they too close', /^Too close: .*30 cm/],
    ['torch 60 cm apart from duncan ok?', /^Room enough/],
    ['two torches together', /^Usually yes: two pieces of Torch coral/],
    ['2 chalices next to each other', /^Not touching: two pieces of Chalice coral want 15 cm/],
    ['hammer with retracted heads and torch', /^(?!Not touching)/],
    ['candy cane and favia', /^Not touching: .*12 cm/],
    ['goniopora by euphyllia', /^Not touching: .*15 cm/],
    ['bubble tip and torch same tank', /^Not touching: .*25 cm/],
    ['how far should galaxea be from other corals', /^Galaxea, sting: severe/],
    ['is galaxea harmful to other corals', /^Galaxea, sting:/],
    ['how much par for duncans and torch', /PAR/],
  ])('%s', (question, pattern) => expect(headline(question, pattern)).toMatch(pattern));

  it('says the same either way round', () => {
    const [one, other] = ['torch next to favia', 'favia next to torch'].map((text) =>
      ask(text, { nowMs: 0 }),
    );
    expect(one?.facts[0]).toEqual(other?.facts[0]);
  });
});

function isOwn(question: string, pattern: RegExp): void {
  const text = textOf(ask(question, { nowMs: 0 }));
  expect(text).toMatch(pattern);
  expect(text).not.toMatch(/Not touching|a range, not|Do not scrape|Leave it alone first/);
}

describe('what others own stays with them', () => {
  it.each([
    ['how much copper for a hammer coral next to a torch', /never give a dose of a medicine/],
    ['hammer next to torch and alk 6.5, 75 gal, raise to 8 with soda ash', /g of sodium carbonate/],
    ['xenia is taking over, raise alk 7 to 8 in 75 gal', /Which compound/],
    ['green hair algae taking over my zoas', /Pull it out by hand/],
    ['new duncan stays shut, alk 5.1 dkh', /5\.1/],
    // 0.4 dKH in 2 days.
    ['my hammer coral ate alk 8.4 to 8.0 in 2 days, 75 gal, how much does it use', /about 0\.2 dKH .* a day/],
  ])('%s', isOwn);
});

describe('an open name', () => {
  it('is answered for all that it can mean', () => {
    const given = ask('how much light for a new gorgonian', { nowMs: 0 });
    const kinds = given.facts.filter(({ value }) => value.includes('a new piece begins near'));
    expect(kinds.length).toBeGreaterThan(1);
    expect(given.headline).toMatch(/over all it can mean/);
    expect(given.read[0]).toMatch(/, or /);
  });
});

/** Soft mats win by growing over (common practice, no source); soft beside stony within 10 cm: Griffith 1997. */
describe('a pair of which one spreads', () => {
  it.each([
    ['can i put xenia next to my birdsnest', /^Not on one rock: Pulsing xenia grows over/],
    ['star polyps close to my zoas ok?', /^Not on one rock: .*star polyps.* 10 cm/i],
    ['can a toadstool be near my acropora', /^Not touching: .*10 cm/],
    ['xenia 4 cm from my birdsnest', /^Watch them/],
  ])('%s', (question, pattern) => expect(headline(question, pattern)).toMatch(pattern));
});

describe('a salinity that is asked to be judged', () => {
  it.each([
    ['is 1.022 too low', /1\.022|29\.2/, /low/],
    ['1.026 ok for corals?', /34\.5|1\.026/, /fine|usual/],
  ])('%s', (question, number, verdict) => {
    const text = textOf(ask(question, { nowMs: 0 }));
    expect(text).toMatch(number);
    expect(text).toMatch(verdict);
    expect(text).not.toMatch(/density at 25/);
  });
});

describe('a coral that is shut', () => {
  it('is taken for new only where it came lately', () => {
    expect(headline('got a duncan 3 days ago stays closed', /^Leave it alone first/)).toMatch(
      /^Leave it alone first/,
    );
    expect(headline('my duncan is closed since the water change')).not.toMatch(/new piece/);
    expect(headline('my zoas wont open since yesterday')).not.toMatch(/new piece/);
  });
});

describe('palytoxin before all else', () => {
  it.each([
    [
      'can i boil rock with palys to kill them',
      /^No, never: not outdoors, .*Steam and dust can carry palytoxin/,
    ],
    ['how to frag zoas safely', /^Gloves and eye protection first/],
    ['can i glue zoas next to palys', /^Mostly yes/],
  ])('%s', (question, pattern) => {
    expect(headline(question, pattern)).toMatch(pattern);
    expect(textOf(ask(question, { nowMs: 0 }))).toMatch(/palytoxin/);
  });

  it('says how to be rid of them without heat, and what to do when ill', () => {
    const text = textOf(ask('can i boil rock with palys to kill them', { nowMs: 0 }));
    expect(text).toMatch(/lift the rock out whole and wet/);
    expect(text).toMatch(/fresh air, emergency number or poison centre; say palytoxin, do not wait/);
  });

  it.each(['why are my zoas bleaching', 'what is killing my zoas', 'baking soda for my zoa tank?'])(
    '%s is no question of that',
    (question) => expect(headline(question)).not.toMatch(/^No heat|^No, never|^Gloves|^Mostly yes/),
  );
});

describe('light of one coral', () => {
  // Ranges: common practice and from memory, no source.
  it.each([
    ['is 150 par ok for hammer', /^Too bright to begin with: 150 PAR/],
    ['par 400 too much for montipora?', /^Too bright: 400 PAR, /],
    ['is 30 par enough for zoas', /^Too dim: 30 PAR, .*Zoas/],
    ['how much light for a sun coral', /lives by food and needs no light/],
  ])('%s', (question, pattern) => expect(headline(question, pattern)).toMatch(pattern));
});

describe('what fits', () => {
  it.each([['what corals dont sting', /^No coral is safe with all others/]])('%s', (question, pattern) =>
    expect(headline(question, pattern)).toMatch(pattern),
  );
});

function isShown(question: string, expected: string): void {
  const [{ keep, say }] = twoPersons();
  say('/coral add coral:duncan at:left, back, low size:5 cm');
  const shown = reached(question, { nowMs: NOW_MS, keep }).map((one) => one.headline);
  expect(shown, shown[0]).toContain(expected);
}

describe('one member asks for their corals', () => {
  it.each([
    ['check my corals', 'Pantry: 1 settled.'],
    ['where are my corals', 'Pantry has one coral.'],
  ])('%s', isShown);

  /** Known miss: taken for the log. */
  it.fails.each<[string, string]>([['show me the map', 'Pantry from above and from the front: 1 settled.']])(
    '%s',
    isShown,
  );
});

describe('kinds of corals', () => {
  // Griffith 1997: within 10 cm of a soft coral most corals were interacting to the harm of one or both.
  it.each([
    ['can i mix softies and sps', /^One tank, not one rock: keep 10 cm/],
    ['do leathers kill sps', /^One tank, not one rock/],
    ['torch and hammer same rock', /^Not touching: .*20 cm/],
    // 50 to 200, just over 100 a safe start: common practice, no source.
    ['how much par for lps', /^Usual for large-polyp stony corals: 50 to 180 PAR, beginning near 90/],
    ['lps at 250 par ok?', /^Too bright: 250 PAR/],
    ['is 250 par to much for a torch?', /^Too bright: 250 PAR/],
    ['is monti cap going to shade my acans', /^In time, yes/],
  ])('%s', (question, pattern) => expect(headline(question, pattern)).toMatch(pattern));
});

/** Known misses: not read as they are meant, or not offered. */
const misread: readonly [string, RegExp][] = [
  ['what is the lighting for rock flower anemone', /^Rock flower anemone: a range/],
  // Asked back which coral; the list of those that fit is not offered.
  ['what corals can i keep with low light', /\(60 PAR\)/],
  // Offered as about one coral, or the light of one: the list of those that fit is not.
  ['what sps can i keep at 300 par', /of 19 kinds/],
  // The card of palytoxin, which a soft coral has not.
  ['is kenya tree toxic', /^Wear gloves where you have a cut/],
];
it.fails.each(misread)('%s', (question, pattern) => expect(headline(question, pattern)).toMatch(pattern));
