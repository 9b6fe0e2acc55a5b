import { describe, expect, it } from 'vitest';
import { parametersNamedIn } from '../../../../core/language/tongue/parameters-named.ts';
import { numbersReadIn } from '../../../../core/language/tongue/readings.ts';
import type { Unread } from '../../../../core/language/tongue/tongues.ts';

function read(text: string, tongue: Unread): Readonly<Record<string, string>> {
  return Object.fromEntries(numbersReadIn(text, tongue).readings.map(({ id, text: value }) => [id, value]));
}

describe('names of what is measured', () => {
  it.each<[Unread, string, readonly string[]]>([
    ['german', 'Karbonathaerte, Leitfähigkeit und pH-Wert', ['alkalinity', 'salinity', 'ph']],
    ['german', 'KARBONATHÄRTE nitrat Kalzium', ['alkalinity', 'nitrate', 'calcium']],
    ['dutch', 'nitraat, fosfaat en zoutgehalte', ['nitrate', 'phosphate', 'salinity']],
    ['french', 'salinité, dureté carbonatée, temperature', ['salinity', 'alkalinity', 'temperature']],
    ['spanish', 'el calcio y el magnesio y amoníaco', ['calcium', 'magnesium', 'ammonia']],
    ['italian', 'nitrati alti, densità', ['nitrate', 'salinity']],
    ['portuguese', 'magnésio, salinidade, amônia, kh', ['magnesium', 'salinity', 'ammonia', 'alkalinity']],
    ['polish', 'azotany i azotyny, wapń, zasolenie', ['nitrate', 'nitrite', 'calcium', 'salinity']],
    ['danish', 'karbonathårdhed og saltholdighed', ['alkalinity', 'salinity']],
    ['other', 'kh no3 po4', ['alkalinity', 'nitrate', 'phosphate']],
  ])('%s: %s', (tongue, text, ids) =>
    expect(parametersNamedIn(text, tongue).map(({ id }) => id)).toEqual(ids),
  );

  it('keep their place', () =>
    expect(parametersNamedIn('Mein KH', 'german')).toEqual([{ id: 'alkalinity', start: 5, end: 7 }]));

  it.each<[Unread, string]>([
    ['german', 'ca. 300 Liter, ich mag das'],
    ['german', '20 mg davon'],
    ['spanish', 'sal y cal'],
    ['french', 'ça va, le sel'],
  ])('%s: none in "%s"', (tongue, text) => expect(parametersNamedIn(text, tongue)).toEqual([]));
});

describe('readings', () => {
  it.each<[Unread, string, Readonly<Record<string, string>>]>([
    ['german', 'kh 4,3', { alkalinity: '4.3 dKH' }],
    [
      'german',
      'Die Karbonathärte liegt bei 7 Grad, Temperatur 26 Grad',
      { alkalinity: '7 dKH', temperature: '26 °C' },
    ],
    ['dutch', 'kh staat op 6,1 en nitraat is 40', { alkalinity: '6.1 dKH', nitrate: '40' }],
    ['spanish', 'mi kh ha bajado a 5,7 y el calcio está en 370', { alkalinity: '5.7 dKH', calcium: '370' }],
    ['french', 'densité 1,021 et phosphates: 0,12 mg/l', { salinity: '1.021', phosphate: '0.12 mg/L' }],
    [
      'polish',
      'Azotany wynosi 25, zasolenie 35 promille, ca 420 mg 1300',
      { nitrate: '25', salinity: '35 ppt', calcium: '420', magnesium: '1300' },
    ],
    ['danish', 'kh er 5,8', { alkalinity: '5.8 dKH' }],
    ['german', 'Leitfähigkeit 53 mS/cm', { salinity: '53 mS/cm' }],
  ])('%s: "%s"', (tongue, text, readings) => expect(read(text, tongue)).toEqual(readings));

  it.each<[Unread, string]>([
    ['portuguese', 'quero subir o kh de 7 para 8'],
    ['german', 'KH auf 8 bringen'],
    ['german', 'kh nicht 8'],
    ['german', 'Nitrat 5 pro Woche'],
    ['spanish', 'kh 7 a 8'],
    ['french', 'kh 7-8'],
    ['german', 'Leitwert 12'],
    ['dutch', 'ca 400 liter'],
    ['italian', 'calcio 420 g'],
    ['spanish', 'nitratos. 20 peces'],
  ])('%s: none in "%s"', (tongue, text) => expect(read(text, tongue)).toEqual({}));
});

describe('the rest', () => {
  it('has the size of the tank, and what was not used', () =>
    expect(
      numbersReadIn('3 Fische, 240 Litern, KH auf 5,8, 2 par jour, 20 litros por semana', 'german'),
    ).toEqual({
      readings: [],
      volume: '240 L',
      unused: ['3', '5,8', '2', '20 L'],
    }));

  it.each(['5 Liter', '20 litros por semana', '10-20 l'])('takes no tank from "%s"', (text) =>
    expect(numbersReadIn(text, 'german').volume).toBeUndefined(),
  );
});
