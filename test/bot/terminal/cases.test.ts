import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { misread } from '../../cases/misread.ts';
import { sums } from '../../cases/sums.ts';
import { asked } from '../../corpus.ts';
import { room } from './a-room.ts';

// Amounts from IUPAC 2021 weights (1.890 g Na2CO3, 2.996 g NaHCO3 per dKH per 100 L), 1 US gal = 3.785 L, EOS-80 at 25/25.
describe('a member with a tank never types a volume again', () => {
  const tank = '/tank new name:Pantry volume:150 gal kind:mixed units:US gallons';

  it('A16: log, daily use, and the dose for this tank, over two days and a restart', async () => {
    const { type } = room();
    expect(await type([tank, '/log add readings:kh 9.3'])).toContain('150 US gal');
    const later = await type(
      ['/log add readings:kh 7.5 ph 8.03', '/dose use of:kh', 'alk 7.5 want 9.3 soda ash'],
      2,
    );
    expect(later).toMatch(/about 0\.9 dKH of alkalinity a day/);
    expect(later).toMatch(/19\.3 g of sodium carbonate in all, 9\.7 g on day 1 and 9\.6 g on day 2/);
    expect(later).toContain('net water of your tank Pantry: 150 US gal');
    expect(later).not.toMatch(/per 100 L in all/);
  });

  it('an explicit volume wins', async () => {
    const shown = await room().type([
      tank,
      '/dose amount of:kh now:7.2 goal:8.4 with:soda ash volume:75 gal',
    ]);
    expect(shown).toContain('6.4 g of sodium carbonate');
    expect(shown).not.toContain('net water of your tank');
  });

  it('E01: how often to test what, without testing everything daily', async () => {
    const shown = await room().type([tank, '/checkup readings:kh 8.2 ca 420 plan:yes']);
    expect(shown).toMatch(/alkalinity\s+twice a week/);
    expect(shown).not.toMatch(/nitrate\s+daily/);
  });

  it('G01: readings are kept and checked as they were typed', async () => {
    const shown = await room().type([tank, `/log add readings:${asked.G01}`, '/checkup']);
    expect(shown).toContain('All of it is where it should be.');
  });

  it.each([
    ['B09', /Leave it\. The extra water is fresh, about 4 %/],
    ['B13', /The tank is about 32\.5 ppt \(1\.0245 SG\)/],
    ['G03', /Test calcium again first/],
    ['G05', /10\.1 dKH; 240 ppm CaCO3 = 4\.8 meq\/L = 13\.4 dKH/],
    ['G07', /I work out no amount of peroxide for a tank/],
    ['G09', /32 % too much/],
    ['G12', /0\.055 mg\/L phosphate/],
  ] as const)('%s in plain words, with a tank kept, as far as it is not misread', async (id, pattern) => {
    const shown = await room().type([tank, '/log add readings:sg 1.025', asked[id]]);
    if (id in misread) expect(shown).not.toMatch(pattern);
    else expect(shown).toMatch(pattern);
    expect(shown).not.toMatch(/add salt now/i);
    const answered = shown.slice(shown.indexOf(asked[id]) + asked[id].length);
    for (const wrong of sums[id]?.never ?? []) expect(answered).not.toMatch(wrong);
  });
});

describe('pictures and files of the room', () => {
  it('draws a trend, exports the log, and takes the same file back into another tank', async () => {
    const { dataDir, type } = room();
    await type(['/tank new name:One volume:200 L', '/log add readings:kh 8.1 ca 420']);
    await type(['/log add readings:kh 7.9 ca 425'], 4);
    const shown = await type(['/log trend of:alk', '/log export'], 5);
    expect(
      readFileSync(join(dataDir, 'pictures', 'trend.png'))
        .subarray(1, 4)
        .toString(),
    ).toBe('PNG');
    const path = /File: (\S+\.csv)/.exec(shown)?.[1] ?? '';
    expect(readFileSync(path, 'utf8')).toContain('alkalinity,8.1,dKH');
    const back = await type(
      ['/tank new name:Two volume:100 L', '/tank use tank:Two', `/log import file:${path}`, '/log show'],
      6,
    );
    expect(back).toMatch(/4 readings/);
    expect(back).toMatch(/alkalinity 8\.1 dKH/);
  });

  it('reports a bad row by its line and stores nothing of the file', async () => {
    const { dataDir, type } = room();
    const path = join(dataDir, 'bad.csv');
    writeFileSync(
      path,
      'time,parameter,value,unit,note\n2026-05-01T10:00:00Z,alkalinity,8.2,dKH,\n2026-05-02T10:00:00Z,alkalinity,lots,dKH,\n',
    );
    const shown = await type(['/tank new name:One volume:200 L', `/log import file:${path}`, '/log show']);
    expect(shown).toMatch(/line 3/i);
    expect(shown).not.toMatch(/8\.2 dKH/);
  });
});
