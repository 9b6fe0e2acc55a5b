import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { findCommand } from '../../../commands/index.ts';
import { optionsOf } from '../../../commands/options.ts';
import { asked } from '../../corpus.ts';
import { textOf } from '../text.ts';

const context = { nowMs: 0 };
const thin = 'Change nothing big and dose nothing yet';
const headlineOf = (text: string): string => ask(text, context).headline;

describe('a sentence of trouble with nothing to work with', () => {
  it.each([
    'my coral looks bad help',
    'help my tank looks bad',
    'whats wrong with my zoas',
    "what's wrong with my reef??",
    'something is off with my tank',
    'my acan is not happy',
    'my corals are doing poorly',
    'reef not doing well any ideas',
    'My tank is having issues, please help!',
    'my frogspawn looks sad',
    'my hammer is dying',
    'one of my corals died',
    'losing corals one by one, no idea why',
    'my coral is looking really bad since 2 days',
  ])('"%s" is asked the few things to tell', (text) => expect(headlineOf(text)).toContain(thin));

  it('asks for what helpers need, says what to do first, and no amount', () => {
    const given = ask('my coral looks bad help', context);
    const text = textOf(given);
    for (const part of [
      /photo: by white light/,
      /changed in the last days/,
      /with which kits/,
      /litres or gallons of water, how old/,
      /which lamp, hours a day, and PAR/,
      /within 15 cm \(5\.9 in\)/,
      /the others: /,
      /no dip, no scraping, no medicine/,
    ]) {
      expect(text).toMatch(part);
    }
    expect(text).not.toMatch(/\d ?(?:g|mL|ml|drops|%)\b/);
    expect(text).not.toMatch(/palytoxin/);
  });

  it('names palytoxin before all else where zoanthids are named', () => {
    expect(ask('whats wrong with my zoas', context).cautions[0]).toMatch(/palytoxin/i);
  });

  it('offers only next steps that work', () => {
    const { next } = ask('my coral looks bad help', context);
    expect(next.map(({ command }) => command)).toEqual(['triage', 'urgent', 'checkup']);
    for (const { command: name, input, ask: fields = [] } of next) {
      const command = findCommand([name]) ?? expect.unreachable(name);
      const names = optionsOf(command.options).map((option) => option.name);
      expect(names).toEqual(expect.arrayContaining([...fields]));
      if (fields.length === 0) expect(command.run(input, context).headline).not.toBe('');
    }
  });
});

describe('whatever can be worked out, or is urgent, comes first', () => {
  it.each([
    'tank crashing pls help',
    'everything is dying',
    'my new torch stays closed, got it yesterday',
    'my zoas are stretching',
    'my anemone went through the wavemaker, is my tank dying',
    'my torch is melting',
    'my corals look bad, alk 7.2 ca 420 mg 1350',
    'my fish are dying, raise alk 7.2 to 8.4 in 75 gal with soda ash',
    'he swallowed tank water and looks bad',
    ...Object.values(asked),
  ])('%s', (text) => expect(headlineOf(text)).not.toContain(thin));

  it.each([
    'turn the lights off in my tank',
    'is it bad to feed my coral at night',
    'ill add fish to my tank',
    'can i use dead rock in my tank',
    'thanks, my tank is doing great',
    'a closed top tank, good idea?',
    'look at my new fish',
    'whats wrong with my car',
  ])('%s: no trouble of a tank', (text) => expect(headlineOf(text)).not.toContain(thin));
});
