import type { Case } from './case.ts';

/**
 * Members' questions about where corals stand, as typed, with what a right answer says and what it must not. All of it
 * is common practice, no source, but for: torches and hammers are different genera (Arrigoni et al. 2023), palytoxin
 * (Hamade et al. 2015), inch and centimetre (SI Brochure: 1 in = 2.54 cm).
 */
export const corals: Readonly<Record<string, Case>> = {
  C01: {
    asked: 'zoas: what par? i get 60 on the sand and 250 up top',
    values: [
      { at: /(\d+) to \d+ PAR/, value: 50 },
      { at: /\d+ to (\d+) PAR/, value: 250 },
      { at: /PAR\. A new piece begins near (\d+)\./, value: 80, tolerance: 0.25 },
    ],
    says: [
      /a range, not one number/,
      /middle height/,
      /over weeks/,
      /at 250: 250 PAR, for a new piece: too bright to begin with/,
      /at 60: 60 PAR, for a new piece: fits/,
      /stretches/,
      /melts|tight/,
      /hours a day/,
      /Many adapt/,
    ],
    never: [/will colou?r up/i, /best colou?r/i, /250 is fine/i],
  },
  C07: {
    asked: "my zoas grow long necks n faded, they're on the sand in a corner. move to top of the rock?",
    values: [{ at: /by about (\d+) % a week/, value: 10, tolerance: 0 }],
    says: [
      /^Not to the top in one go/,
      /too little light/,
      /one step/,
      /flow/,
      /pests/,
      /nitrate and phosphate/,
      /photo/,
      /PAR reading/,
      /bleach/,
    ],
    never: [/^Yes/, /put it (?:on|at) the top/i],
  },
  D01: {
    asked: 'can torch and hammer sit next to each other? same family so fine i guess, got 4 inches between',
    values: [
      // 20 cm, in the unit that was typed: 1 in = 2.54 cm.
      { at: /want ([\d.]+) in or more/, value: 20 / 2.54 },
      { at: /and ([\d.]+) in is not enough/, value: 4, tolerance: 0 },
    ],
    says: [
      /Too close/,
      /at full stretch/,
      /at night/,
      /inflate and grow/,
      /half as much again on the side the water goes to/,
      /loses tissue/,
      /whitish strings/,
      /Hammer beside frogspawn is usually tolerated/,
      /torches often win/,
      /no distance is a promise/,
      /touch for years/,
    ],
    never: [/same family so/i, /\b(?:is|are) safe\b/i, /fine together/i],
  },
  D03: {
    asked:
      'some tiny lilac fluffy things came on one rock, half a year later they ring my zoas and those stopped spreading. told they smother everything. can i scrape em off?',
    values: [{ at: /some (\d+) cm clear/, value: 10, tolerance: 0 }],
    says: [
      /^Do not scrape them inside/,
      /early/,
      /island/,
      /bare sand/,
      /outside the tank/,
      /photo/,
      /Not every fuzzy polyp is a pest/,
      /growing over, not by stinging/,
      /replace it/,
    ],
    never: [
      /(?:this|these|it|they) (?:is|are) (?:xenia|anthelia|clove|star)/i,
      /inject|peroxide|bleach|kalk paste/i,
    ],
  },
  D05: {
    asked:
      'can i glue different zoas side by side on one rock, do they sting eachother? cutting them with scissors in kitchen',
    values: [
      { at: /Leave (\d+) to 5 cm/, value: 2, tolerance: 0 },
      { at: /Leave 2 to (\d+) cm/, value: 5, tolerance: 0 },
    ],
    says: [
      /^Mostly yes/,
      /palytoxin/i,
      /[Gg]loves/,
      /eye protection/,
      /[Nn]ot in the kitchen/,
      /Never boil/,
      /open windows/,
      /wash hands/,
      /metallic taste/,
      /medical help/,
      /vigour/,
      /Palythoa/,
    ],
    never: [/harmless/i, /is safe/i],
  },
  D07: {
    asked: 'new plate coral, glued it on a rock ledge so crab doesnt flip it. ok?',
    values: [
      { at: /([\d.]+) cm free on all sides/, value: 15 },
      { at: /light: (\d+) to/, value: 50 },
    ],
    says: [
      /^No/,
      /open sand/,
      /inflating/,
      /low to medium/,
      /underside/,
      /clean sand/,
      /bud small ones/,
      /nothing rots/,
      /least certain/,
    ],
    never: [/use (?:some )?epoxy/i, /glue it (?:back|again)/i, /^Yes/],
  },
  F11: {
    asked:
      'bubble tip went through a wavemaker during the night, bits everywhere. only thing i changed: washed the crust off the lamp glass at the weekend. is the rest of the tank in danger? why did it move',
    values: [
      { at: /Change (\d+) to 30 %/, value: 20, tolerance: 0 },
      { at: /Change 20 to (\d+) %/, value: 30, tolerance: 0 },
    ],
    says: [
      /[Pp]ump off/,
      /every piece/,
      /carbon/,
      /skim/,
      /ammonia/,
      /breathe/,
      /light, flow or food/,
      /brighter/,
      /foam or mesh/,
      /foot and mouth may heal/,
      /cannot be said for certain/,
    ],
    never: [/no risk/i, /because you (?:cleaned|washed)/i, /the cause is/i],
  },
  F14: {
    asked:
      'got a hammer 3 days ago stays pulled in. salinity 1.025, kh 8.3, no3 10, temp 78. what am i doing wrong',
    // 15 cm, for somebody whose thermometer shows °F.
    values: [{ at: /stands within ([\d.]+) in/, value: 15 / 2.54 }],
    says: [
      /days to two weeks/,
      /usual range/,
      /photo/,
      /acclimatised/,
      /dipped/,
      /indirect flow/,
      /^Leave it alone first/,
      /Change nothing and do not poke it: gentle, indirect flow, no more light than it begins at, and wait/,
      /do not poke/,
      /flatworms/,
      /brown jelly/,
      /standard fluid/,
    ],
    never: [/change \d+ ?%/i, /\bdose \d/i, /the cause is/i],
  },
};
