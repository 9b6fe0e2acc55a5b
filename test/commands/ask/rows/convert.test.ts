import { describe, expect, it } from 'vitest';
import { convertRows } from '../../../../commands/ask/rows/convert.ts';
import { kept } from './kept.ts';

describe('other units in words', () => {
  it.each([
    // (78 - 32) x 5 / 9; 2.80385 dKH per meq/L (iupac21); US gallon 3.785412 L; inch 2.54 cm (si19).
    ['convert 78 f to c', /^78 °F is 25\.56 °C/],
    ['what is 3 meq in dkh', /^3 meq\/L is 8\.412 dKH/],
    ['2.5 gallons in litres', /9\.464 L/],
    ['20 inches in cm', /50\.8 cm/],
    ['0.03 ppm po4 in ppb', /30 µg\/L/],
    ['78.6 f and 26 c, which is hotter', /25\.89 °C\. 26 °C is 78\.8 °F/],
    ['gallons to litres for 37', /^37 US gal is 140\.1 L/],
    // 178 / 50.04 x 2.80385; 42 x 94.97 / 30.974 (iupac21); imperial gallon 4.54609 L (si19).
    ['alk 178 in dkh', /9\.97\d? dKH/],
    ['phosphorus 42 ppb in phosphate', /0\.129 mg\/L phosphate/],
    ['20 imperial gallons in litres', /90\.92 L/],
    ['2 pints in ml', /946\.4 mL/],
    ['how many litres is 30x18x20 inches', /^176\.98 L/],
    // 25/25 scale of 1.026: 34.5 ppt (fm83).
    ['how many ppt is 1.026', /34\.5 ppt/],
  ])('%s', (text, first) => expect(kept(convertRows).says('convert', text)?.headline).toMatch(first));
});
