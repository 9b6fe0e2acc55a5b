import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../commands/answer.ts';
import { ask, reached } from '../../ask.ts';
import { findCommand } from '../../../commands/index.ts';
import { asked, askedOfGuide } from '../../corpus.ts';
import { rendered } from '../coral/rendered.ts';
import { textOf } from '../text.ts';

type Question = keyof typeof askedOfGuide;

/** What a right answer says and must not. Values of the guide: common practice or from memory, as it says beside each. */
const expected: Readonly<Record<Question, readonly [RegExp, ...RegExp[]]>> = {
  'light range: wild, bright': [/Too bright to begin with \(move\): 200 PAR/, /origin:wild/, /26 %|70 %/],
  'light range: no meter': [/80 % is within that band: begin at its low end, 40 %/, /no PAR follows from it/],
  'light range: strong lamp': [/35 % is within that band/, /20 to 40 %/],
  'light range: maricultured': [/begin near 90 PAR/, /grown: maricultured/, /goes up more slowly/],
  'light range: needs': [/^Hydnophora: a range, not one number, 150 to 350 PAR.*A new piece begins near 160/],
  'light range: misspelt': [
    /^Goniopora: a range, not one number.*A new piece begins near 100/,
    /goneopora as Goniopora/,
  ],
  'light range: short': [/^Torch coral: a range, not one number, 75 to 200 PAR.*A new piece begins near 100/],
  'light range: deep': [/180 PAR, 100 PAR over the 80 PAR/, /origin:deep/, /at about 22 %/],
  'coral compare: vs': [/^Not together: keep \d+ cm or more between Torch coral and Duncan coral/],
  'coral compare: difference': [
    /^"toadstool" is Toadstool leather \(Sarcophyton\); "colt coral" is Colt coral/,
  ],
  'coral compare: aggressive': [
    /^Not touching: Torch coral and Zoas want 10 cm or more between them, at full stretch/,
    /watch below 20 cm/,
    /May hold palytoxin/,
  ],
  'coral compare: plain': [
    /^Not on one rock: Green star polyps grows over its neighbours\. Keep Green star polyps and Pulsing xenia 10 cm/,
  ],
  'coral growth: heads': [/^Torch coral, 9\.9 cm wide now/, /heads rest on: common practice/],
  'coral growth: inches': [/^Duncan coral, 7\.6 cm wide now/],
  'coral growth: how big': [
    /^Big: a toadstool cap gets 30 to 50 cm \(12 to 20 in\) wide/,
    /Leave 15 cm \(6 in\) round it/,
    /Gloves and eye protection/,
  ],
  'coral growth: how fast': [
    /^Common zoas about double their heads in three to six months/,
    /Edge: 3 to 10 cm \(1 to 4 in\) a year \(from memory\)/,
    /Palytoxin: gloves and eye protection/,
  ],
  'coral feed: pellets': [/^At most [\d.]+ mg\/L nitrate .* in 283\.9 L/, /not a reading/],
  'coral feed: frozen': [/^At most .* from 5 g of frozen food, in 300 L/],
  'coral feed: eats': [
    /^Mysis or fine krill to every head, two or three times a week; each night is not needed/,
    /one to three mysis a head; look once a week that each took a bit/,
  ],
  'coral feed: must i': [
    /^Once or twice a week, one bite no larger than the mouth for each mouth\. More .* ends as nitrate/,
    /Duncan, candy cane: one or two mysis a head; daily is waste/,
    /Do corals need to be fed\?/,
  ],
  'coral suited: beginner': [/kinds fit \(first year of reefs, low flow\)/],
  'coral suited: par': [/kinds fit \(first year of reefs, 80 PAR\)/],
  'coral suited: sand': [/of 58 kinds fit \(on sand\)/],
  'coral suited: soft': [/of 18 kinds fit \(first year of reefs\)/],
  'coral suited: easy': [/kinds fit \(first year of reefs\)/],
  'coral about: hardy': [/^Torch coral, keeping it: moderate \(common practice\)/],
  'coral about: hard': [/^Goniopora, keeping it: moderate/],
  'coral about: toxic': [
    /^Real but rare\. Ill after zoanthids: fresh air, then emergency number or poison centre; say palytoxin, do not wait/,
    /mostly Palythoa, not all; looks do not tell: treat every zoanthid the same/,
    /spray or steam breathed, cuts, eyes, mouth/,
    /gloves, goggles/,
    /faint, numb, short of breath: emergency number first/,
  ],
  'coral about: sting': [
    /^Galaxea, sting: severe \(common practice\)/,
    /^more on sting: reaches 10 to 30 cm/m,
  ],
  'coral about: flow': [/^Duncan coral, flow: medium \(common practice\)/],
  'coral about: where': [/^Elegance coral, spot: on sand/],
  'coral about: law': [
    /^Sun coral, law: CITES Appendix II/,
    /^more on law: .*Local rules come first; no legal advice/m,
  ],
  'coral about: older name': [
    /^Favia brain coral \(Dipsastraea\): easy to keep/,
    /Favia \(Indo-Pacific species\), older name/,
  ],
  'coral about: several': [/^Which gorgonian\? I do not guess/],
  'coral about: misspelt': [/^Which hammer\? I do not guess/],
  'coral about: beginners': [/^Bubble-tip anemone, keeping it: moderate/],
  'coral about: info': [/^Galaxea \(Galaxea/],
};

/** Answered as something else as if that were sure, or without the right answer among what is offered. */
const misread: readonly Question[] = [
  // The answer behind the button does not use the height.
  'light range: deep',
  // The lamp and its setting are not used: only the range is told.
  'light range: strong lamp',
  // Taken for where corals come from.
  'light range: maricultured',
  // Taken for flow.
  'coral suited: beginner',
  // The card of first corals, without the light.
  'coral suited: par',
  // The card of which of two is tougher, without this pair.
  'coral compare: vs',
  // Told what either is called and looks like, not how the two stand together.
  'coral compare: plain',
  // Food pellets are taken for those of a reactor.
  'coral feed: pellets',
  // Asks which coral; the card of first corals is offered.
  'coral suited: easy',
  // The card of the easiest and the hardest corals, without this one.
  'coral about: hardy',
  // Taken for a rule to be judged: begins with not knowing that rule, the card below.
  'coral about: toxic',
  // The card of how to describe an unknown coral.
  'coral about: older name',
];
const read = Object.keys(expected).filter((name): name is Question => !misread.some((each) => each === name));
const questions = Object.entries(askedOfGuide);

/** The answer; where the reader is unsure, the one of those it offers that is as expected. */
function answered(name: string, question: string): Answer {
  const [given, ...offered] = reached(question, { nowMs: 0 });
  if (given === undefined) throw new Error('no answer');
  if (!given.headline.startsWith('Which of these do you mean?')) return given;
  const patterns = expected[name as Question];
  return offered.find((each) => patterns.every((pattern) => pattern.test(textOf(each)))) ?? given;
}

describe.each(questions)('%s', (name, question) => {
  const given = answered(name, question);
  const text = textOf(given);

  it('fits a message and offers only commands there are', () => {
    expect(rendered(given).issues).toEqual([]);
    expect(text).not.toMatch(/undefined|NaN/);
    for (const { command } of given.next) expect(findCommand(command.split(' ')), command).toBeDefined();
  });

  it('calls nothing wonderful, promises nothing and doses nothing', () =>
    expect(text).not.toMatch(/guarantee|perfect|will colou?r up|\bdose \d|medicine/i));
});

describe.each(read)('%s', (name) => {
  const text = textOf(answered(name, askedOfGuide[name]));

  it.each(expected[name])('says %s', (pattern) => expect(text).toMatch(pattern));
});

describe.each(misread)('%s, misread', (name) => {
  const text = textOf(answered(name, askedOfGuide[name]));

  it.fails('says what is expected', () => {
    for (const pattern of expected[name]) expect(text).toMatch(pattern);
  });
});

describe('what is not for the guide', () => {
  const NOT =
    /kinds fit|a range, not one|: a wide band|to keep,|keeping it|At most .* nitrate|in a year, if|read as/;
  it.each([
    asked.G01,
    asked.G03,
    asked.C03,
    asked.C05,
    asked.A03,
    'my toadstool is closed and waxy should i feed it',
    'torch bleached since i put light at 60%',
    'my hammer coral is dying what do i do',
    'my duncan is not well, it is shrinking',
    'how do i raise my heater to 26',
    'power of my pump',
    'tell me about alkalinity',
    'what is a refractometer',
    'what is kalk',
    'what is a skimmer',
    'tell me about dinos',
    'care of fish',
    'salinity info',
    'whats a good salinity for corals',
    'how much calcium does an acropora need',
    'will my clownfish eat my coral',
    'how fast does algae grow',
    'how fast does my alk drop',
    'feed my fish every 2 days',
    'the water treats further months of range',
    'another organic formula floating in the kitchen',
    'where do i put the heater',
    'is 300 par too much',
    'light 50% gives 120 par want 200',
    'from 100 par to 200 over what time',
  ])('%s', (question) => {
    try {
      expect(textOf(ask(question, { nowMs: 0 }))).not.toMatch(NOT);
    } catch (error) {
      expect(error).toMatchObject({ name: 'Problem' });
    }
  });
});
