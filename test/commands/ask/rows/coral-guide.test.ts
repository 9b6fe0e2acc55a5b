import { describe, expect, it } from 'vitest';
import { coralAboutRows } from '../../../../commands/ask/rows/coral-about.ts';
import { coralGrowRows } from '../../../../commands/ask/rows/coral-grow.ts';
import { coralNewRows } from '../../../../commands/ask/rows/coral-new.ts';
import { coralPlaceRows } from '../../../../commands/ask/rows/coral-place.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { askedBack, rowAnswer } from './asked.ts';

const rows = [...coralAboutRows, ...coralGrowRows, ...coralNewRows, ...coralPlaceRows];

/** Values of the guide, each with its basis in the answer. */
const asked: readonly (readonly [Kind, string, RegExp])[] = [
  ['coral-place', 'where should i put my plate coral', /^Plate coral, spot: on sand/],
  [
    'coral-place',
    'i glued my fungia to a rock ledge, is that ok',
    /^No: a loose fungia belongs on open sand/,
  ],
  ['coral-place', 'where does a duncan go, sand or high up', /^Duncan coral, spot: on rock or sand/],
  ['coral-place', 'brain on sand or rock?', /^Which brain\?/],
  ['flow', 'how much flow does my torch need', /^Torch coral, flow: medium/],
  ['flow', 'how much flow for hammers', /hammer coral, flow: low to medium/],
  ['flow', 'what turnover for a 300 litre reef', /^Flow brings food/],
  ['growth', 'how fast does xenia grow', /^Pulsing xenia: 5 to 20 cm wider a year/],
  ['growth', 'xenia is taking over, how do i stop it', /^Do not scrape them inside the tank/],
  ['growth', '2 head torch, how many heads in a year', /^Torch coral, 9\.9 cm wide now/],
  ['growth', 'a 5 cm birdsnest, how big in a year', /^Birdsnest coral, 5 cm wide now/],
  // Nitrogen is protein / 6.25, nitrate 62.005 / 14.007 of it (IUPAC 2021); shares of the food from memory.
  ['feed', 'does 5 g of pellets raise my nitrate in 200 L', /^At most 9\.99 mg\/L nitrate/],
  ['feed', 'do i have to feed my duncan', /^Duncan coral: Eager feeder/],
  ['feed', 'how often should i feed corals', /^Light feeds most corals/],
  ['looks', 'goniopora or alveopora, how do i tell', /^"goniopora" is Goniopora; "alveopora" is/],
  [
    'looks',
    'is acanthastrea lordhowensis the same as micromussa',
    /is Acan lord \(Micromussa lordhowensis\)/,
  ],
  ['coral-about', 'tell me about goniopora', /^Goniopora: moderate to keep/],
  ['coral-about', 'is an elegance coral hard to keep', /^Elegance coral, keeping it: demanding/],
  ['coral-about', 'are palythoas toxic', /^Palys, people: May hold palytoxin/],
  ['coral-about', 'is a meat coral aggressive', /^Meat coral, sting: mild/],
  ['coral-about', 'do i need papers for a torch, is it legal', /^Torch coral, law: CITES Appendix II/],
  ['origin', 'maricultured or aquacultured, what is the difference', /^Ask for tank-grown pieces/],
  ['day-night', 'galaxea tentacles come out in the dark 10 cm long', /^Galaxea, sting: severe/],
  ['acclimate-dip', 'how do i acclimate new corals', /^Match temperature, then salinity, then light/],
  ['acclimate-dip', 'should i dip my new zoas', /^Look at every new coral/],
  ['fragging', 'how do i frag my zoas', /^Gloves and eye protection first/],
];

describe('what the guide says', () => {
  it.each(asked)('%s: %s', (kind, text, pattern) =>
    expect(rowAnswer(rows, kind, text)?.headline).toMatch(pattern),
  );

  it('names the kin of a name that is answered for one', () =>
    expect(rowAnswer(rows, 'coral-about', 'should i buy a bubble coral')?.read[0]).toMatch(
      /it can also be .*Pearl bubble coral/,
    ));

  it('keeps the palytoxin caution of zoanthids that are dipped', () =>
    expect(rowAnswer(rows, 'acclimate-dip', 'should i dip my new zoas')?.dangers[0]).toMatch(/palytoxin/));

  it.each([
    ['coral-place', 'where do i put this one', /Which coral/],
    ['looks', 'what is this coral', /Which names/],
  ] as const)('%s asks back: %s', (kind, text, pattern) =>
    expect(askedBack(rows, kind, text)).toMatch(pattern),
  );

  it('has nothing on cutting other corals, and says so by no answer', () =>
    expect(rowAnswer(rows, 'fragging', 'can i cut my hammer with a saw')).toBeUndefined());
});
