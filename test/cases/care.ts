import type { Case } from './case.ts';

/**
 * Members' questions in trouble, as typed, with what a right answer says and what it must not. All of it is common
 * practice, no source, but for: nitrite in sea water (Soriani Medeiros 2014), oxygen (Garcia & Gordon 1992: 6.658 mg/L
 * at 26 °C and 35 ppt), 90 US gal = 340.7 L (1 US gal = 3.785412 L).
 */
export const care: Readonly<Record<string, Case>> = {
  F01: {
    asked:
      'my log: 4/15 amm 4.0 no2 0 no3 0; 4/19 amm 1.0 no2 1.0 no3 20; 4/21 amm 0 no2 2.0 no3 40; 4/22 amm 0 no2 1.0 no3 20. rock is full of green hair. order the snails now or wait for zeros?',
    values: [{ at: /within (\d+) hours/, value: 24 }],
    says: [
      /^Nearly there/,
      /past its peak, but it is not done/,
      /both read none/,
      /two days/,
      /water change with matched salinity/,
      /a few snails/,
      /nitrite makes nitrate kits read far too high/,
      /do not trust it/,
      /far less toxic in sea water/,
      /hardy snails would likely live/,
      /Hair algae .*normal/,
      /alkalinity, calcium and magnesium when corals/,
    ],
    never: [
      /fully cycled/i,
      /(?<!No )fish as a test/i,
      /add (?:a|some) fish/i,
      /nitrate (?:halved|dropped|fell)/i,
    ],
  },
  F03: {
    asked: 'toadstool closed 5 days, looks shiny like wax/cling film, everything else ok. dying??',
    values: [],
    says: [
      /^Most likely it is shedding a waxy layer/,
      /flow across the cap/,
      /days to two weeks/,
      /larger after/,
      /Blow loose film off/,
      /Do not peel hard and do not move/,
      /Soft, smelly, black or white rotting patches/,
      /hole that grows/,
      /other corals shut too/,
      /salinity, alkalinity and temperature/,
      /photo/,
    ],
    never: [/antibiotic/i, /dip it/i, /it is dying/i, /disease/i],
  },
  F05: {
    asked:
      'dark red slimy sheets on my sand w bubbles, gone in the morning back by evening. nitrate 0 phosphate 0. do i just buy a slime killer powder?',
    values: [],
    says: [
      /^Suck it out/,
      /last resort/,
      /cyanobacteria/i,
      /flow over that sand/,
      /food left over/,
      /RO water/,
      /usual water changes/,
      /zero\? Slime often comes then/,
      /shorter light day/,
      /oxygen out of the water/,
      /air stone/,
      /dinoflagellates/,
      /snails die/,
      /photo/,
      /disputed/,
    ],
    never: [/the cause is/i, /(?:use|give|add|dose) (?:an )?antibiotic/i, /it is certainly/i],
  },
  F07: {
    asked:
      'small cheap heater burst in the sump, its filling and bits of electronics are all through the water, softies clenched up. what do i do FIRST',
    values: [
      { at: /two (\d+) %/, value: 36 },
      { at: /three ([\d.]+) %/, value: 21.6 },
    ],
    says: [
      /^Electricity first/,
      /at the wall or switch off the breaker/,
      /ground-fault breaker/,
      /all parts, glass and sand/,
      /return pump off/,
      /new water is mixed and matched/,
      /activated carbon/,
      /binds metals/,
      /ammonia, pH and temperature/,
      /another heater/,
      /for days/,
      /laboratory can measure metals/,
      /not known/,
    ],
    never: [/(?<!Never )reach in with the power on/i, /(?<!Do not )wait and see/i, /harmless/i],
  },
  F09: {
    asked: 'storm took power out, maybe 18h. mixed reef 90g, no generator. what do i do NOW',
    values: [
      // 6.657 mg/L in 340.7 L, told in the gallons that were typed.
      { at: /so ([\d.]+) g in 90 US gal/, value: 2.268 },
      { at: /every (\d+) to 30 minutes/, value: 15 },
      { at: /Above about (\d+) °F/, value: 21 * 1.8 + 32 },
    ],
    says: [
      /^Oxygen first/,
      /battery air pump or by hand/,
      /No feeding/,
      /blankets/,
      /Two to three days without light do no harm/,
      /closed bottles of warm water/,
      /anything dead/,
      /canister filter/,
      /rinse it before/,
      /skimmer and top-off/,
      /Warm up slowly/,
      /test ammonia/,
      /usual hours/,
      /Acropora fail first, within hours/,
      /not known: from 1 to more than 18 hours/,
    ],
    never: [/(?<!Do not )dose anything/i, /add (?:cold )?water/i, /tank (?:will|can) last \d/i],
  },
};
