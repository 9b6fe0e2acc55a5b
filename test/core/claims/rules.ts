import type { Verdict } from '../../../core/claims/claim.ts';

/**
 * Rules as members pass them on, with the verdict and the figure that must be printed. Figures: weights IUPAC 2021
 * (iupac21), PSS-78 and EOS-80 (fm83), limewater Bates 1956, reference seawater (m08), mass balance, the CIE curve
 * (cie), PyCO2SYS 1.8.3.4 for pH. "practice" is common practice, no source.
 */
export const rules: readonly (readonly [rule: string, kind: string, verdict: Verdict, figure: RegExp])[] = [
  // 1 dKH in 100 L = 2.9961 g NaHCO3 = 1.8900 g Na2CO3; a teaspoon 4 to 5 g (practice).
  ['1 tsp baking soda per 5 gal raises 1 dKH', 'dose and rise', 'wrong', /7\.1 to 8\.8 dKH/],
  ['2 tsp of baking soda per 10 gallons raises alk by 2', 'dose and rise', 'wrong', /7\.1 to 8\.8 dKH/],
  [
    '1 teaspoon of baking soda per 50 gallons raises alkalinity 1 dkh',
    'dose and rise',
    'roughly right',
    /0\.71 to 0\.88 dKH/,
  ],
  ['3 g of baking soda raises 100 L by 1 dKH', 'dose and rise', 'right', /by 1 dKH/],
  ['to raise 100 litres by 1 dkh add 1.9 g of soda ash', 'dose and rise', 'right', /1\.0?1? dKH/],
  ['1.9 g soda ash per 100 L is 1 dkh', 'dose and rise', 'right', /1\.01 dKH/],
  ['3 g of soda ash raises 100 L by 1 dkh', 'dose and rise', 'wrong', /1\.59 dKH, 59 % more/],
  // CaCl2.2H2O 3.668 g, MgSO4.7H2O 10.1405 g, KNO3 1.631 g for 10 mg/L Ca, Mg, NO3 in 100 L.
  [
    '37 g of calcium chloride dihydrate per 100 L raises calcium by 100 ppm',
    'dose and rise',
    'right',
    /101 mg\/L/,
  ],
  ['10 g calcium chloride per 100 L raises calcium by 20 ppm', 'dose and rise', 'depends', /18 to 36 mg\/L/],
  ['20 g of epsom salt per 100 L raises magnesium by 20 ppm', 'dose and rise', 'right', /19\.7 mg\/L/],
  ['1.63 g of potassium nitrate per 100 L raises nitrate by 5 ppm', 'dose and rise', 'wrong', /10 mg\/L/],
  ['1 tsp soda ash per 50 gal', 'dose by volume', 'depends', /0\.75 to 1\.5 dKH/],
  // Bates 1956: 0.0203 mol/L x 74.09 = 1.504 g/L at 25 °C.
  [
    '1.5 g of kalk per litre is saturated',
    'lime by volume',
    'roughly right',
    /about as much as can dissolve/,
  ],
  // (105.9875 / 2) / 84.0058 = 0.6308.
  ['soda ash is twice as strong as baking soda', 'strength of two salts', 'wrong', /1\.585 times.*0\.631 g/],
  ['soda ash is 1.6 times as strong as baking soda', 'strength of two salts', 'right', /1\.585/],
  ['you only need half as much soda ash as baking soda', 'strength of two salts', 'wrong', /0\.631 g/],
  ['100 g of baking soda bakes into 50 g of soda ash', 'yield of baking', 'wrong', /63\.1 g/],
  ['100 g of baking soda bakes into 63 g soda ash', 'yield of baking', 'right', /63\.1 g/],
  // Ca in CaCl2 36.1, .2H2O 27.3; Mg in MgSO4.7H2O 9.86, MgCl2.6H2O 11.96 %.
  ['epsom salt is 10 % magnesium', 'share of a metal', 'right', /9\.9 %/],
  ['magnesium chloride is 25% magnesium', 'share of a metal', 'wrong', /12 %/],
  ['calcium chloride is 36% calcium', 'share of a metal', 'depends', /36\.1 %.*27\.3 %/],
  ['a teaspoon of baking soda weighs 5 g', 'weight of a spoon', 'roughly right', /4 to 5 g/],
  ['a teaspoon of lime is 6 grams', 'weight of a spoon', 'wrong', /2\.5 to 3\.5 g/],
  // 20.039 mg per meq, 7.147 mg per dKH.
  ['every 10 ppm Ca goes with 1 meq/L', 'calcium with alkalinity', 'wrong', /20 mg\/L/],
  ['20 mg/L Ca per 1 meq alk', 'calcium with alkalinity', 'right', /20 mg\/L/],
  ['1 dkh uses 7 ppm of calcium', 'calcium with alkalinity', 'right', /7\.15 mg\/L/],
  ['magnesium should be 3 times calcium', 'magnesium to calcium', 'roughly right', /3\.12/],
  // S 35, 25 °C: 1.02637 and 33.188 at 1.025 (25/25); 53.0710 mS/cm; 45 mS/cm is 29.1 at 25 and 32.6 at 20 °C.
  ['1.025 is 35 ppt', 'gravity and ppt', 'wrong', /33\.2 ppt.*1\.0264/],
  ['35 ppt is 1.026', 'gravity and ppt', 'right', /1\.0264/],
  ['1.0264 = 35ppt', 'gravity and ppt', 'right', /35 ppt/],
  ['45 mS is 35 ppt', 'conductivity and ppt', 'wrong', /29\.1 ppt at 25 °C.*53\.1 mS/],
  ['53 ms/cm equals 35 ppt at 25 C', 'conductivity and ppt', 'right', /34\.9 ppt/],
  // Between S 34 and 36 the 25/25 scale moves 0.001516 (1.025615 to 1.027131): 1.32 ppt for 0.001.
  ['0.001 sg is 1 ppt', 'step of gravity', 'wrong', /1\.32 ppt/],
  // 35 g/kg x 1.02334 kg/L = 35.8 g/L; 36 to 39 g from the bag (practice).
  ['1 ppt = 1 g per L', 'salt per litre', 'roughly right', /35\.8 g.*1\.02 to 1\.11/],
  ['50 g of salt per litre makes 35 ppt', 'salt per litre', 'wrong', /35\.8 g/],
  ['half a cup of salt per gallon', 'cups of salt', 'depends', /273 to 295 g/],
  ['1 cup of salt per gallon', 'cups of salt', 'wrong', /136 to 148 g/],
  [
    'top off with salt water to keep salinity stable',
    'salt water as top-off',
    'wrong',
    /only water evaporates/,
  ],
  // 1.02334 kg/L x 3.785412 L = 3.874 kg = 8.54 lb.
  ['a gallon of salt water weighs 8.5 lbs', 'weight of water', 'right', /3\.87 kg \(8\.54 lb\)/],
  // 1 - 0.8^4 = 0.5904; 1 - e^-0.3 = 0.2592, -ln 0.7 = 0.3567; 5 / 0.1 = 50.
  ['4 x 20 % = 80 %', 'sum of water changes', 'wrong', /59 %/],
  ['five 10% water changes equals 50%', 'sum of water changes', 'wrong', /41 %/],
  ['two 50% water changes replaces 75%', 'sum of water changes', 'right', /75 %/],
  ['30 % continuous is the same as 30 % batch', 'continuous and batch', 'wrong', /25\.9 %.*35\.7 %/],
  [
    'a slow drip of 10% a day is the same as a 10% water change',
    'continuous and batch',
    'roughly right',
    /9\.5 %/,
  ],
  ['a 50% water change halves nitrate', 'what a change takes out', 'right', /50 %/],
  ['25 % water change drops nitrate by 50 %', 'what a change takes out', 'wrong', /25 %/],
  [
    '5 ppm a week with 10 % weekly changes tops out at 50',
    'where a routine settles',
    'right',
    /50 mg\/L.*45/,
  ],
  // 54 to 56 lux per PAR daylight, 7.35 for a band at 450 nm, 69.4 for a white LED.
  ['lux / 50 = par', 'lux as PAR', 'depends', /7 to 17 for blue/],
  ['50 lux is 1 par', 'lux as PAR', 'depends', /53 to 72 for white/],
  ['par is lux divided by 200', 'lux as PAR', 'wrong', /no one divisor/],
  // 200 x 8 x 0.0036 = 5.76.
  ['200 par for 8 hours is 5.8 mol', 'daily light', 'right', /5\.76 mol/],
  ['200 par for 6 h is the same as 100 par for 12 h', 'same light in other hours', 'roughly right', /4\.32/],
  ['4 watts per gallon', 'watts by volume', 'depends', /no right figure/],
  // 17.847959, 2.80385, 50.043; 4.4266438; 3.0661358; 3.2844292; 1.2158921.
  ['ppm is dKH x 17.9', 'factor between units', 'right', /17\.85/],
  ['dkh = ppm / 17.9', 'factor between units', 'right', /17\.85/],
  ['multiply meq by 2.8 to get dkh', 'factor between units', 'right', /2\.804/],
  ['divide ppm by 50 to get meq', 'factor between units', 'right', /50\.04/],
  ['no3 to N is 4.4', 'factor between units', 'right', /4\.427/],
  ['po4 to P is 3.06', 'factor between units', 'right', /3\.066/],
  ['phosphorus x 4 is phosphate', 'factor between units', 'wrong', /3\.066/],
  ['no2-n x 3.3 = no2', 'factor between units', 'right', /3\.284/],
  ['nh3-n x 1.2 = nh3', 'factor between units', 'right', /1\.216/],
  ['1 dkh is 17.9 ppm', 'two units', 'right', /17\.85 ppm/],
  ['1 gallon is 4 litres', 'two units', 'roughly right', /3\.785 L/],
  ['1 uk gallon is 4.5 l', 'two units', 'right', /4\.546 L/],
  ['80 f is 27 c', 'two units', 'roughly right', /26\.67/],
  ['1 ppm = 100 ppb', 'two units', 'wrong', /1000 µg\/L/],
  ['ppm is the same as mg/l', 'ppm and mg/L', 'roughly right', /421\.7.*412\.1/],
  // 16 x 62.004 / 94.9698 = 10.446.
  ['no3:po4 should be 16:1', 'nitrate to phosphate', 'wrong', /10\.4 : 1/],
  ['nitrate to phosphate ratio of 10:1', 'nitrate to phosphate', 'roughly right', /10\.4 : 1/],
  ['1 g of flake food adds 1 ppm nitrate in 100 gal', 'food as nitrate', 'depends', /0\.69 to 0\.98/],
  ['1 g of flake food adds 5 ppm nitrate in 100 gal', 'food as nitrate', 'wrong', /0\.69 to 0\.98/],
  // Reference seawater: Ca 421.70, Mg 1313.68 mg/L, 6.612 dKH.
  ['natural seawater has 420 ppm calcium', 'level of the sea', 'right', /422 mg\/L/],
  ['natural seawater alk is 8 dkh', 'level of the sea', 'wrong', /6\.6 dKH/],
  // pH after +500 umol/kg (PyCO2SYS): NaHCO3 falls, Na2CO3 rises; here for 1 dKH.
  ['baking soda raises ph', 'pH of a salt', 'wrong', /down at first/],
  ['soda ash raises ph', 'pH of a salt', 'right', /up at first/],
  // 0.0203 mol/L = 1.504 g/L = 5.69 g per US gallon; a teaspoon 2.5 to 3.5 g (practice).
  ['kalk at 2 tsp per gallon', 'lime by volume', 'roughly right', /5\.7 to 6\.3 g per US gallon/],
  ['1 tsp of kalk per gallon', 'lime by volume', 'depends', /weaker than saturated/],
  ['2 tbsp kalk per gallon', 'lime by volume', 'wrong', /more than can dissolve/],
  ["you can't overdose kalk", 'strength of limewater', 'wrong', /41 meq\/L/],
  ['more kalk powder makes it stronger', 'strength of limewater', 'wrong', /only settles/],
  // Paces are common practice, no source.
  ['never raise alk more than 1 dkh a day', 'pace', 'right', /0\.5 to 1 dKH/],
  ["don't raise alk more than 3 dkh a day", 'pace', 'wrong', /0\.5 to 1 dKH/],
  ['no more than 50 ppm calcium per day', 'pace', 'right', /25 to 50 mg\/L/],
  ['you can raise alk 3 dkh per day', 'pace', 'wrong', /0\.5 to 1 dKH/],
  ['max 0.001 SG a day', 'pace of salinity', 'right', /0\.001 in specific gravity/],
  ['dont change salinity more than 0.002 a day', 'pace of salinity', 'wrong', /0\.001 in specific gravity/],
  ['you need 20x turnover', 'turnover', 'depends', /10 to 20/],
  ['take off 10 % for rock', 'share of rock', 'depends', /5 to 30 %/],
  ['1 lb of live rock per gallon', 'rock by volume', 'depends', /no figure is published/],
  ['1 ml per 10 gal peroxide', 'peroxide by volume', 'depends', /without evidence.*work nothing out/],
  ['1 ml of 35% peroxide per 10 gal', 'peroxide by volume', 'wrong', /work nothing out/],
  // 94.97 / 30.97 = 3.066, 62.00 / 14.01 = 4.427 (IUPAC 2021).
  ['0.1 ppm phosphorus is 0.3 phosphate', 'element and ion', 'right', /0\.307 mg\/L/],
  ['0.1 ppm phosphate is 0.3 ppm phosphorus', 'element and ion', 'wrong', /0\.92 mg\/L/],
  ['phosphate of 0.1 ppm is 33 ppb phosphorus', 'element and ion', 'right', /0\.101 mg\/L/],
  ['never raise salinity faster than 1 ppt a day', 'pace of salinity', 'wrong', /0\.66 ppt .* upward/],
  ['5 ppm nitrate nitrogen is 22 ppm nitrate', 'element and ion', 'right', /22\.1 mg\/L/],
  // 20 x 0.7 and 50 x 0.8, by mass balance.
  ['a 30% water change takes nitrate from 20 to 14', 'what a change leaves', 'right', /20 to 14/],
  ['20% water change takes nitrate from 50 to 30', 'what a change leaves', 'wrong', /50 to 40/],
];
