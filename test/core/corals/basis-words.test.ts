import { describe, expect, it } from 'vitest';
import { basisName, basisWords, cited } from '../../../core/corals/basis-words.ts';
import { memory, practice, published, recalled } from '../../../core/corals/basis.ts';

describe('cited', () => {
  it.each([
    ['Lapid2004', 'Lapid et al. 2004'],
    ['LapidChadwick2006', 'Lapid & Chadwick 2006'],
    ['Griffith1997', 'Griffith 1997'],
    ['ChadwickFurmanLoya1992', 'Chadwick-Furman & Loya 1992'],
    ['HidakaYamazato1984', 'Hidaka & Yamazato 1984'],
    ['CTDB', 'Madin et al. 2016'],
    ['Ding2022a', 'Ding et al. 2022'],
    ['NOAA2014', 'NOAA Fisheries 2014'],
    ['WoRMS', 'World Register of Marine Species'],
  ] as const)('%s is %s', (key, words) => expect(cited(key)).toBe(words));
});

describe('basisWords', () => {
  it('says each basis once, with its notes', () => {
    expect(basisWords([practice], [practice, published('Lapid2004', 'Favites')], [memory])).toBe(
      'common practice; published: Lapid et al. 2004 (Favites); from memory',
    );
    expect(basisWords([recalled('this')], [recalled('that')], [memory])).toBe('from memory (this; that)');
  });

  it('never calls memory published', () => {
    expect(basisName([memory])).toBe('from memory');
    expect(basisName([recalled('a paper'), practice])).toBe('from memory; common practice');
  });
});
