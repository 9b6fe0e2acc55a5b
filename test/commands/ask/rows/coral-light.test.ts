import { describe, expect, it } from 'vitest';
import { coralLightRows } from '../../../../commands/ask/rows/coral-light.ts';
import { askedBack, rowAnswer } from './asked.ts';

const headline = (kind: 'coral-light' | 'par-ok', text: string): string | undefined =>
  rowAnswer(coralLightRows, kind, text)?.headline;

/** Ranges of the guide: common practice, no source. */
describe('how much light a coral wants', () => {
  it.each([
    ['how much light does a torch coral want', /^Torch coral: .*75 to 200 PAR/],
    ['par for goniopora?', /^Goniopora: .*75 to 200 PAR/],
    ['how bright for goneopora', /^Goniopora: .*75 to 200 PAR/],
    ['what par do sps like', /^Usual for small-polyp stony corals/],
    ['how much light does a sun coral need', /^Sun coral lives by food and needs no light/],
    ['how much light for a coelastrea', /^Coelastrea is a real genus, but I have no page/],
    [
      'par for acropora millepora and for duncans please',
      /^A range each: .*200 to 450.*Duncan coral 75 to 200/,
    ],
    [
      'my wild torch, the lamp at 60% reads 180 par, how much light does it need',
      /^Torch coral: Too bright to begin with .*180 PAR/,
    ],
    ['no par meter, cheap led, how much light for zoas', /^Begin at 40 %\. A weak lamp/],
  ])('%s', (text, pattern) => expect(headline('coral-light', text)).toMatch(pattern));

  it('asks which coral where none and no group is named', () =>
    expect(askedBack(coralLightRows, 'coral-light', 'how much light do corals need')).toBe(
      'Which coral is it?',
    ));

  it('asks nothing where a group is named', () =>
    expect(askedBack(coralLightRows, 'coral-light', 'what par do sps like')).toBeUndefined());

  it('keeps the caution of palytoxin', () =>
    expect(rowAnswer(coralLightRows, 'coral-light', 'what light for palys')?.dangers.join(' ')).toMatch(
      /palytoxin/,
    ));
});

describe('is this light right', () => {
  it.each([
    ['is 250 par too much for my torch', /^Too bright: 250 PAR, 150 PAR over/],
    ['trachyphyllia on the sand gets 110 par, ok or not?', /^Too bright to begin with: 110 PAR.*may have it/],
    ['is 300 par too high', /^300 PAR is bright light/],
    ['is 350 par ok for lps', /^Too bright: 350 PAR/],
    [
      '95 par where the torch sits, 60 par by the mushrooms and 450 on the duncan, are they all fine',
      /^Not all: Duncan coral at 450 is too bright\. The others/,
    ],
  ])('%s', (text, pattern) => expect(headline('par-ok', text)).toMatch(pattern));

  it('asks for the reading', () =>
    expect(askedBack(coralLightRows, 'par-ok', 'is the light right for my acan')).toMatch(/PAR meter/));
});
