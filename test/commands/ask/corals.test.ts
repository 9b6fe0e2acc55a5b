import { describe, expect, it } from 'vitest';
import { ask } from '../../../commands/ask.ts';
import { textOf } from '../text.ts';

const headline = (question: string): string => ask(question, { nowMs: 0 }).headline;

describe('a pair', () => {
  it.each([
    ['can hammer and frogspawn touch each other', /^Usually yes: .*3 cm/],
    ['can i put my frogspawn near a torch', /^Not touching: .*20 cm \(7\.9 in\)/],
    ['galaxea 20 cm away from my acan, are they too close', /^Too close: .*30 cm/],
    ['torch 60 cm apart from duncan ok?', /^Room enough/],
  ])('%s', (question, pattern) => expect(headline(question)).toMatch(pattern));

  it('says the same either way round', () => {
    const [one, other] = ['torch next to favia', 'favia next to torch'].map((text) =>
      ask(text, { nowMs: 0 }),
    );
    expect(one?.facts[0]).toEqual(other?.facts[0]);
  });
});

describe('what others own stays with them', () => {
  it.each([
    ['my hammer coral ate alk 8.4 to 8.0 in 2 days, 75 gal, how much does it use', /a day/],
    ['my palys squirted in my eye and my lips are numb', /^A person first/],
    ['how much copper for a hammer coral next to a torch', /never give a dose of a medicine/],
    ['overflow kept adding RO, salinity 1.024 instead of 1.025', /^Leave it/],
    ['torch is at 100 par, raise to 200', /PAR/],
    ['hammer next to torch and alk 6.5, 75 gal, raise to 8 with soda ash', /g of sodium carbonate/],
    ['xenia is taking over, raise alk 7 to 8 in 75 gal', /Which compound/],
    ['green hair algae taking over my zoas', /Pull it out by hand/],
    ['just got a clownfish and a bta, is a powerhead a problem', /did not find a question/],
    ['new duncan stays shut, alk 5.1 dkh', /5\.1/],
  ])('%s', (question, pattern) => {
    const text = textOf(ask(question, { nowMs: 0 }));
    expect(text).toMatch(pattern);
    expect(text).not.toMatch(/Not touching|a range, not|Do not scrape|Leave it alone first/);
  });
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
  ])('%s', (question, pattern) => expect(headline(question)).toMatch(pattern));
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
    expect(headline('got a duncan 3 days ago stays closed')).toMatch(/^Leave it alone first/);
    expect(headline('my duncan is closed since the water change')).not.toMatch(/new piece/);
    expect(headline('my zoas wont open since yesterday')).not.toMatch(/new piece/);
  });
});
