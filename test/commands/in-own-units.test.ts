import { assert, constantFrom, option, property, record } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openStore } from '../../bot/store/open.ts';
import { answer } from '../../commands/answer.ts';
import { inOwnUnits } from '../../commands/in-own-units.ts';
import { quietSettings, type Server } from '../../commands/server.ts';
import {
  lengthSymbols,
  temperatureSymbols,
  unitsOfLocale,
  volumeSymbols,
  type ChosenUnits,
} from '../../core/quantity/chosen-units.ts';
import { ask } from '../ask.ts';

const NOW_MS = Date.UTC(2026, 5, 1);

function serverOf(units: ChosenUnits): Server {
  return {
    id: '1',
    channelId: '2',
    settings: () => ({ ...quietSettings, units }),
    mayManage: false,
    change: () => {},
    mayWrite: () => false,
    lacks: () => [],
  };
}

/** What is typed of a unit, by its symbol. */
const TYPED: Readonly<Record<string, string>> = {
  L: 'a 300 litre tank',
  'US gal': 'an 80 gallon tank',
  'imp gal': 'a 70 imperial gallon tank',
  cm: 'sides of 90 cm',
  in: 'sides of 36 inches',
  '°C': '25 °C now',
  '°F': '78 °F now',
};

const chosen = record({
  volume: option(constantFrom(...volumeSymbols), { nil: undefined }),
  length: option(constantFrom(...lengthSymbols), { nil: undefined }),
  temperature: option(constantFrom(...temperatureSymbols), { nil: undefined }),
});

/** The unit of what an answer tells as 400 L, 50 cm and 26 °C. */
function shownIn(typed: string, ...of: readonly [ChosenUnits, ChosenUnits, ChosenUnits, string | undefined]) {
  const [tank, own, server, locale] = of;
  const keep = openStore({ file: ':memory:', nowMs: () => NOW_MS }).keepFor('local');
  keep.addTank({ name: 'Reef', kind: 'mixed', netVolumeL: 300, volumeBasis: '', units: tank, targets: {} });
  keep.setUnits(own);
  const asking = {
    nowMs: NOW_MS,
    keep,
    server: serverOf(server),
    ...(locale === undefined ? {} : { locale }),
  };
  const facts = ['400 L', '50 cm', '26 °C'].map((value) => ({ label: 'it', value }));
  const shown = inOwnUnits(answer({ headline: 'So.', facts }), typed, asking);
  const [volume, length, temperature] = shown.facts.map(({ value }) => /^[\d.]+ (.+)$/.exec(value)?.[1]);
  return { volume, length, temperature };
}

describe('the unit of an amount', () => {
  it('is the typed one, else that of the tank, the member, the server, the country, and else metric', () => {
    const locales = constantFrom(undefined, 'en-US', 'en-GB', 'de');
    const none = constantFrom({});
    assert(
      property(chosen, chosen, chosen, chosen, locales, (typed, tank, own, server, locale) => {
        const words = Object.values(typed).map((symbol) => (symbol === undefined ? '' : TYPED[symbol]));
        const shown = shownIn(words.join(', '), tank, own, server, locale);
        for (const kind of ['volume', 'length', 'temperature'] as const) {
          const wanted = typed[kind] ?? tank[kind] ?? own[kind] ?? server[kind];
          if (wanted !== undefined) expect(shown[kind]).toBe(wanted);
        }
      }),
      { numRuns: 200 },
    );
    assert(
      property(none, locales, (nothing, locale) => {
        const { volume = 'L', length = 'cm', temperature = '°C' } = unitsOfLocale(locale);
        expect(shownIn('', nothing, nothing, nothing, locale)).toEqual({ volume, length, temperature });
      }),
    );
  });

  it('of which two were typed stays as it was worked out', () =>
    expect(shownIn('75 gallons in litres', { volume: 'imp gal' }, {}, {}, 'en-US').volume).toBe('L'));
});

// 1 US gal = 3.785411784 L, 1 in = 2.54 cm, °F = 1.8 °C + 32: NIST SP 811, 2008, appendix B.8 and B.9.
describe.each([
  ['tank reads 87 and the heater lamp is on', /87 °F/, /°C/],
  ['heater stuck, tank at 31 C', /31 °C/, /°F/],
  ['galaxea, hammer, 8 inches, who dies', /8 in /, /\d cm/],
  ['Acan, favites, seven cm. Peace or war?', /7 cm/, /\d in\b/],
  ['raise alk 7.2 to 8.4 in 75 gal with soda ash', /75 US gal/, /283\.9 L/],
  ['90x45x50 how many liter really', /\d L\b/, /gal/],
  ['how far apart torch and hammer, I measure in inches', /\d in\b/, /\d cm/],
])('%s', (text, has, hasNot) => {
  it.each([undefined, 'en-US', 'de'])('is answered as it was asked, for %s too', (locale) => {
    const asking = { nowMs: NOW_MS, ...(locale === undefined ? {} : { locale }) };
    const { headline, facts, steps, read } = inOwnUnits(ask(text, asking), text, asking);
    const told = [headline, ...facts.map(({ value }) => value), ...steps, ...read].join('\n');
    expect(told).toMatch(has);
    expect(told).not.toMatch(hasNot);
  });
});

it('whoever chose inches and gallons gets them, whatever the locale', () => {
  const keep = openStore({ file: ':memory:', nowMs: () => NOW_MS }).keepFor('local');
  keep.setUnits({ volume: 'US gal', length: 'in', temperature: '°F' });
  const asking = { nowMs: NOW_MS, keep, locale: 'de' };
  const text = 'torch beside hammer ok?';
  expect(inOwnUnits(ask(text, asking), text, asking).headline).toMatch(/8 in or more/);
});
