import { describe, expect, it } from 'vitest';
import { gearSum } from '../../../../commands/ask/rows/gear-said.ts';
import { frameOf } from './asked.ts';

const headline = (text: string): string | undefined => gearSum(frameOf('equipment', text))?.headline;

/** Sums by hand: rules of thumb are common practice, no source. */
describe('gear worked out for what was said', () => {
  it.each([
    [
      'Titanium or glass for a 55, and is 200 w plenty if the shop stays about 60F nights? an old heater blew up on me',
      /^55 gal \(208 L\) in a room of 15.6 °C \(60 °F\): about 200 W in all.*200 W is just enough/,
    ],
    [
      'Which power must have a heater for 240 liter when the room is 17 degrees in winter?',
      /^240 L.*about 195 W in all/,
    ],
    ['is a 50w heater enough for 20 gal when my room gets 16c in winter', /about 70 W.*50 W is too weak/],
    [
      'are two 150 watt heaters right for 400 litres',
      /about 200 W in a usual room, up to 400 W.*300 W does for a usual room/,
    ],
    ['heater size, 50 gal', /^50 gal \(189 L\): about 95 W in a usual room, up to 190 W/],
    [
      "the heater is 300 watts, tank's 30 gallons, is it dangerous if it sticks",
      /by about 2.3 °C \(4.2 °F\) an hour/,
    ],
    [
      'power was off 11 hours once. Battery for the return pump only, 40 w, it must hold 8 hours, how large?',
      /^40 W for 8 h: about 400 Wh.*67 Ah of lead or 38 Ah/,
    ],
    ['how much battery for 25w pump and 8w air, 6 hour cut each night', /^25 \+ 8 W for 6 h: about 248 Wh/],
    [
      'how long does a 7 ah battery run an 8 w air pump in a power cut',
      /about 4.2 h in lead, 7.6 h in lithium/,
    ],
    ['For the next one: how big a UPS for a 9 W pump, 8 h', /^9 W for 8 h: about 90 Wh/],
  ])('%s', (text, words) => {
    const said = headline(text);
    expect(said).toMatch(words);
    expect(said?.length).toBeLessThanOrEqual(140);
  });

  it.each(['2 heaters or one big', 'which UPS for return pump 35 W', 'how big a skimmer for 300 l'])(
    'nothing where a number is lacking: %s',
    (text) => expect(headline(text)).toBeUndefined(),
  );
});
