import type { CaseId } from '../corpus.ts';
import type { Expected } from './case.ts';

/**
 * Members' questions as typed, with answers worked from first principles: molar masses IUPAC 2021 (1 dKH in 100 L =
 * 2.996 g NaHCO3 = 1.890 g Na2CO3), PSS-78/EOS-80 salinities at 25/25, well-mixed dilution. Tolerance +-2 % on
 * printed numbers, 8 % on limewater. Points of practice are "common practice, no source".
 */
export const sums: Readonly<Partial<Record<CaseId, Expected>>> = {
  A01: {
    values: [{ at: /([\d.]+) g of sodium bicarbonate per 100 L in all/, value: 8.09 }],
    says: [/per 100 L/, /sodium bicarbonate/, /dissolve/i, /without stopping/, /net/i],
    never: [/\bgal\b/i, /stop (?:your )?dosing/i, /as powder straight/i],
  },
  A03: {
    values: [{ at: /([\d.]+) %/, value: 83.3 }],
    says: [/wrong tool/i, /75 US gal|US gallons/, /again|retest/i, /12(?:\.0)? dKH/],
    never: [/add (?:vinegar|acid|muriatic)/i, /dose calcium/i, /change 83/i],
  },
  A05: {
    values: [
      { at: /([\d.]+) g(?: of [a-z ]+)? a day/, value: 2.7, tolerance: 0.08 },
      { at: /([\d.]+) g per (?:litre|L)|([\d.]+) g\/L/, value: 0.71, tolerance: 0.08 },
    ],
    says: [/drip/i, /night/i, /pH at or below 8\.5/, /eye protection/i, /caustic/i],
    never: [/use (?:it )?saturated for the whole/i, /(?<!never )pour it in at once/i],
  },
  A07: {
    values: [
      { at: /anhydrous[^\n]*?([\d.]+) g/, value: 34.9 },
      { at: /dihydrate[^\n]*?([\d.]+) g/, value: 46.2 },
      { at: /hexahydrate[^\n]*?([\d.]+) g/, value: 68.9 },
    ],
    says: [/anhydrous/, /dihydrate/, /hexahydrate/, /180 L/, /hot/i, /magnesium/i],
    never: [/200 L/],
  },
  A10: {
    values: [
      { at: /([\d.]+) g of magnesium chloride/, value: 633 },
      { at: /([\d.]+) g (?:a|each|on each) day|days? of ([\d.]+) g/, value: 317 },
    ],
    says: [/100 US gal|100 gal/, /378\.5 L/, /salinity/i],
    never: [/760 g/, /magnesium sulfate/i, /120 US gal \(/],
  },
  A12: {
    values: [
      { at: /equals ([\d.]+) g/, value: 63.1 },
      { at: /([\d.]+) % too little/, value: 21 },
    ],
    says: [/0\.631/, /pH/],
    never: [/^Yes/m, /does not give carbonate/i],
  },
  A14: {
    values: [
      { at: /([\d.]+) g of sodium nitrate/, value: 0.31 },
      { at: /([\d.]+) mg of monosodium phosphate/, value: 8.6 },
    ],
    says: [/below its limit/, /feed/i, /stock/i],
    never: [/weigh (?:out )?8\.6 mg/i, /starve/i],
  },
  A16: {
    values: [{ at: /([\d.]+) g of sodium carbonate/, value: 19.3 }],
    says: [/belongs to their volume/, /150 US gal/, /dose twice/, /pH/, /14 tsp[^\n]*3\.5 to 7 dKH/],
    never: [/use 14 tsp/i],
  },
  A18: {
    values: [
      { at: /([\d.]+)(?: to [\d.]+)? g (?:dissolve|in 30|of calcium hydroxide)/, value: 47, tolerance: 0.08 },
    ],
    says: [
      /cannot hold more|^More than dissolves/,
      /settle/i,
      /clear part/i,
      /eye protection/i,
      /[Dd]rip it slowly/,
    ],
    never: [/twice as strong/i, /double strength/i, /shake before/i],
  },
  B01: {
    values: [
      { at: /(\d+) (?:weekly )?changes/, value: 10, tolerance: 0 },
      { at: /(\d+(?:\.\d)?) US gal each/, value: 11 },
      { at: /([\d.]+) US gal in all/, value: 110 },
      { at: /one change alone: ([\d.]+) %/, value: 87.5 },
    ],
    says: [
      /makes nitrate: it takes longer, or never arrives/,
      /with 50 % each: 3 changes/,
      /Find the source/,
      /Test the new salt water/,
    ],
    never: [/80 % in all/, /\b4 changes\b/],
  },
  B03: {
    values: [
      { at: /([\d.]+) mg\/L just before/, value: 26.7 },
      { at: /To peak at 10 mg\/L: ([\d.]+) % each time/, value: 40 },
    ],
    says: [/22\.7 mg\/L just after/, /export|input|feed/i],
    never: [/for ?ever/i, /goes to zero/i],
  },
  B05: {
    values: [{ at: /takes out ([\d.]+) %/, value: 25.9 }],
    says: [/35\.7 %/, /matched|drift/i],
    never: [/useless/i, /^Yes/m],
  },
  B07: {
    values: [
      { at: /([\d.]+) %/, value: 13.2 },
      { at: /\(([\d.]+) US gal/, value: 7.3 },
      { at: /day 1: swap ([\d.]+) US gal/, value: 1.8 },
      { at: /day 4: swap ([\d.]+) US gal/, value: 2.0 },
    ],
    says: [/calibrat|standard/i, /days/, /[Ff]resh/],
    never: [/all at once is fine/i],
  },
  B09: {
    values: [{ at: /about ([\d.]+) %/, value: 4.0 }],
    says: [/^Leave it/, /top-off off/],
    never: [/^add salt/im, /drain/i],
  },
  B11: {
    values: [{ at: /([\d.]+)(?: to [\d.]+)? kg/, value: 4.1 }],
    says: [/weigh/i, /35/],
    never: [/cups are exact/i, /mix (?:the )?salt in the tank\b(?! never)/i],
  },
  B13: {
    values: [{ at: /1\.02(45)/, value: 45 }],
    says: [/32\.5/, /standard|fluid/i],
    never: [/average of|take the average|average them/i, /(?<!no )emergency/i],
  },
  B15: {
    values: [
      { at: /but ([\d.]+) ppt/, value: 29.1 },
      { at: /([\d.]+) ppt at 20 °C/, value: 32.6 },
    ],
    says: [/53/, /temperature|compensat/i, /32\.6/],
    never: [/^Yes/m],
  },
  C03: {
    values: [{ at: /about (\d+) to \d+ PAR/, value: 130 }],
    says: [/anything from/i, /phone clips/i, /quantum meter/i, /Which channels/, /to 1\d\d\d PAR/],
    never: [/is (?:about )?\d+ PAR\.$/m],
  },
  C05: {
    values: [
      { at: /^8 h:.*?([\d.]+) mol/m, value: 5.8 },
      { at: /^6 h:.*?([\d.]+) mol/m, value: 4.3 },
      { at: /^12 h:.*?([\d.]+) mol/m, value: 8.6 },
      { at: /^16 h:.*?([\d.]+) mol/m, value: 11.5 },
      { at: /^8 h with ramps.*?([\d.]+) mol/m, value: 6.5 },
      { at: /peak of (\d+) PAR/, value: 133 },
    ],
    says: [/really dark/i, /feed algae/i, /Change slowly/],
    never: [/(?:run|use|take) 1[46] h/i],
  },
  G01: {
    values: [],
    says: [/usual range/, /No dose needed/, /How old is the tank/, /450/, /9\.5 dKH/, /1350/],
    never: [/450 ppm CaCO3/, /\bdose \d/i],
  },
  G03: {
    values: [{ at: /\((\d+) mg\/L at salinity 35\)/, value: 615 }],
    says: [
      /again first/,
      /specific gravity/,
      /31\.9/,
      /80 °F/,
      /soft coral/,
      /Raise it slowly, at most [\d.]+ ppt/,
    ],
    never: [/dose alk/i, /1\.0 ppt \(/],
  },
  G05: {
    values: [
      { at: /180[^;]*?([\d.]+) dKH/, value: 10.1 },
      { at: /240[^;]*?([\d.]+) dKH/, value: 13.4 },
    ],
    says: [/3\.6 meq/, /4\.8 meq/, /disagree/, /143/, /standard/],
    never: [/180 dKH/, /mean is/i],
  },
  G07: {
    values: [],
    says: [
      /work out no amount of peroxide/,
      /says neither of what nor into what/,
      /shrimp/,
      /[Nn]ever use a stronger/,
    ],
    never: [/\d ?(?:mL|mg)\b/, /75 grams/, /35 %/, /is harmless/i],
  },
  G09: {
    values: [
      { at: /38 US gal: ([\d.]+) g/, value: 4.31 },
      { at: /50 US gal: ([\d.]+) g/, value: 5.67 },
      { at: /([\d.]+) % too much/, value: 32 },
    ],
    says: [/[Nn]et|net water/, /retest/],
    never: [/take off 10 %/],
  },
  G12: {
    values: [{ at: /([\d.]+) mg\/L phosphate/, value: 0.055 }],
    says: [/0\.018/, /P or PO4/, /fine/],
    never: [/18 ppm/, /(?<![\d.])18 mg\/L/],
  },
};
